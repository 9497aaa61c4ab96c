import { ownUnits } from '../../measure/format.js';
import { ownLength } from '../../ledger/lengths.js';
import { count, inches, ONE_WHOLE, type Quantity } from '../../ledger/quantity.js';
import { wholeDown } from '../../measure/exact.js';
import { biasSquares } from '../../planner/bias.js';
import { fewest } from '../../planner/joins.js';
import { FAT_QUARTER } from '../../trade/cloths.js';
import { biasNeed, reachBy, type BindingJob } from './job.js';
import { say, type BindingAnswer } from './shape.js';

type FatQuarters = BindingAnswer['fatQuarters'];

/** The sides of a fat quarter after a wash. */
interface Sides {
  long: Quantity;
  high: Quantity;
}

/** The same binding from fat quarters, with its rows. If a fat quarter is too small, a row says so. */
export const fromFatQuarters = (job: BindingJob): FatQuarters => {
  const { ledger, strip, cloth } = job;
  const washed = (side: string): Quantity => cloth.washed(inches(ownLength(side))).asResult();
  const { width, height } = FAT_QUARTER[ownUnits(ledger.style)];
  const sides = { long: washed(width), high: washed(height) };
  const found = ledger.values.cut === 'bias' ? squaresFrom(sides, job) : stripsFrom(sides, job);
  if (found) return found;
  const size = { width: sides.high.value, length: sides.long.value };
  ledger.row('fatQuarters', say('notPossible'), { how: say('tooWideForFatQuarter', { strip, size }) });
  return undefined;
};

/** A bias square of each. */
const squaresFrom = ({ high }: Sides, job: BindingJob): FatQuarters => {
  const { ledger, need, strip } = job;
  const squares = biasSquares(biasNeed(job), high.value);
  if (!squares) return undefined;
  const { seam } = ledger.inputs;
  const how = say('squareFromEach', { side: squares.side, need, strip, seam });
  ledger.row('fatQuarters', count(squares.count), { how });
  return { strips: squares.count, count: squares.count };
};

/** Strips along the longer side. */
const stripsFrom = ({ long, high }: Sides, job: BindingJob): FatQuarters => {
  const { ledger, need, strip, loss } = job;
  const each = wholeDown(high.value.div(strip.value));
  const strips = each && fewest(need.value, long.value, loss.value);
  if (!strips) return undefined;
  const reach = reachBy(strips, long, job);
  const all = ledger.row('fatStrips', count(strips), { how: say('stripsReach', { reach, need }) });
  const quarters = ledger.row('fatQuarters', all.over(each).upTo(ONE_WHOLE), {
    how: say('stripsFromEach', { high, strip, each }),
    from: ['fatStrips'],
  });
  return { strips, count: quarters.value.valueOf() };
};
