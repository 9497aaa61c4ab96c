import { draw } from './draw.js';
import { lists } from './lists.js';
import { reckon } from './reckon.js';
import { battingFields } from './shape.js';

/** Batting for a quilt: the package that is large enough, or the length to buy from a roll. Also the size of a quilt for a bed. */
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
