import { fewest, reachOf } from '../planner/joins.js';
import { fewestShared } from '../planner/share.js';
import { most, sum, toMark, wholeDown, type Exact } from '../measure/exact.js';
import type { Piece } from './border-lengths.js';
import type { Book } from './book.js';
import type { bordersFields } from './borders.js';
import { plural } from './shared.js';

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

/** The cloth the strips are cut from, and the book they are reckoned in. */
export interface Cloth extends ReturnType<Book<typeof bordersFields>['cloth']> {
  book: Book<typeof bordersFields>;
}

/** The strips for one lot, and how they were counted. */
interface LotStrips {
  lot: Lot;
  strips: number;
  joins: number;
  how: string;
}

export const count = <Key extends string>(things: Record<Key, number>[], key: Key): number =>
  things.reduce((all, thing) => all + thing[key], 0);

/** One way to cut a border. */
export interface BorderPlan<Length = string> {
  /** `joined`: strips across the cloth, joined into one length and cut up; `separate`: strips across the cloth, each piece
   * made on its own; `along`: parallel to the selvage, without joins. */
  plan: 'joined' | 'separate' | 'along';
  strips: number;
  joins: number;
  /** As bought, before the wash. */
  fabric: Length;
}

/** Room for pieces that lie along the cloth, or one of them. */
interface Room {
  width: Exact;
  length: Exact;
}

/** A plan with its rows' words: how the strips were counted, and the cloth they take. */
export interface WordedPlan extends BorderPlan<Exact> {
  how: string;
  fabricHow: string;
}

/** Every way to cut a border that this cloth allows: joined, separate, along. */
export const borderPlans = (lots: Lot[], { book, cloth, clothRow, kept }: Cloth): WordedPlan[] => {
  const { n } = book;
  const { join, seam } = book.values;
  const lossOf = ({ width }: Lot): Exact => (join === 'diagonal' ? width : seam.mul(2));
  const list = (pieces: Lot['pieces'], and: string): string =>
    pieces.map(({ length, count }) => `${count} × ${n(length)}`).join(and);

  const joinAll = (lot: Lot): LotStrips | undefined => {
    const loss = lossOf(lot);
    const all = sum(lot.pieces.map(({ length, count }) => length.mul(count)));
    const strips = fewest(all, cloth, loss);
    if (!strips) return undefined;
    const joins = strips - 1;
    const reach = book.joined(strips, clothRow, `${joins} × ${n(loss)}`, reachOf(strips, cloth, loss));
    return { lot, strips, joins, how: `${reach} ≥ ${list(lot.pieces, ' + ')} = ${n(all)}` };
  };

  const makeEach = (lot: Lot): LotStrips | undefined => {
    const loss = lossOf(lot);
    const rests: Lot['pieces'] = [];
    let joins = 0;
    for (const { length, count } of lot.pieces) {
      const strips = fewest(length, cloth, loss);
      if (!strips) return undefined;
      joins += (strips - 1) * count;
      rests.push({ length: length.sub(cloth.sub(loss).mul(strips - 1)), count });
    }
    const shared = fewestShared(
      rests.flatMap(({ length, count }) => Array<Exact>(count).fill(length)),
      cloth,
    );
    const how = `${joins ? `${joins} whole + ` : ''}${shared} cut into ${list(rests, ', ')}${joins ? ` (each join uses ${n(loss)})` : ''}`;
    return { lot, strips: joins + shared, joins, how };
  };

  const across = (plan: BorderPlan['plan'], cut: (lot: Lot) => LotStrips | undefined): WordedPlan[] => {
    const made = lots.map(cut).filter((strips) => strips !== undefined);
    if (made.length < lots.length) return [];
    return [
      {
        plan,
        strips: count(made, 'strips'),
        joins: count(made, 'joins'),
        fabric: sum(made.map(({ lot, strips }) => lot.width.mul(strips))).div(kept),
        how: made.map(({ how }) => how).join('; '),
        fabricHow: made.map(({ lot, strips }) => `${strips} × ${n(lot.width)}`).join(' + '),
      },
    ];
  };

  /**
   * Side by side as far as the cloth is wide, longest first; a row is as long as its longest piece, and shorter ones lie
   * one behind another in it.
   */
  const along = (): WordedPlan[] => {
    if (lots.some(({ width }) => width.gt(cloth))) return [];
    const pieces = lots
      .flatMap(({ width, pieces }) =>
        pieces.flatMap(({ length, count }) => Array<Room>(count).fill({ width, length })),
      )
      .sort((a, b) => b.length.compare(a.length));
    /** What is left of each row beside its pieces, and of each column behind them. */
    const rows: Room[] = [];
    const columns: Room[] = [];
    let behind = '';
    for (const { width, length } of pieces) {
      let column = columns.find((column) => column.width.gte(width) && column.length.gte(length));
      if (column) behind = ', shorter ones one behind another';
      else {
        let row = rows.find((row) => row.width.gte(width));
        if (!row) rows.push((row = { width: cloth, length }));
        row.width = row.width.sub(width);
        columns.push((column = { width, length: row.length }));
      }
      column.length = column.length.sub(length);
    }
    const [{ width }, other] = lots as [Lot, Lot?];
    const fit = other ? 'as many as fit' : `${clothRow} ÷ ${n(width)}: ${wholeDown(cloth.div(width))} fit`;
    const how = `${fit} side by side, in ${plural(rows.length, 'row')}${behind}`;
    return [
      {
        plan: 'along',
        strips: pieces.length,
        joins: 0,
        fabric: sum(rows.map(({ length }) => length)).div(kept),
        how,
        fabricHow: rows[1] ? rows.map(({ length }) => n(length)).join(' + ') : 'the longest piece',
      },
    ];
  };

  return [...across('joined', joinAll), ...across('separate', makeEach), ...along()];
};

/**
 * The plan to use; undefined where there is none for this grain. Across the cloth it is the one with fewer strips (less
 * cloth, where strips have two widths), then with fewer joins; a tie goes to the joined one, where nothing has to be kept
 * apart.
 */
export const bestPlan = (plans: WordedPlan[], grain: string): WordedPlan | undefined =>
  plans
    .filter(({ plan }) => (plan === 'along') === (grain === 'along'))
    .sort((a, b) => a.fabric.compare(b.fabric) || a.joins - b.joins)[0];
