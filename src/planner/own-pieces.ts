import type { Exact } from '../measure/exact.js';
import { canBeCut } from './check.js';
import { areasOf, givenBy } from './given-by.js';
import type { NoPlan } from './grid.js';
import type { Cloth, CutPiece, CuttingPlan, Sheet } from './plan.js';

/** Equal pieces of cloth that somebody has already. */
export interface OwnPiece {
  width: Exact;
  height: Exact;
  count: number;
}

/** What is cut from some of them. */
export interface CutFromOwn {
  /** Their place in the list. */
  own: number;
  /** One sheet for each of them that is used. Its pieces have the places of those that were asked for. */
  plan: CuttingPlan;
  /** How many of each piece. */
  counts: number[];
}

export interface OwnCut {
  used: CutFromOwn[];
  /** How many of each piece are left to cut from other cloth. */
  rest: number[];
}

/** Plans pieces on cloth, or gives its progress. */
type PlanOn = (pieces: CutPiece[], cloth: Cloth) => CuttingPlan | NoPlan | number;

const fits = ({ width, height, turn }: CutPiece, own: OwnPiece): boolean =>
  (width.lte(own.width) && height.lte(own.height)) ||
  (turn && height.lte(own.width) && width.lte(own.height));

/** The fullest sheets of a plan, at most so many. */
const fullest = (
  plan: CuttingPlan,
  pieces: CutPiece[],
  most: number,
): { sheets: Sheet[]; counts: number[] } => {
  const areas = areasOf(pieces);
  const filled = plan.sheets
    .map((sheet) => {
      const gives = givenBy(sheet, pieces.length);
      return { sheet, gives, area: gives.reduce((all, count, at) => all + count * (areas[at] ?? 0), 0) };
    })
    .sort((a, b) => b.area - a.area);
  const sheets: Sheet[] = [];
  const counts = pieces.map(() => 0);
  let left = most;
  for (const { sheet, gives } of filled) {
    const times = Math.min(left, sheet.times);
    if (!times) break;
    left -= times;
    sheets.push({ ...sheet, times });
    gives.forEach((count, at) => (counts[at] = (counts[at] ?? 0) + count * times));
  }
  return { sheets, counts };
};

/** The plan with each piece at the place that it has in the whole list. */
const placedAs = (sheets: Sheet[], places: number[]): Sheet[] => {
  const placeOf = (piece: number): number => places[piece] ?? piece;
  return sheets.map((sheet) => ({
    ...sheet,
    strips: sheet.strips.map((strip) => ({
      ...strip,
      cuts: strip.cuts.map((cut) => ({ ...cut, piece: placeOf(cut.piece) })),
      placed: strip.placed.map((spot) => ({ ...spot, piece: placeOf(spot.piece) })),
    })),
  }));
};

/**
 * Cuts as much as it can from cloth that is there already, in the order of that cloth: plans all pieces that fit on pieces of one
 * size, and uses the fullest of them. Gives the progress of a plan that is not ready yet.
 */
export const cutFromOwn = (wanted: CutPiece[], cloth: OwnPiece[], plan: PlanOn): OwnCut | number => {
  const rest = wanted.map(({ count }) => count);
  const used: CutFromOwn[] = [];
  for (const [own, piece] of cloth.entries()) {
    const places = wanted.flatMap((one, at) => (rest[at] && fits(one, piece) ? [at] : []));
    const pieces = places.flatMap((at) => {
      const one = wanted[at];
      return one ? [{ ...one, count: rest[at] ?? 0 }] : [];
    });
    if (!pieces.length || !piece.count) continue;
    const on = { width: piece.width, height: piece.height };
    const planned = plan(pieces, on);
    if (typeof planned === 'number') return planned;
    if (!planned.ok || !canBeCut(pieces, on, planned)) continue;
    const { sheets, counts } = fullest(planned, pieces, piece.count);
    const all = wanted.map(() => 0);
    places.forEach((place, at) => {
      all[place] = counts[at] ?? 0;
      rest[place] = (rest[place] ?? 0) - (counts[at] ?? 0);
    });
    const count = sheets.reduce((all, { times }) => all + times, 0);
    used.push({ own, counts: all, plan: { ...planned, sheets: placedAs(sheets, places), count } });
  }
  return { used, rest };
};

const areaOf = (pieces: Pick<CutPiece, 'width' | 'height' | 'count'>[]): number =>
  pieces.reduce((all, { width, height, count }) => all + width.mul(height).valueOf() * count, 0);

/** Whether all these pieces can be cut from this cloth. Undefined if it is not known yet. */
const canMake = (wanted: CutPiece[], cloth: OwnPiece[], plan: PlanOn): boolean | undefined => {
  if (areaOf(wanted) > areaOf(cloth) * (1 + 1e-9)) return false;
  const orders = [cloth, [...cloth].reverse()].map((order) => cutFromOwn(wanted, order, plan));
  const isMade = orders.some((cut) => typeof cut !== 'number' && cut.rest.every((left) => !left));
  return isMade || (orders.some((cut) => typeof cut === 'number') ? undefined : false);
};

/**
 * The largest number of things, at most so many, whose pieces can be cut from this cloth. It halves the range that is left, so it
 * makes few plans. Undefined while a plan is not ready.
 */
export const mostThatFit = (
  piecesOf: (things: number) => CutPiece[],
  cloth: OwnPiece[],
  most: number,
  plan: PlanOn,
): number | undefined => {
  const isMade = (things: number): boolean | undefined => canMake(piecesOf(things), cloth, plan);
  const all = isMade(most);
  if (all === undefined) return undefined;
  if (all) return most;
  let [made, notMade] = [0, most];
  while (notMade - made > 1) {
    const middle = Math.floor((made + notMade) / 2);
    const isMadeSo = isMade(middle);
    if (isMadeSo === undefined) return undefined;
    if (isMadeSo) made = middle;
    else notMade = middle;
  }
  return made;
};
