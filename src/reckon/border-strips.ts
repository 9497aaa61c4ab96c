import { planStock } from '../cutting/stock.js';
import { most, sum, toMark, wholeDown, ZERO, type Exact } from '../measure/exact.js';
import { fewest } from './backing.js';
import type { Piece } from './border-lengths.js';

/** Pieces of one border that are cut to the same width; all sizes are those that are really cut. */
export interface Lot {
  width: Exact;
  pieces: { length: Exact; count: number }[];
}

/**
 * A border's pieces by their cut width, in the sizes that the cut list gives. A mark may lie below a size, by less than
 * anybody can cut: then the size itself counts, so that cloth is never short of either.
 */
export const lotsOf = (pieces: Piece[], mark: Exact): Lot[] => {
  const takes = (size: Exact): Exact => most(size, toMark(size, mark));
  const lots: Lot[] = [];
  for (const { count, length, width } of pieces) {
    let lot = lots.find((lot) => lot.width.equals(takes(width)));
    if (!lot) lots.push((lot = { width: takes(width), pieces: [] }));
    lot.pieces.push({ count, length: takes(length) });
  }
  return lots;
};

/** The cloth the strips are cut from. */
export interface Cloth {
  /** Usable width, once washed. */
  width: Exact;
  /** What a join of two strips of that width uses up. */
  lossOf: (stripWidth: Exact) => Exact;
  /** What a wash leaves of each inch. */
  kept: Exact;
}

/** Equal pieces, each joined from whole strips and a last one. */
export interface Parts {
  whole: number;
  /** What the last strip is cut to; all there is of a piece no longer than the cloth is wide. */
  length: Exact;
  count: number;
}

/** The strips for one lot. */
export interface LotStrips {
  lot: Lot;
  strips: number;
  joins: number;
  /** How each of the lot's pieces is made, where each is made on its own. */
  parts?: Parts[];
}

/** One way to cut a border. */
export interface BorderPlan {
  /** `joined`: strips across the cloth, joined into one length and cut up; `separate`: strips across the cloth, each piece
   * made on its own; `along`: parallel to the selvage, without joins. */
  plan: 'joined' | 'separate' | 'along';
  strips: number;
  joins: number;
  /** As bought, before the wash. */
  fabric: Exact;
  lots: LotStrips[];
  /** Along the cloth: the length of each row of strips side by side. */
  rows: Exact[];
}

const reachOf = ({ pieces }: Lot): Exact => sum(pieces.map(({ length, count }) => length.mul(count)));

/** Whether strips can be that long: where a join uses up the whole width, one strip more adds nothing. */
const reaches = (length: Exact, { width }: Lot, cloth: Cloth): boolean =>
  length.lte(cloth.width) || cloth.lossOf(width).lt(cloth.width);

const joinAll = (lot: Lot, cloth: Cloth): LotStrips | undefined => {
  const reach = reachOf(lot);
  if (!reaches(reach, lot, cloth)) return undefined;
  const strips = fewest(reach, cloth.width, cloth.lossOf(lot.width).div(2));
  return { lot, strips, joins: strips - 1 };
};

const makeEach = (lot: Lot, cloth: Cloth): LotStrips | undefined => {
  if (!lot.pieces.every(({ length }) => reaches(length, lot, cloth))) return undefined;
  const loss = cloth.lossOf(lot.width);
  const parts = lot.pieces.map(({ length, count }): Parts => {
    const whole = fewest(length, cloth.width, loss.div(2)) - 1;
    return { whole, length: length.sub(cloth.width.sub(loss).mul(whole)), count };
  });
  const joins = parts.reduce((all, { whole, count }) => all + whole * count, 0);
  const shared = planStock(parts, cloth.width);
  return shared.ok ? { lot, strips: joins + shared.count, joins, parts } : undefined;
};

const across = (plan: BorderPlan['plan'], lots: (LotStrips | undefined)[], { kept }: Cloth): BorderPlan[] => {
  const made = lots.filter((lot) => lot !== undefined);
  if (made.length < lots.length) return [];
  const all = (of: 'strips' | 'joins'): number => made.reduce((count, lot) => count + lot[of], 0);
  const fabric = sum(made.map(({ lot, strips }) => lot.width.mul(strips))).div(kept);
  return [{ plan, strips: all('strips'), joins: all('joins'), fabric, lots: made, rows: [] }];
};

/** Side by side as far as the cloth is wide, longest first; a row is as long as its longest piece. */
const along = (lots: Lot[], { width, kept }: Cloth): BorderPlan[] => {
  if (lots.some((lot) => lot.width.gt(width))) return [];
  const pieces = lots
    .flatMap((lot) => lot.pieces.map((piece) => ({ ...piece, width: lot.width })))
    .sort((a, b) => b.length.compare(a.length));
  const rows: Exact[] = [];
  let room = ZERO;
  for (const piece of pieces)
    for (let left = piece.count; left > 0;) {
      if (room.lt(piece.width)) {
        rows.push(piece.length);
        room = width;
      }
      const fit = Math.min(left, wholeDown(room.div(piece.width)));
      left -= fit;
      room = room.sub(piece.width.mul(fit));
    }
  const made = lots.map((lot) => ({
    lot,
    strips: lot.pieces.reduce((all, { count }) => all + count, 0),
    joins: 0,
  }));
  const strips = made.reduce((all, lot) => all + lot.strips, 0);
  return [{ plan: 'along', strips, joins: 0, fabric: sum(rows).div(kept), lots: made, rows }];
};

/** Every way to cut a border that this cloth allows: joined, separate, along. */
export const borderPlans = (lots: Lot[], cloth: Cloth): BorderPlan[] => [
  ...across(
    'joined',
    lots.map((lot) => joinAll(lot, cloth)),
    cloth,
  ),
  ...across(
    'separate',
    lots.map((lot) => makeEach(lot, cloth)),
    cloth,
  ),
  ...along(lots, cloth),
];

/**
 * The plan to use; undefined where there is none for this grain. Across the cloth it is the one with fewer strips (less
 * cloth, where strips have two widths), then with fewer joins; a tie goes to the joined one, where nothing has to be kept
 * apart.
 */
export const bestPlan = (plans: BorderPlan[], grain: string): BorderPlan | undefined =>
  plans
    .filter(({ plan }) => (plan === 'along') === (grain === 'along'))
    .sort((a, b) => a.fabric.compare(b.fabric) || a.joins - b.joins)[0];

/** How a plan's strips were counted and what cloth they take, with the numbers filled in. */
export const planWords = (
  { lots, rows }: BorderPlan,
  { width, lossOf }: Cloth,
  n: (value: Exact) => string,
): { strips: string; fabric: string } => {
  if (rows.length) {
    const fit =
      lots.length === 1
        ? `${n(width)} ÷ ${n(lots[0]!.lot.width)}: ${wholeDown(width.div(lots[0]!.lot.width))} fit side by side`
        : 'side by side as far as they fit';
    return {
      strips: `${fit}, in ${rows.length} ${rows.length > 1 ? 'rows' : 'row'}`,
      fabric: rows.map(n).join(' + '),
    };
  }
  const each = (pieces: { length: Exact; count: number }[], and: string): string =>
    pieces.map(({ length, count }) => `${count} × ${n(length)}`).join(and);
  const joined = ({ lot, strips }: LotStrips): string => {
    const loss = lossOf(lot.width);
    const less = strips > 1 ? ` − ${strips - 1} × ${n(loss)}` : '';
    const got = width.mul(strips).sub(loss.mul(strips - 1));
    return `${strips} × ${n(width)}${less} = ${n(got)} ≥ ${each(lot.pieces, ' + ')} = ${n(reachOf(lot))}`;
  };
  const separate = (parts: Parts[], { strips, joins }: LotStrips): string =>
    `${joins ? `${joins} whole + ` : ''}${strips - joins} cut into ${each(parts, ', ')}`;
  return {
    strips: lots.map((made) => (made.parts ? separate(made.parts, made) : joined(made))).join('; '),
    fabric: lots.map(({ lot, strips }) => `${strips} × ${n(lot.width)}`).join(' + '),
  };
};
