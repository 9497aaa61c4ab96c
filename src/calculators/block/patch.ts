import { exact, type Exact } from '../../measure/exact.js';

/** How a patch is divided, and which way its seams run. */
export type PatchShape =
  /** One piece of one fabric. */
  | { kind: 'plain' }
  /** Two triangles. The seam rises to the right, or falls. The first letter is that on the left. */
  | { kind: 'half'; seam: 'rising' | 'falling' }
  /** Four triangles, clockwise from the top. */
  | { kind: 'quarter' }
  /** A goose between two pieces of sky. The letters are sky, goose, sky, from the left or from the top. */
  | { kind: 'goose'; flies: Flight }
  /** A square on point, and its four corners. */
  | { kind: 'inside' };

export const FLIGHTS = ['up', 'down', 'left', 'right'] as const;
/** The way a goose flies: to the side where its point is. */
export type Flight = (typeof FLIGHTS)[number];

/** A patch as somebody wrote it: its letters, in the order of its kind, and how it is divided. */
export type Patch = PatchShape & { letters: string[] };

/** A patch in its place: cells from the left and from the top, and how many it covers. */
export type PlacedPatch = Patch & { column: number; row: number; across: number; down: number };

/** A block of equal cells. The patches cover it, and each cell only once. */
export interface Chart {
  columns: number;
  rows: number;
  patches: PlacedPatch[];
}

/** A fabric's letter: `A`, `b`, `A1`, or the number that a pattern gives it. */
const LETTER = String.raw`(\p{L}\p{M}*\d{0,2}|\d{1,2})`;

const pattern = (written: string): RegExp => new RegExp(`^${written.replaceAll('L', LETTER)}$`, 'iu');

/** The ways to write a patch, each with what it is. */
const WRITTEN: [RegExp, PatchShape][] = [
  [pattern('L'), { kind: 'plain' }],
  [pattern('L/L'), { kind: 'half', seam: 'rising' }],
  [pattern(String.raw`L\\L`), { kind: 'half', seam: 'falling' }],
  [pattern('L/L/L/L'), { kind: 'quarter' }],
  [pattern('L L L'), { kind: 'goose', flies: 'up' }],
  [pattern('L in L'), { kind: 'inside' }],
];

/** What a patch is, as it is written. Undefined if nobody can read it. */
export const patchOf = (written: string): Patch | undefined => {
  for (const [pattern, shape] of WRITTEN) {
    const [, ...letters] = pattern.exec(written) ?? [];
    if (letters.length) return { ...shape, letters };
  }
  return undefined;
};

const HALF = exact(1, 2);
const QUARTER = exact(1, 4);

/** What part of a patch each of its letters covers. */
const PARTS: Record<Patch['kind'], Exact[]> = {
  plain: [exact(1)],
  half: [HALF, HALF],
  quarter: [QUARTER, QUARTER, QUARTER, QUARTER],
  goose: [QUARTER, HALF, QUARTER],
  inside: [HALF, HALF],
};

export const partsOf = ({ kind }: Pick<Patch, 'kind'>): Exact[] => PARTS[kind];

/** How many pieces of cloth a patch is sewn from. */
export const PIECES: Record<Patch['kind'], number> = { plain: 1, half: 2, quarter: 4, goose: 3, inside: 5 };
