import { readField } from '../ledger/field.js';
import { blocksField } from '../ledger/quilt.js';
import { unlessRefused } from '../ledger/refusal.js';
import { sayOfFlow } from './flow-sayings.js';

/** Whether a block lies in the places of this top. A block of another size does not: it is for something else. */
const isPlaced = ({ block }, { written, now }) => !block || [written, now].some((top) => top?.block.equals(block));
/** Whether its number comes from the top. That of an only block does if nobody wrote one. */
const isOpen = ({ count, fills }, all) => (count ?? undefined) === undefined && (fills || all.length === 1);
/** The number that somebody wrote, or the usual one. Undefined if nobody can read it. */
const countOf = ({ count }) => unlessRefused(() => readField(blocksField, count, { units: 'in' }, 'count'), () => undefined);
/**
 * How many of each block there are. What the others leave of the places is shared evenly by the blocks that fill them, and those that
 * come first take one more. Undefined if nobody can read a number.
 */
const sharesOf = (places, blocks) => {
    const isOpenAt = blocks.map((block) => isOpen(block, blocks));
    const open = isOpenAt.filter(Boolean).length;
    const given = blocks.map((block, at) => (isOpenAt[at] ? 0 : countOf(block)));
    const left = Math.max(0, places - given.reduce((all, count = 0) => all + count, 0));
    let more = left % open;
    return given.map((count, at) => (isOpenAt[at] ? Math.floor(left / open) + Number(more-- > 0) : count));
};
/** The number that flows to a block from the top, even if somebody wrote another over it. Undefined if none does. */
const flowingCount = (places, blocks, of) => {
    const asked = blocks.map((block) => (block === of ? { ...block, count: undefined } : block));
    const at = blocks.indexOf(of);
    const one = asked[at];
    return one && isOpen(one, asked) ? sharesOf(places, asked)[at] : undefined;
};
/** Says that there are fewer or more blocks than places. Not while a number cannot be read: its block says that itself. */
const unevenOf = (places, blocks) => {
    const shares = sharesOf(places, blocks);
    if (!blocks[0] || shares.includes(undefined))
        return undefined;
    const made = shares.reduce((all, count = 0) => all + count, 0);
    return made === places
        ? undefined
        : sayOfFlow('blocksForOtherPlaces', { places, made, difference: places - made });
};

export { flowingCount, isPlaced, sharesOf, unevenOf };
