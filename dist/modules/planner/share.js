import { wholeUp, sum } from '../measure/exact.js';

/**
 * The fewest lengths of cloth from which all these pieces, none longer than one of them, can be cut. Exact: every way of
 * sharing is tried, so it is for few pieces, such as one border's.
 */
const fewestShared = (pieces, cloth) => {
    const longestFirst = [...pieces].sort((a, b) => b.compare(a));
    const noFewer = wholeUp(sum(pieces).div(cloth));
    let best = pieces.length;
    const place = (at, rooms) => {
        if (rooms.length >= best || best === noFewer)
            return;
        const piece = longestFirst[at];
        if (!piece) {
            best = rooms.length;
            return;
        }
        rooms.forEach((room, i) => {
            if (room.gte(piece))
                place(at + 1, rooms.with(i, room.sub(piece)));
        });
        place(at + 1, [...rooms, cloth.sub(piece)]);
    };
    place(0, []);
    return best;
};

export { fewestShared };
