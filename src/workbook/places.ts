import type { Blocks } from '../calculators/top/shape.js';
import { readField } from '../ledger/field.js';
import { blocksField } from '../ledger/quilt.js';
import { unlessRefused } from '../ledger/refusal.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { sayOfFlow } from './flow-sayings.js';

/** A block of the quilt, as far as the places of the top ask for it. */
export interface PlacedBlock {
  /** How many, as somebody wrote it. Undefined or null if nobody did. An empty text is wrong. */
  count: unknown;
  /** Whether it takes the places that the other blocks leave. */
  fills: boolean;
  /** Its own finished side. Undefined if it follows the top. */
  block: Exact | undefined;
}

/** The blocks of a top as its author wrote them, and as they are now. */
export interface TopBlocks {
  written: Blocks | undefined;
  now: Blocks | undefined;
}

/** Whether a block lies in the places of this top. A block of another size does not: it is for something else. */
export const isPlaced = ({ block }: PlacedBlock, { written, now }: TopBlocks): boolean =>
  !block || [written, now].some((top) => top?.block.equals(block));

/** Whether its number comes from the top. That of an only block does if nobody wrote one. */
const isOpen = ({ count, fills }: PlacedBlock, all: PlacedBlock[]): boolean =>
  (count ?? undefined) === undefined && (fills || all.length === 1);

/** The number that somebody wrote, or the usual one. Undefined if nobody can read it. */
const countOf = ({ count }: PlacedBlock): number | undefined =>
  unlessRefused(
    () => readField(blocksField, count, { units: 'in' }, 'count'),
    () => undefined,
  );

/**
 * How many of each block there are. What the others leave of the places is shared evenly by the blocks that fill them, and those that
 * come first take one more. Undefined if nobody can read a number.
 */
export const sharesOf = (places: number, blocks: PlacedBlock[]): (number | undefined)[] => {
  const isOpenAt = blocks.map((block) => isOpen(block, blocks));
  const open = isOpenAt.filter(Boolean).length;
  const given = blocks.map((block, at) => (isOpenAt[at] ? 0 : countOf(block)));
  const left = Math.max(0, places - given.reduce<number>((all, count = 0) => all + count, 0));
  let more = left % open;
  return given.map((count, at) => (isOpenAt[at] ? Math.floor(left / open) + Number(more-- > 0) : count));
};

/** The number that flows to a block from the top, even if somebody wrote another over it. Undefined if none does. */
export const flowingCount = (places: number, blocks: PlacedBlock[], of: PlacedBlock): number | undefined => {
  const asked = blocks.map((block) => (block === of ? { ...block, count: undefined } : block));
  const at = blocks.indexOf(of);
  const one = asked[at];
  return one && isOpen(one, asked) ? sharesOf(places, asked)[at] : undefined;
};

/** Says that there are fewer or more blocks than places. Not while a number cannot be read: its block says that itself. */
export const unevenOf = (places: number, blocks: PlacedBlock[]): Message | undefined => {
  const shares = sharesOf(places, blocks);
  if (!blocks[0] || shares.includes(undefined)) return undefined;
  const made = shares.reduce<number>((all, count = 0) => all + count, 0);
  return made === places
    ? undefined
    : sayOfFlow('blocksForOtherPlaces', { places, made, difference: places - made });
};
