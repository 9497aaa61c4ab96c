import { draw } from './draw.js';
import { lists } from './lists.js';
import { reckon } from './reckon.js';
import { cuttingFields } from './shape.js';
import { takeOf } from './take.js';

/** A cut list, cut from cloth or from sheets. */
const cutting = {
    name: 'cutting',
    fields: cuttingFields,
    reckon,
    draw,
    lists,
    takes: ({ fabrics, week, used: { oneWay } }, [letter = '']) => fabrics.map((fabric) => ({
        ...takeOf(fabric, oneWay),
        fabric: fabric.fabric || letter,
        week,
    })),
};

export { cutting };
