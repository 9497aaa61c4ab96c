import { draw } from './draw.js';
import { reckon } from './reckon.js';
import { sleeveFields, say } from './shape.js';

/** A hanging sleeve. */
const sleeve = {
    name: 'sleeve',
    fields: sleeveFields,
    reckon,
    draw,
    // The seam of the worksheet is that of the blocks, not of a sleeve.
    own: ['seam'],
    takes: ({ used: { strip, ways, label } }, [letter = '', other = letter]) => [
        { fabric: letter, need: strip.need, cuts: [strip.cut], fromLeftover: ways },
        ...(label
            ? [
                {
                    ...label.cloth,
                    title: say('labelTitle'),
                    fabric: other,
                    need: label.need,
                    cuts: [label.cut],
                    fromLeftover: [[{ ...label.cut, turn: true }]],
                },
            ]
            : []),
    ],
};

export { sleeve };
