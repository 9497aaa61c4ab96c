import { count, type Quantity } from '../../ledger/quantity.js';

/** What the sides of a top come from, besides its number of blocks. */
export interface Sewn {
  block: Quantity;
  sashing: Quantity;
  onPoint: boolean;
  /** Whether there is sashing round the outside too. */
  frame: boolean;
}

/** A side of the top: its blocks, and the sashing between them. */
export const sideOf = ({ block, sashing, onPoint, frame }: Sewn, blocks: Quantity): Quantity => {
  const isSashed = sashing.value.gt(0);
  if (!isSashed) return onPoint ? blocks.times(block).diagonal() : blocks.times(block);
  if (onPoint) return blocks.times(block.plus(sashing)).plus(sashing).diagonal();
  const strips = frame ? blocks.plus(count(1)) : blocks.minus(count(1));
  return blocks.times(block).plus(strips.asResult().times(sashing));
};
