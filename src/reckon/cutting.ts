import { checkPlan } from '../cutting/check.js';
import { everyPiece, planCloth, type Cloth, type CutPiece, type CuttingPlan } from '../cutting/plan.js';
import type { NoPlan } from '../cutting/grid.js';
import { exact, least, most, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { splitSize } from '../measure/parse.js';
import { purchase, toStep, type Purchase } from '../measure/shop.js';
import { SHEETS } from '../trade/cloths.js';
import { MAT, RULER } from '../trade/patches.js';
import { Book, type Answer, type Cut, type Input, type Refused } from './book.js';
import { readCutList, writeCutList } from './cut-list.js';
import { lengthOf, type Fields } from './fields.js';
import { clothFields, markField, shopFields } from './shared.js';

export const cuttingFields = {
  list: { kind: 'own', label: 'Cut list', lines: true, read: (raw) => raw, write: writeCutList, hint: 'fabric | piece | cut size | how many; a line each' },
  sheet: { kind: 'text', label: 'Cut from', optional: true, hint: 'empty for cloth by length; fat-quarter, fat-eighth, or a size like 18 x 20' },
  ...clothFields,
  oneWay: { kind: 'flag', label: 'One-way print' },
  ruler: { kind: 'length', label: 'Ruler, length', initial: RULER, most: '120 in', more: true },
  mat: { kind: 'size', label: 'Cutting mat', initial: MAT, more: true },
  ...markField,
  ...shopFields,
} as const satisfies Fields;

/** Input of {@link reckonCutting}: `list` (rows of cells, or text), `sheet`, `oneWay`, `ruler`, `mat`, `fabricWidth`, … */
export type CuttingInput = Input<typeof cuttingFields>;

/** Where one piece lies. Exact inches from the left and the top of its cloth or sheet. */
export interface LaidPiece {
  x: string;
  y: string;
  width: string;
  height: string;
  /** The piece's name in the cut list. */
  piece: string;
  /** The sheet it lies on, from 0. */
  sheet: number;
}

/** Strips cut alike across the cloth, and what each gives. */
export interface CutStrip {
  count: number;
  height: string;
  gives: { piece: string; count: number }[];
}

/** One fabric's plan. */
export interface FabricPlan {
  /** Its letter, as the cut list names it. */
  fabric: string;
  /** Exact inches of cloth before rounding; 0 where it is cut from sheets. */
  need: string;
  /** Sheets needed, where it is cut from sheets. */
  sheets?: number;
  buy: Purchase;
  strips: CutStrip[];
  layout: LaidPiece[];
  pieces: Cut[];
  /** The cloth or sheet, usable: exact inches across, and along what is used. */
  width: string;
  height: string;
}

/** What {@link reckonCutting} gives back. */
export interface CuttingResult extends Answer {
  /** Sheets in all, where the list is cut from sheets. */
  sheets?: number;
  /** The first fabric's layout. */
  layout: LaidPiece[];
  fabrics: FabricPlan[];
}

/** Plans pieces on cloth; an element gives one that plans without holding up the page. */
export type Planner = (pieces: CutPiece[], cloth: Cloth) => CuttingPlan | NoPlan;

/** Pieces that a drawing shows one by one. */
const MOST_DRAWN = 1500;
const LAYERS = 4;

/** Sheets by their names, or a size written out; undefined for cloth by length. */
const sheetOf = (book: Book<typeof cuttingFields>): [width: Exact, height: Exact] | undefined => {
  const written = book.values.sheet;
  if (!written) return undefined;
  const named = SHEETS[written.toLowerCase().replace(/\s+/g, '-')];
  const sides = named ? [named.height, named.width] : splitSize(written);
  if (!sides)
    return book.refuse('sheet', `“${written}” is not a sheet of cloth. Write fat-quarter, fat-eighth or a size like 18 x 20.`);
  const [a, b] = book.blame('sheet', () => sides.map((side) => lengthOf(side, book.style))) as [Exact, Exact];
  if (a.lte(0) || b.lte(0)) book.refuse('sheet', 'A sheet’s sides are more than 0. Write it like 18 x 20.');
  return [most(a, b), least(a, b)];
};

/** How often the cloth is folded so that a cut across it fits the ruler and the mat. */
const foldsFor = (width: Exact, reach: Exact): number => {
  let folds = 0;
  for (let folded = width; folded.gt(reach) && folds < 10; folded = folded.div(2)) folds += 1;
  return folds;
};

const FOLDS = ['without a fold', 'folded once, selvage to selvage', 'folded twice, in four layers'];

/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back. Impossible inputs give `errors`, never an exception.
 */
export const reckonCutting = (input: CuttingInput = {}, plan: Planner = planCloth): CuttingResult | Refused => {
  const book = new Book(cuttingFields, input);
  return book.finish<CuttingResult>(() => {
    const { n, l } = book;
    const { list, oneWay, ruler, mat, increment, mark } = book.values;
    book.given('list', 'sheet');
    const listed = book.blame('list', () => readCutList(list, book.style, mark));
    const sheet = sheetOf(book);
    const { cloth, kept } = sheet ? { cloth: sheet[0], kept: exact(1) } : book.cloth();
    book.given('oneWay', 'ruler', 'mat', 'mark', 'shrinkage', 'increment', 'price', 'currency');

    const reach = least(ruler, most(...mat));
    const folds = foldsFor(cloth, reach);
    if (2 ** folds > LAYERS)
      book.notes.push(`A cut across ${l(cloth)} does not fit the ruler even folded in four layers: cut the cloth to a narrower width first.`);

    const letters = [...new Set(listed.map(({ fabric }) => fabric))];
    const fabrics = letters.map((fabric): FabricPlan => {
      const mine = listed.filter((piece) => piece.fabric === fabric);
      const pieces = mine.map(({ width, length, count }) => ({ width, height: length, count, turn: !oneWay }));
      const on = { width: cloth, height: sheet?.[1], step: increment.sizes.length === 1 ? increment.sizes[0]!.mul(kept) : undefined };
      const planned = plan(pieces, on);
      if (!planned.ok)
        return book.refuse('list', planned.piece === undefined ? planned.message : `${mine[planned.piece]!.piece}, ${book.size(mine[planned.piece]!.width, mine[planned.piece]!.length)}: ${planned.message}`);
      if (checkPlan(pieces, on, planned).length) return book.refuse('list', 'This plan did not pass its check and is not shown. Try the list in two parts.');
      const need = planned.length.div(kept);
      const strips = planned.sheets.flatMap(({ times, strips }) =>
        strips.map((strip): CutStrip => ({
          count: strip.times * times,
          height: mixed(strip.height),
          gives: strip.cuts.map(({ piece, count }) => ({ piece: mine[piece]!.piece, count })),
        })),
      );
      for (const { height } of strips)
        if (foldsFor(exact(height), reach) > 1) book.notes.push(`A strip ${l(exact(height))} tall is longer than the ruler folded once: mark it and cut it with scissors.`);
      const buy: Purchase = sheet
        ? { inches: mixed(sheet[1].mul(planned.count)), amount: `${planned.count}`, unit: 'sheet', text: `${planned.count} ${sheetName(book.values.sheet!, planned.count)}` }
        : purchase(toStep(need, increment), increment, book.style.comma);
      const id = `fabric-${fabric}`;
      book.row(
        id,
        fabric ? `Fabric ${fabric}` : 'Cloth',
        sheet ? buy.text : need,
        sheet ? `${n(cloth)} × ${l(sheet[1])} each; no fewer than ${planned.bound.toFraction()} would do` : `${strips.reduce((all, { count }) => all + count, 0)} strips across the cloth; no less than ${l(planned.bound)} would do`,
        ['list', sheet ? 'sheet' : 'fabricWidth', 'oneWay'],
      );
      return {
        fabric,
        need: sheet ? '0' : mixed(need),
        ...(sheet && { sheets: planned.count }),
        buy,
        strips,
        layout: everyPiece(planned, MOST_DRAWN).map(({ x, y, width, height, piece, sheet: at }) => ({
          x: mixed(x), y: mixed(y), width: mixed(width), height: mixed(height), piece: mine[piece]!.piece, sheet: at,
        })),
        pieces: mine.map(({ piece, width, length, count, cutUp }) => book.cut(count, [fabric, cutUp ? `${piece}: squares, ${cutUp}` : piece].filter(Boolean).join(' · '), width, length)),
        width: mixed(cloth),
        height: mixed(sheet ? sheet[1] : planned.length),
      };
    });

    const cuts = fabrics.flatMap(({ pieces }) => pieces);
    if (!sheet) book.notes.push(`Cut each strip across the cloth ${FOLDS[folds] ?? FOLDS[2]!}, so that the cut fits a ${l(ruler)} ruler.`);
    const [first] = fabrics;
    const layout = first?.layout ?? [];
    if (sheet) {
      const count = fabrics.reduce((all, { sheets }) => all + (sheets ?? 0), 0);
      const text = `${count} ${sheetName(book.values.sheet!, count)}`;
      book.price(exact(count), text, undefined, ['list', 'price']);
      return { buy: { inches: mixed(sheet[1].mul(count)), amount: `${count}`, unit: 'sheet', text }, fabric: '0', spare: '0', sheets: count, layout, fabrics, cuts, summary: `${text} of ${n(cloth)} × ${l(sheet[1])}${fabrics.length > 1 ? `, ${fabrics.length} fabrics` : ''}.` };
    }
    const needs = fabrics.map(({ need }) => exact(need));
    const total = needs.reduce((all, need) => all.add(need), exact(0));
    if (fabrics.length === 1) return { ...book.buy(total, `{fabric-${first!.fabric}}`.replace(/\{fabric-\}/, l(total)), ['list']), layout, fabrics, cuts, summary: `${cuts.reduce((all, { count }) => all + count, 0)} pieces from ${l(total)} of cloth ${l(cloth)} wide.` };
    const bought = fabrics.reduce((all, { buy }) => all.add(exact(buy.inches)), exact(0));
    const buy = purchase(bought, increment, book.style.comma);
    return { buy, fabric: mixed(total), spare: mixed(bought.sub(total)), layout, fabrics, cuts, summary: `${fabrics.map(({ fabric, buy: { text } }) => `${fabric || 'no letter'} ${text}`).join(', ')}.` };
  });
};

const sheetName = (written: string, count: number): string => {
  const name = SHEETS[written.toLowerCase().replace(/\s+/g, '-')]?.name ?? 'sheet';
  return count === 1 ? name : `${name}s`;
};

