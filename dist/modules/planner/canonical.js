import { least, most } from '../measure/exact.js';

/**
 * Its long side across, if it may be turned. A top plans its pieces in the same way, so a joint plan is never worse. A square looks
 * the same turned.
 */
const lying = ({ width, height, count, turn }) => {
    const turns = turn || width.equals(height);
    return turns
        ? { width: most(width, height), height: least(width, height), count, turn: true }
        : { width, height, count, turn: false };
};
const byBoth = (a, b, c, d) => b.compare(a) || d.compare(c);
const bySize = (a, b) => byBoth(a.width, b.width, a.height, b.height) || Number(a.turn) - Number(b.turn);
/** The pieces in an order that does not depend on theirs: the largest first, and of equal ones the line with most of them. */
const inSizeOrder = (pieces) => pieces.map((piece) => ({ ...piece, ...lying(piece) })).sort((a, b) => bySize(a, b) || b.count - a.count);
/** The pieces of several lists as one list, with equal pieces together. */
const joined = (lists) => {
    const sizes = new Map();
    lists.forEach((list, at) => {
        for (const one of list) {
            const piece = lying(one);
            const key = [piece.width.toFraction(), piece.height.toFraction(), piece.turn].join();
            const known = sizes.get(key) ?? {
                piece: { ...piece, count: 0 },
                wanted: lists.map(() => 0),
                from: [],
            };
            sizes.set(key, known);
            known.from.push(one);
            known.piece.count += piece.count;
            known.wanted[at] = (known.wanted[at] ?? 0) + piece.count;
        }
    });
    const sorted = [...sizes.values()].sort((a, b) => bySize(a.piece, b.piece));
    return {
        pieces: sorted.map(({ piece }) => piece),
        wanted: lists.map((_, at) => sorted.map(({ wanted }) => wanted[at] ?? 0)),
        from: sorted.map(({ from }) => from),
    };
};

export { inSizeOrder, joined };
