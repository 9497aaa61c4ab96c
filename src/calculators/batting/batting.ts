import type { Calculator } from '../calculator.js';
import { draw } from './draw.js';
import { lists } from './lists.js';
import { reckon } from './reckon.js';
import { battingFields, type BattingAnswer } from './shape.js';

/** Batting for a quilt: the package that does, or the length to buy from a roll; and the quilt's size for a bed. */
export const batting: Calculator<BattingAnswer> = {
  name: 'batting',
  fields: battingFields,
  reckon,
  draw,
  lists,
  own: ['shrinkage'],
  byPiece: () => true,
  takes: ({ fabric: need, cuts, buy }, [fabric = '']) => [{ fabric, need, cuts, item: buy }],
};
