import { toMark } from '../../measure/exact.js';
import { sayings } from '../../measure/message.js';
import { MOST_PIECES } from '../../planner/grid.js';
import { sizeOf } from './pieces.js';

const say = sayings();
/** The patches of a chart, row by row. */
const byRow = ({ patches }) => {
    const rows = new Map();
    for (const patch of patches)
        rows.set(patch.row, [...(rows.get(patch.row) ?? []), patch]);
    return [...rows.values()];
};
/** Whether a row of a chart is made of equal patches of one fabric each, and nothing else. */
const isOfEqual = (row, { columns }) => {
    const [first] = row;
    const areEqual = row.every(({ kind, across, down }) => kind === 'plain' && across === first?.across && down === first.down);
    return areEqual && row.reduce((all, { across }) => all + across, 0) === columns;
};
/** The rows of a block, if each can be cut from strips that are sewn together. A row that is turned round is the same. */
const rowsOf = (chart, block) => {
    const rows = new Map();
    for (const row of byRow(chart)) {
        const [first] = row;
        if (!first || !isOfEqual(row, chart))
            return undefined;
        const fromLeft = [...row].sort((a, b) => a.column - b.column).flatMap(({ letters }) => letters);
        const ways = [fromLeft, [...fromLeft].reverse()].map((letters) => letters.join(' '));
        const key = [...ways.sort(), first.down].slice(1).join(' ');
        const known = rows.get(key);
        if (known)
            known.count += 1;
        else
            rows.set(key, { letters: fromLeft, ...sizeOf(first, chart, block), count: 1 });
    }
    return [...rows.values()];
};
/**
 * The strips to cut for so many blocks, as long as the cloth is wide: a set of strips for each kind of row, sewn together and cut
 * across into rows. Undefined if a row is not made of equal patches, or is longer than the cloth is wide.
 */
const stripsFor = (chart, block, blocks, { seam, mark }, cloth) => {
    const rows = rowsOf(chart, block);
    const piece = say('rowStrip');
    const lines = new Map();
    const cut = (side) => toMark(side.add(seam.mul(2)), mark);
    for (const { letters, width, length, count } of rows ?? []) {
        const each = Math.floor(cloth.div(cut(length)).valueOf());
        if (!each)
            return undefined;
        const sets = Math.ceil((count * blocks) / each);
        for (const fabric of letters) {
            const key = `${fabric} ${cut(width).toFraction()}`;
            const line = lines.get(key);
            if (line)
                line.count += sets;
            else
                lines.set(key, {
                    fabric,
                    piece,
                    cutAs: piece,
                    width: cloth,
                    length: cut(width),
                    between: [],
                    count: sets,
                    kind: 'rectangle',
                });
        }
    }
    const listed = [...lines.values()];
    return rows && listed.every(({ count }) => count <= MOST_PIECES) ? listed : undefined;
};

export { stripsFor };
