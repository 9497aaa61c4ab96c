import type { Cloth } from '../../ledger/cloth.js';
import { sayOfPlan, type Planner } from '../../ledger/planning.js';
import { Cut } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import { roughly } from '../../ledger/rough.js';
import { stacked, stripsOf, type CutStrip } from '../../ledger/strips.js';
import { exact, least, most, type Exact } from '../../measure/exact.js';
import { canBeCut } from '../../planner/check.js';
import { planCloth, type CuttingPlan } from '../../planner/plan.js';
import { joinedPieces } from './pieces.js';
import { say, type topFields, type TopLedger } from './shape.js';

/** Pieces, with the cloth and the strips for them. */
export interface Planned {
  cuts: Cut[];
  fabric: Quantity;
  strips: CutStrip[];
  /** Undefined until it is ready, or if several plans follow each other. */
  plan?: CuttingPlan;
}

/** Both ways to cut pieces: as they are, and with long ones joined from strips across the cloth. */
interface Ways {
  whole: Planned;
  joined: Planned | undefined;
}

/** The input that causes pieces that cannot be cut. */
type Part = keyof typeof topFields;

/** If a strip is too long by this or less, a small change to the blocks or the sashing makes it fit. */
const A_LITTLE = exact(2);

/** A step so large that no other order of cuts saves it. So strips across the cloth always come first, as the list of strips says. */
const ANY = exact(100_000);

/** The plans for the pieces of a top. Until a plan is ready, the cloth is that of separate strips for each kind of piece. */
export class Plans {
  /** Whether a plan is still being made. */
  areUnfinished = false;

  constructor(
    readonly ledger: TopLedger,
    readonly planner: Planner,
    readonly cloth: Cloth,
  ) {}

  /** Pieces as they are cut from strips of cloth. */
  of(cuts: Cut[], strips: CutStrip[]): Planned {
    return { cuts, fabric: this.cloth.toBuy(stacked(strips)), strips };
  }

  /** How to cut these from cloth of this width. If that is not possible, the error is about `part`. */
  plan(cuts: Cut[], part: Part, width: Exact): Planned {
    const pieces = cuts.map((cut) => ({
      width: cut.length,
      height: cut.width,
      count: cut.count,
      turn: true,
    }));
    const on = { width, step: ANY };
    const rough = roughly(cuts, width);
    // A piece that does not fit is refused without a search.
    if (!rough) return this.planned(cuts, part, planCloth(pieces, on));
    const plan = this.planner(pieces, on);
    if (typeof plan === 'number') {
      this.areUnfinished = true;
      return this.of(cuts, rough.strips);
    }
    if (plan.ok && !canBeCut(pieces, on, plan)) return this.ledger.refuse(part, sayOfPlan('unsound'));
    return this.planned(cuts, part, plan);
  }

  private planned(cuts: Cut[], part: Part, plan: ReturnType<typeof planCloth>): Planned {
    if (!plan.ok) return this.ledger.refuse(part, plan.problem);
    const names = cuts.map(({ piece }) => piece);
    return { ...this.of(cuts, stripsOf(plan, names)), plan };
  }

  ways(cuts: Cut[], part: Part, width: Exact): Ways {
    const whole = this.plan(cuts, part, width);
    const pieces = joinedPieces(cuts, width, this.ledger.values);
    return { whole, joined: pieces && this.plan(pieces, part, width) };
  }

  /** Shows both ways to cut the sashing, if there are two, and what a slightly shorter strip would save. */
  sayJoins(sashes: Cut[], { whole, joined }: Ways, width: Exact): void {
    if (!joined) return;
    const { ledger } = this;
    const from = ['sashing', 'block', 'across', 'fabricWidth'];
    for (const [id, { fabric }] of [
      ['sashingJoined', joined],
      ['sashingWhole', whole],
    ] as const)
      ledger.row(id, fabric, { how: say('stripsAcross', { need: fabric }), from });
    const length = most(...sashes.map(({ length }) => length));
    const over = length.sub(width);
    if (over.gt(A_LITTLE)) return;
    const shorter = sashes.map(
      ({ count, piece, width: narrow, length }) => new Cut(count, piece, narrow, least(length, width)),
    );
    const now = least(whole.fabric.value, joined.fabric.value);
    const saves = now.sub(this.plan(shorter, 'sashing', width).fabric.value);
    ledger.note(say('littleTooLong', { length, over, saves }));
  }
}

/** The plan that takes less, or the first if both take the same. */
export const lessOf = (first: Planned, second: Planned | undefined): Planned =>
  second?.fabric.value.lt(first.fabric.value) ? second : first;
