import { wholeUp, type Exact } from '../measure/exact.js';

/** How far equal strips reach, sewn end to end; each join uses up so much. */
export const reachOf = (count: number, strip: Exact, loss: Exact): Exact =>
  strip.mul(count).sub(loss.mul(count - 1));

/** The fewest equal strips that reach a length, joined; undefined where a join uses up a whole strip. */
export const fewest = (reach: Exact, strip: Exact, loss: Exact): number | undefined => {
  if (strip.gte(reach)) return 1;
  return strip.gt(loss) ? wholeUp(reach.sub(loss).div(strip.sub(loss))) : undefined;
};
