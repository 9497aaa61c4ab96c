/** The rows of a top: how many blocks lie in each. On point, a row between two rows has one block less. */
const rowsOf = ({ across, down, onPoint }) => onPoint
    ? Array.from({ length: 2 * down - 1 }, (_, row) => across - (row % 2))
    : Array.from({ length: down }, () => across);
/**
 * Kinds in turn: each as often as its number says, and spread evenly, so that a kind with a larger number comes more often. Two kinds
 * with equal numbers come as ABAB. The nth of m pieces of a kind is due in the middle of the nth of m equal parts of the way.
 */
const spread = (counts) => counts
    .flatMap((count, kind) => Array.from({ length: Math.max(0, count) }, (_, at) => ({ kind, due: (2 * at + 1) / count })))
    .sort((a, b) => a.due - b.due || a.kind - b.kind)
    .map(({ kind }) => kind);
/** How many blocks of a row are like one beside it or one that touches it in the row above. */
const likenessOf = (row, above) => {
    // On point, a block touches two blocks of the row above, half a block to its left and to its right.
    const shift = row.length - above.length;
    const touching = shift ? [Math.min(0, -shift), Math.max(0, -shift)] : [0];
    return row.reduce((all, kind, at) => {
        const others = [row[at - 1], ...touching.map((by) => above[at + by])];
        return all + others.filter((other) => other === kind).length;
    }, 0);
};
/** The row, turned so that the fewest blocks touch one of their kind. It is turned no further than it has to be. */
const turned = (row, above) => {
    const ways = row.map((_, by) => [...row.slice(by), ...row.slice(0, by)]);
    const scores = ways.map((way) => likenessOf(way, above));
    return ways[scores.indexOf(Math.min(...scores))] ?? row;
};
/**
 * Which kind of block lies in each place of the top, row by row. The kinds come in turn, and each exactly as often as its number
 * says. Then every row is turned, so that blocks of a kind do not stand in columns if that can be avoided: with two kinds on an even
 * number of columns, every second row begins with the other one. If there are fewer blocks than places, the last places stay empty.
 */
const inTurn = (counts, layout) => {
    const kinds = spread(counts);
    const places = [];
    let above = [];
    let from = 0;
    for (const length of rowsOf(layout)) {
        const row = turned(kinds.slice(from, from + length), above);
        above = row;
        from += length;
        places.push(...row, ...Array(length - row.length).fill(undefined));
    }
    return places;
};

export { inTurn };
