import { exact, sum, wholeDown, wholeUp, type Exact } from '../measure/exact.js';
import { sayings, type Message } from '../measure/message.js';

/** Why a list cannot be planned. */
export interface PlanSayings {
  sizeOfNothing: undefined;
  longerThanCloth: undefined;
  wholeCount: undefined;
  tooManySizes: { most: number };
  tooManyPieces: undefined;
  tooManyToPlace: undefined;
  largerThanSheet: undefined;
  largerThanCloth: { cloth: Exact };
}

export const say = sayings<PlanSayings>();

/** What cannot be planned, and why. */
export interface NoPlan {
  ok: false;
  problem: Message;
  /** The place in the list of the piece that causes it, if one does. */
  piece?: number;
}

export const noPlan = (problem: Message, piece?: number): NoPlan => ({ ok: false, problem, piece });

/** Makes lengths whole numbers, so that the search compares plain integers. */
export interface Grid {
  /** Whether every length is a whole number of steps; if not, pieces are rounded up and cloth down. */
  exact: boolean;
  /** A piece, never smaller than it is. */
  up: (length: Exact) => number;
  /** Cloth, never larger than it is. */
  down: (length: Exact) => number;
  /** Back to inches. */
  inches: (steps: number) => Exact;
}

/** Steps per inch, fine enough for every mark of a ruler. */
const COARSE = 4096n;

/** The greatest common divisor. */
export const gcd = <T extends bigint | number>(a: T, b: T): T =>
  b ? gcd(b, ((a as number) % (b as number)) as T) : a;

/** The grid on which all lengths are whole numbers, or 1/4096 in if that would need more than `finest` steps an inch. */
export const gridFor = (lengths: Exact[], finest: number): Grid => {
  let steps = 1n;
  for (const { d } of lengths) if (steps <= finest) steps *= d / gcd(steps, d);
  const whole = steps <= finest;
  const perInch = exact(whole ? steps : COARSE);
  return {
    exact: whole,
    up: (length) => wholeUp(length.mul(perInch)),
    down: (length) => wholeDown(length.mul(perInch)),
    inches: (count) => exact(count).div(perInch),
  };
};

/** A search through more than this would take longer than one frame of a page. */
const MOST_SIZES = 1000;
export const MOST_PIECES = 1_000_000;
/** Inches: some 16 miles of cloth. */
const LONGEST = 1_000_000;

/** Why these sizes and counts cannot be planned, or undefined if they can. */
export const refuse = (cloth: Exact[], pieces: { sizes: Exact[]; count: number }[]): NoPlan | undefined => {
  const badSize = (size: Exact): Message | undefined =>
    size.lte(0) ? say('sizeOfNothing') : size.gt(LONGEST) ? say('longerThanCloth') : undefined;
  const badCount = (count: number): Message | undefined =>
    Number.isInteger(count) && count >= 0 ? undefined : say('wholeCount');
  for (const size of cloth) {
    const problem = badSize(size);
    if (problem) return noPlan(problem);
  }
  for (const [piece, { sizes, count }] of pieces.entries()) {
    const problem = badCount(count) ?? sizes.map(badSize).find(Boolean);
    if (problem) return noPlan(problem, piece);
  }
  if (pieces.length > MOST_SIZES) return noPlan(say('tooManySizes', { most: MOST_SIZES }));
  return sum(pieces.map(({ count }) => exact(count))).gt(MOST_PIECES)
    ? noPlan(say('tooManyPieces'))
    : undefined;
};
