import { canBeCut } from '../planner/check.js';
import { planCloth, type Cloth, type CuttingPlan } from '../planner/plan.js';
import { exact, ONE, sum, ZERO, type Exact } from '../measure/exact.js';
import { purchase, toPriced, type Purchase } from '../measure/shop.js';
import { SEAM } from '../trade/conventions.js';
import { MAT, RULER } from '../trade/patches.js';
import type { Answer, Cut, Input, Refused, Unwritten } from './answer.js';
import { Book } from './book.js';
import { cutListInUnit, readCutList, writeCutList, type ListedPiece } from './cut-list.js';
import {
  flagField,
  isBlank,
  lengthField,
  moneyField,
  optional,
  sheetField,
  sizeField,
  textOf,
} from './fields.js';
import { noteFolds } from './folds.js';
import { PLANNING, type Planner } from './planning.js';
import { sentence } from './sentences.js';
import { clothFields, markField, plural, shopFields } from './shared.js';
import { sheetOf, sheets, type Sheet } from './sheets.js';
import { laidOut, stacked, UNSOUND, type CutStrip, type LaidPiece } from './strips.js';
import { ownCloth, type OwnCloth } from './widths.js';

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

export type CuttingBook = Book<typeof cuttingFields>;

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

const widthIn = (widths: CuttingInput['widths'], fabric: string): unknown =>
  widths && Object.hasOwn(widths, fabric) && !isBlank(widths[fabric]) ? widths[fabric] : undefined;

/** A list that is being planned, and what it is cut from. */
interface Job {
  book: CuttingBook;
  input: CuttingInput;
  plan: Planner;
  sheet: Sheet | undefined;
  /** As {@link Book.cloth} has it, or a sheet's. */
  cloth: Exact;
  kept: Exact;
  washed: string;
  /** Whether the list names one fabric, or none. */
  isOne: boolean;
}

/** How wide a fabric is, and how wide it was sold, before a wash. */
const widthOf = (job: Job, fabric: string): OwnCloth<Exact> => {
  const { book, input, sheet } = job;
  const own = sheet || !fabric ? undefined : (widthIn(input.widths, fabric) ?? input.usualWidth);
  return ownCloth(book, job, own, `The width of fabric ${fabric}: `);
};

/** How to cut these pieces; refused where that is not possible or not known yet. */
const planFor = ({ book, plan }: Job, listed: ListedPiece[], on: Cloth): CuttingPlan => {
  const pieces = listed.map(({ width, length, count }) => ({
    width,
    height: length,
    count,
    turn: !book.values.oneWay,
  }));
  const planned = plan(pieces, on);
  if (typeof planned === 'number')
    return book.refuse('list', `${PLANNING}: ${Math.round(planned * 100)} % done.`);
  if (!planned.ok) {
    const piece = listed[planned.piece ?? -1];
    return book.refuse(
      'list',
      `${piece ? `${piece.piece}, ${book.size(piece.width, piece.length)}: ` : ''}${sentence(planned.problem)}`,
    );
  }
  return canBeCut(pieces, on, planned) ? planned : book.refuse('list', UNSOUND);
};

/** What to buy for a fabric's plan, with its rows. */
const buyFor = (
  { book, sheet, kept, washed, isOne }: Job,
  fabric: string,
  width: Exact,
  { length, count, exact: isLeast }: CuttingPlan,
  strips: CutStrip[],
): Purchase => {
  const { l, n } = book;
  const id = `fabric-${fabric}`;
  const called = fabric ? `Fabric ${fabric}` : 'Cloth';
  const from = ['list', sheet ? 'sheet' : 'fabricWidth', 'oneWay'];
  const less = (than: string): string =>
    isLeast ? `; ${than} would not do` : `; no layout on ${than} was found`;
  if (sheet) {
    const buy = sheets(sheet, count);
    const tall = sum(strips.map(({ count, height }) => exact(height).mul(count)));
    book.row(
      id,
      called,
      buy.text,
      `strips ${l(width)} long: ${stacked(strips, n)} = ${n(tall)} ≤ ${count} × ${n(sheet.height)} = ${l(sheet.height.mul(count))}${less('fewer')}`,
      from,
    );
    return buy;
  }
  const need = length.div(kept);
  const how = `strips across cloth of ${l(width)}: ${stacked(strips, n, washed)} = ${l(need)}${less('less')}`;
  if (isOne) return book.buy(need, how, from).buy;
  book.row(id, called, need, how, from);
  return book.upToStep(need, `${called}: `).buy;
};

/** As many examples as a person reads. */
const MOST_NAMED = 6;

/** Says which sizes were written between the ruler's marks, and what they are cut. */
const noteMarks = (book: CuttingBook, listed: ListedPiece[]): void => {
  const between = new Set(
    listed.flatMap(({ between }) => between).map((side) => book.l(side) + book.onMark(side)),
  );
  const named = [...between].slice(0, MOST_NAMED).join('; ');
  if (named)
    book.notes.push(
      `Sizes between the ruler’s marks are cut on one of them: ${named}${between.size > MOST_NAMED ? ' …' : '.'}`,
    );
};

/** A plan whose lengths are not yet written out. */
type Planned = Unwritten<FabricPlan> & Pick<FabricPlan, 'fabric' | 'buy'>;

/** Plans one fabric's pieces. */
const planFabric = (job: Job, fabric: string, listed: ListedPiece[]): Planned => {
  const { book, sheet, kept } = job;
  const { increment, price } = book.values;
  const { width, sold } = widthOf(job, fabric);
  // Of what is added to other parts before it is rounded up, less than a step counts too.
  const inSteps = increment.sizes.length === 1 && !book.input.shared;
  const on = {
    width,
    height: sheet?.height,
    step: inSteps ? increment.sizes[0]!.mul(kept) : undefined,
  };
  const planned = planFor(job, listed, on);
  const laid = laidOut(
    planned,
    on,
    listed.map(({ cutAs }) => cutAs),
    listed.map(({ each }) => each),
  );
  const buy = buyFor(job, fabric, width, planned, laid.strips);
  return {
    fabric,
    need: sheet ? ZERO : planned.length.div(kept),
    sheets: sheet && planned.count,
    buy,
    cost:
      price &&
      book.sum((sheet ? exact(planned.count) : toPriced(exact(buy.inches), increment)).mul(price)).amount,
    ...laid,
    sold: sheet ? undefined : sold,
    pieces: listed.map(({ piece, width, length, count, cutUp }) =>
      book.cut(
        count,
        [fabric, cutUp ? `${piece}: squares, ${cutUp}` : piece].filter(Boolean).join(' · '),
        width,
        length,
      ),
    ),
  };
};

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
    const { l } = book;
    const { list, increment, mark, price, shrinkage, seam } = book.values;
    book.given('list', 'sheet');
    const listed = book.blame('list', () => readCutList(list, { style: book.style, mark, seam }));
    const sheet = sheetOf(book, ONE.sub(shrinkage));
    const cloth = sheet ? { cloth: sheet.width, kept: ONE, washed: '' } : book.cloth();
    book.given('oneWay', 'seam', 'ruler', 'mat', 'mark', 'shrinkage', 'increment', 'price', 'currency');

    const letters = [...new Set(listed.map(({ fabric }) => fabric))];
    const isOne = letters.length === 1;
    const job: Job = { ...cloth, book, input: input ?? {}, plan, sheet, isOne };
    const fabrics = letters.map((letter) =>
      planFabric(
        job,
        letter,
        listed.filter(({ fabric }) => fabric === letter),
      ),
    );
    noteMarks(book, listed);
    noteFolds(book, fabrics);
    const caution = textOf(input?.caution);
    if (caution) book.notes.push(caution);

    const need = sum(fabrics.map(({ need }) => exact(need)));
    const inches = sum(fabrics.map(({ buy }) => exact(buy.inches)));
    const count = sum(fabrics.map(({ sheets = 0 }) => exact(sheets)));
    const buy = sheet ? sheets(sheet, count.valueOf()) : purchase(inches, increment, book.style.comma);
    // One fabric's cloth has its rows already, its cost among them.
    if (sheet || !isOne)
      book.price(sheet ? count : toPriced(inches, increment), buy.text, price, ['list', 'price']);
    const cuts = fabrics.flatMap(({ pieces }) => pieces);
    const [first] = fabrics as [Planned];
    return {
      buy,
      fabric: need,
      spare: sheet ? ZERO : inches.sub(need),
      sheets: sheet && count.valueOf(),
      layout: first.layout,
      fabrics,
      cuts,
      summary:
        sheet || !isOne
          ? `${fabrics.map(({ fabric, buy: { text } }) => `${fabric}${fabric && ': '}${text}`).join('; ')}${sheet && !sheet.size ? ` of ${book.size(sheet.width, sheet.height)}` : ''}.`
          : `${plural(
              cuts.reduce((all, { count }) => all + count, 0),
              'piece',
            )} from ${l(need)} of cloth ${l(exact(first.width))} wide.`,
    };
  });
};
