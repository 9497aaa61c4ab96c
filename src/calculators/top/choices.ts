import { count } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { most, ZERO, type Exact } from '../../measure/exact.js';
import { sideOf, type Sewn } from './sides.js';

/** A number of blocks each way that comes near to a wanted size. Lengths are exact inches. */
export interface BlockChoice {
  across: number;
  down: number;
  /** All blocks. On point, those in the rows between count too. */
  blocks: number;
  /** The finished size, with its borders. */
  finished: Size;
  /** How much larger than wanted. Less than 0 where it is smaller. */
  over: Size;
  /** A further border, at each side and at each end, that would make it exactly as wide and as long as wanted; 0 where it is large enough. */
  border: { side: Exact; end: Exact };
}

/** The size that is wanted, and all borders together on one side. */
export interface Wanted extends Size {
  border: Exact;
}

/** The most blocks each way. */
export const MOST_BLOCKS = 100;

/** Blocks along one side. */
interface Along {
  blocks: number;
  side: Exact;
  over: Exact;
}

/** The fewest blocks that reach a side, and those one fewer, if they do not reach it exactly. */
const nearest = (wanted: Exact, border: Exact, sewn: Sewn): Along[] => {
  const along = (blocks: number): Along => {
    const side = sideOf(sewn, count(blocks)).value.add(border.mul(2));
    return { blocks, side, over: side.sub(wanted) };
  };
  let enough = along(1);
  while (enough.over.lt(0) && enough.blocks < MOST_BLOCKS) enough = along(enough.blocks + 1);
  if (enough.over.lt(0)) return [];
  return enough.over.equals(0) || enough.blocks === 1 ? [enough] : [enough, along(enough.blocks - 1)];
};

const inAll = (across: number, down: number, onPoint: boolean): number =>
  across * down + (onPoint ? (across - 1) * (down - 1) : 0);

/** Half of what is missing goes to each side. */
const missing = (over: Exact): Exact => most(over.div(-2), ZERO);

/** What ranks choices: those that are large enough first, then by what is too much or too little, then by how much there is to sew. */
const ranks = ({ over, border, blocks }: BlockChoice): [Exact, Exact, number] => [
  border.side.add(border.end),
  most(over.width, ZERO).add(most(over.length, ZERO)),
  blocks,
];

const byRank = (a: BlockChoice, b: BlockChoice): number => {
  const [[short, over, blocks], [otherShort, otherOver, otherBlocks]] = [ranks(a), ranks(b)];
  return short.compare(otherShort) || over.compare(otherOver) || blocks - otherBlocks;
};

/**
 * The numbers of blocks that come nearest to a wanted size, best first: the fewest that reach it, then those that miss it one way
 * or both, by the border that they need. Empty if no number of blocks reaches it.
 */
export const blockChoices = ({ width, length, border }: Wanted, sewn: Sewn): BlockChoice[] =>
  nearest(width, border, sewn)
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
