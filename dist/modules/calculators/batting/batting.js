import { draw } from './draw.js';
import { lists } from './lists.js';
import { reckon } from './reckon.js';
import { battingFields } from './shape.js';

/** Batting for a quilt: the package that does, or the length to buy from a roll; and the quilt's size for a bed. */
const batting = {
    name: 'batting',
    fields: battingFields,
    reckon,
    draw,
    lists,
    own: ['shrinkage'],
    byPiece: () => true,
    takes: ({ fabric: need, cuts, buy }, [fabric = '']) => [{ fabric, need, cuts, item: buy }],
};

export { batting };
