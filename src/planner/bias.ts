import { leastWhole, ONE, rootDown, wholeDown, ZERO, type Exact } from '../measure/exact.js';

/** Equal squares for continuous bias. */
interface BiasSquares {
  side: Exact;
  count: number;
  /** Whole rounds that the tube of each gives. */
  rounds: number;
  /** The length of all rounds, squared, before the joins between the squares are taken off. */
  lengthSquared: Exact;
}

/** What somebody wants of a bias binding or piping. */
export interface BiasNeed {
  length: Exact;
  strip: Exact;
  /** Allowance of the tube's two seams. */
  seam: Exact;
  /** What joining the bias of one square to the next uses up. */
  join: Exact;
  /** Each side is a whole multiple of this. */
  unit: Exact;
}

const squared = (value: Exact): Exact => value.mul(value);

/** What is left of a side after a seam has taken its two allowances. */
const sewn = (side: Exact, seam: Exact): Exact => side.sub(seam.mul(2));

/**
 * The side by area alone: √(length × strip) + 2 seams, rounded up to a whole unit. This rule counts every inch of the tube, also
 * a last round that is narrower than a strip. So it can be too small.
 */
export const squareByArea = ({ length, strip, seam, unit }: BiasNeed): Exact =>
  unit.mul(
    leastWhole((units) => {
      const side = sewn(unit.mul(units), seam);
      return side.gt(ZERO) && squared(side).gte(length.mul(strip));
    }),
  );

/**
 * The fewest equal squares, none wider than `widest`, whose whole rounds reach the length. Undefined if not even the widest
 * holds a round. A square of side a is cut on its diagonal and sewn up as a tube by two seams: with x = a − 2 seams the
 * tube's bias edges are x ÷ √2 apart and a round is x × √2 long. It compares squares, so no root is ever rounded.
 */
export const biasSquares = (
  { length, strip, seam, join, unit }: BiasNeed,
  widest: Exact,
): BiasSquares | undefined => {
  const side = (units: number): Exact => sewn(unit.mul(units), seam);
  const roundsOf = (units: number): number =>
    side(units).gt(ZERO) ? wholeDown(rootDown(squared(side(units).div(strip)).div(2), ONE)) : 0;
  const lengthSquared = (count: number, units: number): Exact =>
    squared(side(units).mul(count).mul(roundsOf(units))).mul(2);
  const reaches = (count: number, units: number): boolean =>
    lengthSquared(count, units).gte(squared(length.add(join.mul(count - 1))));

  const most = wholeDown(widest.div(unit));
  if (!roundsOf(most)) return undefined;
  const count = leastWhole((count) => reaches(count, most));
  const units = leastWhole((units) => reaches(count, units));
  return {
    side: unit.mul(units),
    count,
    rounds: roundsOf(units),
    lengthSquared: lengthSquared(count, units),
  };
};
