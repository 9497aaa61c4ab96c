import { sayOfPlan } from '../../ledger/planning.js';
import { Cut } from '../../ledger/purchase.js';
import { roughly } from '../../ledger/rough.js';
import { stacked, stripsOf } from '../../ledger/strips.js';
import { exact, most, least } from '../../measure/exact.js';
import { canBeCut } from '../../planner/check.js';
import { planCloth } from '../../planner/plan.js';
import { joinedPieces } from './pieces.js';
import { say } from './shape.js';

/** If a strip is too long by this or less, a small change to the blocks or the sashing makes it fit. */
const A_LITTLE = exact(2);
/** A step so large that no other order of cuts saves it. So strips across the cloth always come first, as the list of strips says. */
const ANY = exact(100_000);
/** The plans for the pieces of a top. Until a plan is ready, the cloth is that of separate strips for each kind of piece. */
class Plans {
    constructor(ledger, planner, cloth) {
        this.ledger = ledger;
        this.planner = planner;
        this.cloth = cloth;
        /** Whether a plan is still being made. */
        this.areUnfinished = false;
    }
    /** Pieces as they are cut from strips of cloth. */
    of(cuts, strips) {
        return { cuts, fabric: this.cloth.toBuy(stacked(strips)), strips };
    }
    /** How to cut these from cloth of this width. If that is not possible, the error is about `part`. */
    plan(cuts, part, width) {
        const pieces = cuts.map((cut) => ({
            width: cut.length,
            height: cut.width,
            count: cut.count,
            turn: true,
        }));
        const on = { width, step: ANY };
        const rough = roughly(cuts, width);
        // A piece that does not fit is refused without a search.
        if (!rough)
            return this.planned(cuts, part, planCloth(pieces, on));
        const plan = this.planner(pieces, on);
        if (typeof plan === 'number') {
            this.areUnfinished = true;
            return this.of(cuts, rough.strips);
        }
        if (plan.ok && !canBeCut(pieces, on, plan))
            return this.ledger.refuse(part, sayOfPlan('unsound'));
        return this.planned(cuts, part, plan);
    }
    planned(cuts, part, plan) {
        if (!plan.ok)
            return this.ledger.refuse(part, plan.problem);
        const names = cuts.map(({ piece }) => piece);
        return { ...this.of(cuts, stripsOf(plan, names)), plan };
    }
    ways(cuts, part, width) {
        const whole = this.plan(cuts, part, width);
        const pieces = joinedPieces(cuts, width, this.ledger.values);
        return { whole, joined: pieces && this.plan(pieces, part, width) };
    }
    /** Shows both ways to cut the sashing, if there are two, and what a slightly shorter strip would save. */
    sayJoins(sashes, { whole, joined }, width) {
        if (!joined)
            return;
        const { ledger } = this;
        const from = ['sashing', 'block', 'across', 'fabricWidth'];
        for (const [id, { fabric }] of [
            ['sashingJoined', joined],
            ['sashingWhole', whole],
        ])
            ledger.row(id, fabric, { how: say('stripsAcross', { need: fabric }), from });
        const length = most(...sashes.map(({ length }) => length));
        const over = length.sub(width);
        if (over.gt(A_LITTLE))
            return;
        const shorter = sashes.map(({ count, piece, width: narrow, length }) => new Cut(count, piece, narrow, least(length, width)));
        const now = least(whole.fabric.value, joined.fabric.value);
        const saves = now.sub(this.plan(shorter, 'sashing', width).fabric.value);
        ledger.note(say('littleTooLong', { length, over, saves }));
    }
}
/** The plan that takes less, or the first if both take the same. */
const lessOf = (first, second) => second?.fabric.value.lt(first.fabric.value) ? second : first;

export { Plans, lessOf };
