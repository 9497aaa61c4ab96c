import { isBlank } from '../../ledger/field.js';
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
    byPiece: ({ sheet }) => !isBlank(sheet),
    takes: ({ fabrics, used: { oneWay } }, [letter = '']) => fabrics.map(({ fabric, need, sheets, buy, width, sold, used: { cuts, cost } }) => ({
        fabric: fabric || letter,
        need,
        width,
        sold,
        cuts,
        pieces: cuts.map(({ piece, width, length, count }) => ({ piece, width, length, count, turn: !oneWay })),
        ...(sheets && { item: buy, cost }),
    })),
};

export { cutting };
