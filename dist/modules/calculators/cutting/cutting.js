import { draw } from './draw.js';
import { lists } from './lists.js';
import { reckon } from './reckon.js';
import { cuttingFields } from './shape.js';

/** A cut list, cut from cloth or from sheets. */
const cutting = {
    name: 'cutting',
    fields: cuttingFields,
    reckon,
    draw,
    lists,
    takes: ({ fabrics, week, used: { oneWay } }, [letter = '']) => fabrics.map(({ fabric, need, sheets: count = 0, width, sold, used: { cuts, cost, sheet, plan } }) => ({
        fabric: fabric || letter,
        need,
        width,
        sold,
        cuts,
        pieces: cuts.map(({ piece, width, length, count }) => ({ piece, width, length, count, turn: !oneWay })),
        plan,
        ...(sheet && { sheets: { sheet, count }, cost }),
        week,
    })),
};

export { cutting };
