import { ownWords } from '../../ledger/own-words.js';
import { lists } from '../cutting/lists.js';
import { draw } from './draw.js';
import { reckon } from './reckon.js';
import { blockFields } from './shape.js';

/** A block of the quilt, from its chart. */
const block = {
    name: 'block',
    fields: blockFields,
    reckon,
    draw,
    lists,
    makes: ({ count, used: { name, oneWay, kept, piecesOf } }) => ({
        ...(name && { title: ownWords(name) }),
        count,
        oneWay,
        kept,
        piecesOf,
    }),
    takes: ({ fabrics, week, used: { name, oneWay } }) => fabrics.map(({ fabric, need, sheets: count = 0, width, sold, used: { cuts, cost, sheet, plan } }) => ({
        fabric,
        ...(name && { title: ownWords(name) }),
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

export { block };
