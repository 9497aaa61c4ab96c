import { draw } from './draw.js';
import { lists } from './lists.js';
import { reckon } from './reckon.js';
import { backingFields, say } from './shape.js';

/** Cloth for a quilt's back. */
const backing = {
    name: 'backing',
    fields: backingFields,
    reckon,
    draw,
    lists,
    own: ['seam'],
    instead: ({ layouts }) => layouts.filter(({ strip }) => strip).map(({ buy }) => ({ way: say('pieced'), buy })),
    takes: ({ fabric, cuts }, [letter = '']) => [{ fabric: letter, need: fabric, cuts, pieces: [] }],
};

export { backing };
