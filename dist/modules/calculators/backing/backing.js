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
    takes: (answer, [letter = '']) => [
        { fabric: letter, need: answer.fabric, cuts: answer.cuts, pieces: [], leaves: leavesOf(answer) },
    ],
};
/** Where the piece beside the last panel lies. */
const leavesOf = ({ leftover, layouts: [best], used }) => {
    if (!leftover || !best)
        return [];
    const { width, length: height } = leftover;
    const x = used.cloth.width.value.sub(width);
    return [{ x, y: height.mul(best.panels - 1), width, height }];
};

export { backing };
