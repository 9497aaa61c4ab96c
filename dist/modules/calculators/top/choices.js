import { count } from '../../ledger/quantity.js';
import { most, ZERO } from '../../measure/exact.js';
import { sideOf } from './sides.js';

/** The most blocks each way. */
const MOST_BLOCKS = 100;
/** The fewest blocks that reach a side, and those one fewer, if they do not reach it exactly. */
const nearest = (wanted, border, sewn) => {
    const along = (blocks) => {
        const side = sideOf(sewn, count(blocks)).value.add(border.mul(2));
        return { blocks, side, over: side.sub(wanted) };
    };
    let enough = along(1);
    while (enough.over.lt(0) && enough.blocks < MOST_BLOCKS)
        enough = along(enough.blocks + 1);
    if (enough.over.lt(0))
        return [];
    return enough.over.equals(0) || enough.blocks === 1 ? [enough] : [enough, along(enough.blocks - 1)];
};
const inAll = (across, down, onPoint) => across * down + (onPoint ? (across - 1) * (down - 1) : 0);
/** Half of what is missing goes to each side. */
const missing = (over) => most(over.div(-2), ZERO);
/** What ranks choices: those that are large enough first, then by what is too much or too little, then by how much there is to sew. */
const ranks = ({ over, border, blocks }) => [
    border.side.add(border.end),
    most(over.width, ZERO).add(most(over.length, ZERO)),
    blocks,
];
const byRank = (a, b) => {
    const [[short, over, blocks], [otherShort, otherOver, otherBlocks]] = [ranks(a), ranks(b)];
    return short.compare(otherShort) || over.compare(otherOver) || blocks - otherBlocks;
};
/**
 * The numbers of blocks that come nearest to a wanted size, best first: the fewest that reach it, then those that miss it one way
 * or both, by the border that they need. Empty if no number of blocks reaches it.
 */
const blockChoices = ({ width, length, border }, sewn) => nearest(width, border, sewn)
    .flatMap((across) => nearest(length, border, sewn).map((down) => ({ across, down })))
    .map(({ across, down }) => ({
    across: across.blocks,
    down: down.blocks,
    blocks: inAll(across.blocks, down.blocks, sewn.onPoint),
    finished: { width: across.side, length: down.side },
    over: { width: across.over, length: down.over },
    border: { side: missing(across.over), end: missing(down.over) },
}))
    .sort(byRank);

export { MOST_BLOCKS, blockChoices };
