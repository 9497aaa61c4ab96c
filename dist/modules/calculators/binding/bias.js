import { Cut } from '../../ledger/purchase.js';
import { count, inches } from '../../ledger/quantity.js';
import { buyCloth } from '../../ledger/shop.js';
import { wholeDown, rootDown, most, downTo } from '../../measure/exact.js';
import { biasSquares } from '../../planner/bias.js';
import { biasNeed, refuseTooWide, withLossRow } from './job.js';
import { say } from './shape.js';

/** Squares for continuous bias: one, or the fewest equal ones that fit across the cloth. */
const cutBias = (job) => {
    const { ledger, need, strip, cloth } = job;
    const width = cloth.width.value;
    const squares = biasSquares(biasNeed(job), width) ?? refuseTooWide(job, 'noSquare');
    const { side, count: squareCount, rounds } = squares;
    const { square, yields } = squareRows(squareCount > 1 ? withLossRow(job) : job, squares);
    const byArea = byAreaRow(job);
    const high = Math.ceil(squareCount / wholeDown(width.div(side)));
    const { fold } = ledger.values;
    return {
        ...buyCloth(ledger, cloth.toBuy(count(high).times(square))),
        summary: say('biasSummary', { count: squareCount, side, need: need.value, fold, strip: strip.value }),
        strips: squareCount,
        yields,
        square: side,
        squares: squareCount,
        rounds,
        byArea,
        cuts: [new Cut(squareCount, say('biasSquare'), side, side)],
    };
};
/** The rows of the squares, and of the binding that their tubes give. */
const squareRows = ({ ledger, need, strip, cloth, loss }, { side, count: squareCount, rounds, lengthSquared }) => {
    const { seam, mark } = ledger.inputs;
    const several = squareCount > 1;
    const square = ledger.row('square', inches(side), {
        label: several ? say('eachSquare', { count: squareCount }) : undefined,
        how: say('leastSquare', { need, strip, seam, tooNarrow: several ? cloth.width.value : undefined }),
    });
    const inner = square.minus(seam.times(2));
    const roundCount = ledger.row('rounds', count(rounds), {
        how: say('roundsFit', { across: inner.sideOfDiagonal(), rounds, strip }),
    });
    const joins = squareCount - 1;
    const of = roundCount.times(inner.diagonal());
    const all = several ? count(squareCount).times(of).minus(count(joins).times(loss)) : of;
    // The rounds do reach the need. Rounded down to a mark, the row could say that they do not.
    const joined = rootDown(lengthSquared, mark.value).sub(loss.value.mul(joins));
    const yields = most(need.value, downTo(joined, mark.value));
    ledger.row('yields', inches(yields), { how: say('roundsGive', { all, need }) });
    return { square, yields };
};
/** The row of the usual rule, which counts every inch of the tube as usable. */
const byAreaRow = ({ ledger, need, strip, ...job }) => {
    const { unit } = biasNeed({ ledger, need, strip, ...job });
    const side = need.times(strip).root().plus(ledger.inputs.seam.times(2));
    return ledger.row('byArea', side.upTo(inches(unit)), { how: say('byAreaAlone', { side }) }).value;
};

export { cutBias };
