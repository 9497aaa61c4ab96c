/** How many of each piece one sheet of a plan gives. */
const givenBy = ({ strips }, pieces) => {
    const counts = Array(pieces).fill(0);
    for (const { cuts, times } of strips)
        for (const { piece, count } of cuts)
            counts[piece] = (counts[piece] ?? 0) + count * times;
    return counts;
};
/** The area of one of each piece. */
const areasOf = (pieces) => pieces.map(({ width, height }) => width.mul(height).valueOf());

export { areasOf, givenBy };
