import type { Calculator } from '../calculator.js';
import { draw } from './draw.js';
import { lists } from './lists.js';
import { reckon } from './reckon.js';
import { backingFields, say, type BackingAnswer } from './shape.js';

/** Cloth for a quilt's back. */
export const backing: Calculator<BackingAnswer> = {
  name: 'backing',
  fields: backingFields,
  reckon,
  draw,
  lists,
  own: ['seam'],
  instead: ({ layouts }) =>
    layouts.filter(({ strip }) => strip).map(({ buy }) => ({ way: say('pieced'), buy })),
  takes: ({ fabric, cuts }, [letter = '']) => [{ fabric: letter, need: fabric, cuts, pieces: [] }],
};
