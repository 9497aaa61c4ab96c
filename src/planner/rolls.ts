import { wholeUp, type Exact } from '../measure/exact.js';

/** One way to cut a piece from a roll, in lengths that are joined edge to edge. */
export interface RollPlan {
  roll: Exact;
  lengths: number;
  /** How long each length is cut. */
  each: Exact;
  /** `lengthwise`: the roll's length runs along the piece's length; `crosswise`: across it. */
  direction: 'lengthwise' | 'crosswise';
  fabric: Exact;
}

interface Piece {
  width: Exact;
  length: Exact;
}

/** Both directions on one roll; the second only if it uses less. */
const plansOn = (roll: Exact, { width, length }: Piece): RollPlan[] => {
  const plan = (across: Exact, each: Exact, direction: RollPlan['direction']): RollPlan => {
    const lengths = wholeUp(across.div(roll));
    return { roll, lengths, each, direction, fabric: each.mul(lengths) };
  };
  const [first, second] = [plan(width, length, 'lengthwise'), plan(length, width, 'crosswise')].sort(
    (a, b) => a.lengths - b.lengths || a.fabric.compare(b.fabric),
  ) as [RollPlan, RollPlan];
  return second.fabric.lt(first.fabric) ? [first, second] : [first];
};

/**
 * Ways to cut a piece from rolls of these widths, best first: the fewest lengths, then the least area. Ways with more than two
 * lengths are left out, unless no roll is wide enough for two.
 */
export const rollPlans = (rolls: Exact[], piece: Piece): RollPlan[] => {
  const all = rolls.flatMap((roll) => plansOn(roll, piece));
  const butted = all.filter(({ lengths }) => lengths <= 2);
  const area = ({ roll, fabric }: RollPlan): Exact => roll.mul(fabric);
  return (butted.length ? butted : all).sort(
    (a, b) => a.lengths - b.lengths || area(a).compare(area(b)) || a.fabric.compare(b.fabric),
  );
};
