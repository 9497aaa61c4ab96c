import { wholeUp } from '../measure/exact.js';

/** How far equal strips reach when sewn end to end. Each join uses up `loss`. */
const reachOf = (count, strip, loss) => strip.mul(count).sub(loss.mul(count - 1));
/** The fewest equal strips that reach a length when joined, or undefined if a join uses up a whole strip. */
const fewest = (reach, strip, loss) => {
    if (strip.gte(reach))
        return 1;
    return strip.gt(loss) ? wholeUp(reach.sub(loss).div(strip.sub(loss))) : undefined;
};

export { fewest, reachOf };
