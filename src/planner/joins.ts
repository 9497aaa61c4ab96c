import { wholeUp, type Exact } from '../measure/exact.js';

/** How far equal strips reach when sewn end to end. Each join uses up `loss`. */
export const reachOf = (count: number, strip: Exact, loss: Exact): Exact =>
  strip.mul(count).sub(loss.mul(count - 1));

/** The fewest equal strips that reach a length when joined, or undefined if a join uses up a whole strip. */
export const fewest = (reach: Exact, strip: Exact, loss: Exact): number | undefined => {
  if (strip.gte(reach)) return 1;
  return strip.gt(loss) ? wholeUp(reach.sub(loss).div(strip.sub(loss))) : undefined;
};
