import { wholeUp, sum } from '../measure/exact.js';

/**
 * The fewest lengths of cloth that give all these pieces. No piece may be longer than one length. It is exact, because it tries
 * every way. So use it for a few pieces only, such as those of one border.
 */
const fewestLengths = (pieces, cloth) => {
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

export { fewestLengths };
