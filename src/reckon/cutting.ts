import { canBeCut } from '../cutting/check.js';
import { planCloth, type Cloth, type CutPiece, type CuttingPlan } from '../cutting/plan.js';
import type { NoPlan } from '../cutting/grid.js';
import { exact, least, most, ONE, sum, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { quoted, splitSize } from '../measure/parse.js';
import { purchase, toPriced, type Purchase } from '../measure/shop.js';
import { SHEETS } from '../trade/cloths.js';
import { SEAM } from '../trade/conventions.js';
import { MAT, RULER } from '../trade/patches.js';
import type { Answer, Cut, Input, Refused } from './answer.js';
import { Book } from './book.js';
import { cutListInUnit, readCutList, writeCutList } from './cut-list.js';
import {
  flagField,
  isBlank,
  lengthField,
  lengthOf,
  moneyField,
  optional,
  readField,
  sheetField,
  sizeField,
  textOf,
} from './fields.js';
import { clothFields, markField, plural, shopFields } from './shared.js';
import { laidOut, stacked, UNSOUND, type CutStrip, type LaidPiece } from './strips.js';

export const cuttingFields = {
  list: optional({
    kind: 'own',
    label: 'Cut list',
    lines: true,
    read: (raw) => raw,
    write: writeCutList,
    marked: cutListInUnit,
    hint: 'fabric | piece | cut size | how many; a line each',
  }),
  sheet: sheetField('Cut from', {
    hint: 'empty for cloth by length; fat-quarter, fat-eighth, or a size like 18 x 20, width first on a one-way print',
  }),
  ...clothFields,
  seam: lengthField('Seam allowance', {
    initial: SEAM,
    zero: true,
    most: '2 in',
    hint: 'what a finished size lacks',
    more: true,
  }),
  oneWay: flagField('One-way print'),
  ruler: lengthField('Ruler, length', { initial: RULER, most: '120 in', more: true }),
  mat: sizeField('Cutting mat', { initial: MAT, more: true }),
  ...markField,
  ...shopFields,
  price: moneyField('Price of a yard, a metre or a sheet'),
};

/** Input of {@link reckonCutting}: `list` (rows of cells, or text), `sheet`, `oneWay`, `ruler`, `mat`, `fabricWidth`, … */
export type CuttingInput = Input<typeof cuttingFields> & {
  /** Usable widths of fabrics, by their letters, where they differ from `fabricWidth`. */
  widths?: Record<string, unknown> | undefined;
  /** The width of every other fabric that the list names. Default `fabricWidth`. */
  usualWidth?: unknown;
  /** What the reader should know about this list, in sentences. */
  caution?: unknown;
};

/** One fabric's plan. */
export interface FabricPlan {
  /** Its letter, as the cut list names it. */
  fabric: string;
  /** Exact inches of cloth before rounding; 0 where it is cut from sheets. */
  need: string;
  /** Sheets needed, where it is cut from sheets. */
  sheets?: number;
  buy: Purchase;
  /** What it costs, as a decimal number, where a price was given. */
  cost?: string;
  strips: CutStrip[];
  layout: LaidPiece[];
  pieces: Cut[];
  /** The cloth or sheet, usable: exact inches across, and along what is used. */
  width: string;
  height: string;
  /** The usable width as sold, before a wash. */
  sold?: string;
}

/** What {@link reckonCutting} gives back. */
export interface CuttingResult extends Answer {
  /** Sheets in all, where the list is cut from sheets. */
  sheets?: number;
  /** The first fabric's layout. */
  layout: LaidPiece[];
  fabrics: FabricPlan[];
}

/** Plans pieces on cloth. One that plans without holding up the page gives how much is done, from 0 to 1, until it is. */
export type Planner = (pieces: CutPiece[], cloth: Cloth) => CuttingPlan | NoPlan | number;

/** Begins the message of a list whose plan is not ready yet. */
export const PLANNING = 'The layout is being planned';

interface Sheet {
  width: Exact;
  height: Exact;
  name: string;
  /** Its size as it is sold, where the name does not say it. */
  size: string;
}

const sheets = ({ height, name, size }: Sheet, count: number): Purchase => ({
  inches: mixed(height.mul(count)),
  amount: `${count}`,
  unit: 'sheet',
  text: plural(count, name) + size,
});

const widthIn = (widths: CuttingInput['widths'], fabric: string): unknown =>
  widths && Object.hasOwn(widths, fabric) && !isBlank(widths[fabric]) ? widths[fabric] : undefined;

/** Sheets by their names, or a size written out; undefined for cloth by length. */
const sheetOf = (book: Book<typeof cuttingFields>, kept: Exact): Sheet | undefined => {
  const written = book.values.sheet;
  if (!written) return undefined;
  const key = written.toLowerCase().replace(/\s+/g, '-');
  const named = Object.hasOwn(SHEETS, key) ? SHEETS[key] : undefined;
  const sides = named ? [named.width, named.height] : splitSize(written);
  if (!sides)
    return book.refuse(
      'sheet',
      `${quoted(written)} is not a sheet of cloth. Write fat-quarter, fat-eighth or a size like 18 x 20.`,
    );
  const [a, b] = book.blame('sheet', () => sides.map((side) => lengthOf(side, book.style))) as [Exact, Exact];
  if (a.lte(0) || b.lte(0)) book.refuse('sheet', 'A sheet’s sides are more than 0. Write it like 18 x 20.');
  book.cautionOfSelvages(most(a, b));
  // A one-way print has to lie as it is written; else the longer side is across, so that there are fewer cuts.
  const [width, height] = book.values.oneWay ? [a, b] : [most(a, b), least(a, b)];
  const { name = 'sheet' } = named ?? {};
  return {
    width: width.mul(kept),
    height: height.mul(kept),
    name,
    size: name.startsWith('fat') ? '' : `, ${book.size(a, b)}`,
  };
};

/** How often the cloth is folded so that a cut across it fits the ruler and the mat. */
const foldsFor = (width: Exact, reach: Exact): number => {
  let folds = 0;
  for (let folded = width; folded.gt(reach) && folds < 10; folded = folded.div(2)) folds += 1;
  return folds;
};

/** A rotary cutter goes through four layers and no more. Common practice, no source. */
const FOLDS = ['without a fold', 'folded once, selvage to selvage', 'folded twice, in four layers'];

/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back. Impossible inputs give `errors`, never an exception.
 */
export const reckonCutting = (
  input: CuttingInput = {},
  plan: Planner = planCloth,
): CuttingResult | Refused => {
  const book = new Book(cuttingFields, input);
  return book.finish<CuttingResult>(() => {
    const { l, n, size } = book;
    const { list, oneWay, ruler, mat, increment, mark, price, shrinkage, seam, fabricWidth } = book.values;
    book.given('list', 'sheet');
    const listed = book.blame('list', () => readCutList(list, { style: book.style, mark, seam }));
    const sheet = sheetOf(book, ONE.sub(shrinkage));
    const { cloth, kept, washed } = sheet ? { cloth: sheet.width, kept: ONE, washed: '' } : book.cloth();
    const isMeasured = book.rows.some(({ role }) => role === 'measured');
    book.given('oneWay', 'seam', 'ruler', 'mat', 'mark', 'shrinkage', 'increment', 'price', 'currency');

    const letters = [...new Set(listed.map(({ fabric }) => fabric))];
    let bought: ReturnType<Book<typeof cuttingFields>['buy']> | undefined;
    const fabrics = letters.map((fabric): FabricPlan => {
      const mine = listed.filter((piece) => piece.fabric === fabric);
      const pieces = mine.map(({ width, length, count }) => ({
        width,
        height: length,
        count,
        turn: !oneWay,
      }));
      const own = sheet || !fabric ? undefined : (widthIn(input?.widths, fabric) ?? input?.usualWidth);
      const sold = isBlank(own)
        ? fabricWidth
        : book.blame(
            'fabricWidth',
            () => readField(clothFields.fabricWidth, own, book.style),
            `The width of fabric ${fabric}: `,
          );
      // What was measured may be of this fabric.
      const width = isBlank(own) ? cloth : isMeasured ? least(cloth, sold.mul(kept)) : sold.mul(kept);
      const on = {
        width,
        height: sheet?.height,
        step: increment.sizes.length === 1 ? increment.sizes[0]!.mul(kept) : undefined,
      };
      const planned = plan(pieces, on);
      if (typeof planned === 'number')
        return book.refuse('list', `${PLANNING}: ${Math.round(planned * 100)} % done.`);
      if (!planned.ok) {
        const piece = mine[planned.piece ?? -1];
        return book.refuse(
          'list',
          `${piece ? `${piece.piece}, ${size(piece.width, piece.length)}: ` : ''}${planned.message}`,
        );
      }
      if (!canBeCut(pieces, on, planned)) return book.refuse('list', UNSOUND);

      const laid = laidOut(
        planned,
        on,
        mine.map(({ cutAs }) => cutAs),
        mine.map(({ each }) => each),
      );
      const need = planned.length.div(kept);
      const called = fabric ? `Fabric ${fabric}` : 'Cloth';
      const from = ['list', sheet ? 'sheet' : 'fabricWidth', 'oneWay'];
      const less = (than: string): string =>
        planned.exact ? `; ${than} would not do` : `; no layout on ${than} was found`;
      const how = `strips across cloth of ${l(width)}: ${stacked(laid.strips, n, washed)} = ${l(need)}${less('less')}`;
      let buy: Purchase;
      if (sheet) {
        buy = sheets(sheet, planned.count);
        const tall = sum(laid.strips.map(({ count, height }) => exact(height).mul(count)));
        book.row(
          `fabric-${fabric}`,
          called,
          buy.text,
          `strips ${l(width)} long: ${stacked(laid.strips, n)} = ${n(tall)} ≤ ${planned.count} × ${n(sheet.height)} = ${l(sheet.height.mul(planned.count))}${less('fewer')}`,
          from,
        );
      } else if (letters.length > 1) {
        book.row(`fabric-${fabric}`, called, need, how, from);
        ({ buy } = book.upToStep(need, `${called}: `));
      } else ({ buy } = bought = book.buy(need, how, from));
      return {
        fabric,
        need: sheet ? '0' : mixed(need),
        ...(sheet && { sheets: planned.count }),
        buy,
        ...(price && {
          cost: book.sum((sheet ? exact(planned.count) : toPriced(exact(buy.inches), increment)).mul(price))
            .amount,
        }),
        ...laid,
        ...(!sheet && { sold: mixed(sold) }),
        pieces: mine.map(({ piece, width, length, count, cutUp }) =>
          book.cut(
            count,
            [fabric, cutUp ? `${piece}: squares, ${cutUp}` : piece].filter(Boolean).join(' · '),
            width,
            length,
          ),
        ),
      };
    });

    const reach = least(ruler, most(...mat));
    const largest = (lengths: string[]): Exact =>
      lengths.map((length) => exact(length)).reduce((a, b) => most(a, b), exact(0));
    const widest = largest(fabrics.map(({ width }) => width));
    const tallest = largest(fabrics.flatMap(({ strips }) => strips.map(({ height }) => height)));
    const across = FOLDS[foldsFor(widest, reach)];
    if (!across)
      book.notes.push(
        `A cut across ${l(widest)} does not fit a ruler and mat of ${l(reach)}, even folded in four layers: cut the cloth to a narrower width first.`,
      );
    else
      book.notes.push(`Cut each strip across the cloth ${across}, so that the cut fits a ${l(reach)} ruler.`);
    const folds = foldsFor(tallest, reach);
    if (folds > 1)
      book.notes.push(
        `A strip ${l(tallest)} tall is longer than the ruler even folded once: mark it and cut it with scissors.`,
      );
    else if (folds)
      book.notes.push(
        `Fold a strip that is taller than ${l(reach)} once, end to end, before you cut pieces from it.`,
      );

    const caution = textOf(input?.caution);
    if (caution) book.notes.push(caution);
    const cuts = fabrics.flatMap(({ pieces }) => pieces);
    const shared = { layout: fabrics[0]!.layout, fabrics, cuts };
    if (bought)
      return {
        ...bought,
        ...shared,
        summary: `${plural(
          cuts.reduce((all, { count }) => all + count, 0),
          'piece',
        )} from ${l(exact(bought.fabric))} of cloth ${l(widest)} wide.`,
      };
    const total = (of: 'need' | 'inches' | 'amount'): Exact =>
      sum(fabrics.map(({ need, buy }) => exact(of === 'need' ? need : buy[of])));
    const count = total('amount');
    const buy = sheet
      ? sheets(sheet, count.valueOf())
      : purchase(total('inches'), increment, book.style.comma);
    book.price(sheet ? count : toPriced(total('inches'), increment), buy.text, price, ['list', 'price']);
    return {
      ...shared,
      buy,
      fabric: mixed(total('need')),
      spare: sheet ? '0' : mixed(total('inches').sub(total('need'))),
      ...(sheet && { sheets: count.valueOf() }),
      summary: `${fabrics.map(({ fabric, buy: { text } }) => `${fabric}${fabric && ': '}${text}`).join('; ')}${sheet && !sheet.size ? ` of ${size(sheet.width, sheet.height)}` : ''}.`,
    };
  });
};
