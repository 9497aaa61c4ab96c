import { planCloth } from '../planner/plan.js';
import { exact, sum, type Exact } from '../measure/exact.js';
import { purchase, soldLength, type Purchase } from '../measure/shop.js';
import { BOLT } from '../trade/conventions.js';
import type { Answer, Input, Refused } from './answer.js';
import { Book } from './book.js';
import type { FabricPlan } from './cutting.js';
import type { Planner } from './planning.js';
import { countField, lengthField, optional } from './fields.js';
import { clothFields, plural, quiltFields, shopFields } from './shared.js';
import { linesOf, type CountedLine } from './shopping-lines.js';
import {
  adoptCurrency,
  groupsOf,
  priceOf,
  readFabrics,
  readItems,
  sentences,
  type Item,
} from './worksheet-parts.js';

const { shrinkage, increment, currency } = shopFields;

export const worksheetFields = {
  width: optional(quiltFields.width, { more: true, hint: 'where there is no quilt top to reckon it from' }),
  length: optional(quiltFields.length, { more: true, hint: 'where there is no quilt top to reckon it from' }),
  fabricWidth: optional(
    lengthField(clothFields.fabricWidth.label, {
      more: true,
      hint: 'of every fabric that does not say its own',
    }),
  ),
  seam: optional(lengthField('Seam allowance', { zero: true, most: '2 in', more: true })),
  kits: optional(countField('Kits', 10_000, { hint: 'for a shop: how many kits to cut' })),
  bolt: {
    ...lengthField('Cloth on a bolt', {
      initial: BOLT,
      most: '100000 in',
      hint: 'a kit’s cloth is never pieced from two bolts',
    }),
    write: soldLength,
  },
  shrinkage,
  increment,
  currency,
};

export type WorksheetBook = Book<typeof worksheetFields>;

/** A fabric as the page declares it. */
export interface FabricInput {
  letter: string;
  name?: string | undefined;
  /** Of one yard or metre. */
  price?: unknown;
  /** Its usable width, for a note where it cannot be read; parts say themselves how wide their cloth is. */
  fabricWidth?: unknown;
}

/**
 * What one part of the quilt takes from one fabric. Its lengths are those of a calculator's result: exact inches, whatever
 * the worksheet's `units` are.
 */
export interface PartInput {
  /** `Binding`, `Borders` … */
  title: string;
  /** The fabric's letter; empty where the part names none. */
  fabric: string;
  /** Exact inches of cloth, before rounding. */
  need: string;
  /** The cloth's usable width it was reckoned with, exact inches. */
  width?: string;
  /** The same as sold, where a wash leaves less of it. Default `width`. */
  sold?: string;
  /** What is cut from it, for planning several parts together; absent where a part has to be cut on its own. */
  pieces?: { piece?: string; width: string; length: string; count: number; turn: boolean }[];
  /** Inches bought for one inch of washed cloth. Default 1. */
  washed?: string;
  /** Where its fabric has none: of one `per`. */
  price?: unknown;
  /** `yd` or `m`: what its price is of. Default: what the worksheet's fabrics are priced by. */
  per?: string;
}

/** Something bought by the piece: a package of batting, fat quarters. */
export interface ItemInput {
  title: string;
  /** The letter of the fabric it is of, where it is cloth. */
  fabric?: string | undefined;
  /** What to buy: `5 fat quarters`. */
  text: string;
  /** A decimal number, with its currency or without. */
  cost?: string | undefined;
}

/** Input of {@link reckonWorksheet}. */
export type WorksheetInput = Input<typeof worksheetFields> & {
  fabrics?: FabricInput[];
  parts?: PartInput[];
  items?: ItemInput[];
  /** What is wrong elsewhere on the worksheet, in sentences. */
  troubles?: string[];
  /** What is not on the list yet, in sentences. */
  unfinished?: string[];
  /** Letters that parts name, whether or not anything is cut from them. */
  named?: string[];
};

/** An amount of money: a decimal number, and as people write it. */
export type Money = NonNullable<Answer['cost']>;

/** One fabric, in one width, on the shopping list. Lengths are exact inches. */
export interface ShoppingLine {
  /** Empty for a part that names no fabric. */
  letter: string;
  name: string;
  /** What it is for, each with its own need. */
  parts: { title: string; need: string }[];
  /** Before rounding, all parts together. */
  need: string;
  /** What planning the parts together saves. */
  saved: string;
  buy: Purchase;
  /** What to buy in words: `3 3/4 yd`, with its width where that is not the usual one. */
  text: string;
  /** The cloth's usable width as sold; absent where no part says it. */
  width?: string;
  /** Exact inches bought beyond the need. */
  spare: string;
  /** The two lengths to buy, where they come to less than one, each for the parts of these titles. `buy` is both. */
  lengths?: { parts: string[]; need: string; buy: Purchase }[];
  price?: Money;
  cost?: Money;
  /** Where kits are cut: bolts needed; with what one kit buys in one length, fewer would not do. */
  bolts?: number;
  /** How to cut the parts from one length, where that saves cloth; otherwise each is cut as it says itself. */
  together?: FabricPlan;
}

/** What {@link reckonWorksheet} gives back. */
export interface WorksheetResult extends Answer {
  fabrics: ShoppingLine[];
  items: { title: string; fabric: string; name: string; text: string; cost?: Money }[];
  /** All costs together, where there are prices. */
  total?: Money;
  /** More will be to pay: something has no price, or is not on the list. `notes` name it. */
  soFar?: boolean;
  /** What one kit comes to, and the whole bolts and the items for all of them. */
  kits?: { count: number; each?: Money; cost?: Money };
}

const itemInWords = ({ text, fabric }: Item): string => (fabric ? `${text} of fabric ${fabric}` : text);

/** Something bought by the piece, in words, and what is to pay for it; undefined where it has no price. */
interface CountedItem {
  item: Item;
  text: string;
  paid: Exact | undefined;
}

const countItems = (book: WorksheetBook, items: Item[]): CountedItem[] =>
  items.map((item) => {
    const price = priceOf(book, item.price, item.text);
    return { item, text: itemInWords(item), paid: price && book.paid(price) };
  });

/** Says that a fabric is declared and nothing is cut from it, though a part may name it. */
const noteUnused = ({ notes }: WorksheetBook, letter: string, isNamed: boolean): void =>
  void notes.push(
    `Fabric ${letter} is declared, but no part is cut from it. ${isNamed ? 'The part that names it takes no cloth from it' : `Write fabric="${letter}" on a part`}.`,
  );

/** What everything comes to, with its rows and what has no price. */
const totals = (
  book: WorksheetBook,
  lines: CountedLine[],
  items: CountedItem[],
  isUnfinished: boolean,
): Pick<WorksheetResult, 'total' | 'soFar' | 'kits'> => {
  const { kits } = book.values;
  const counted = [...lines, ...items];
  const unpriced = counted.filter(({ paid }) => !paid).map(({ text }) => text);
  if (unpriced.length === counted.length)
    return { kits: kits ? { count: kits } : undefined, soFar: isUnfinished || undefined };
  if (unpriced.length)
    book.notes.push(`The total leaves out what has no price: ${[...new Set(unpriced)].join(', ')}.`);

  const costs = counted.flatMap(({ paid }) => paid ?? []);
  const total = book.sum(sum(costs));
  const soFar = isUnfinished || unpriced.length > 0;
  const words = soFar ? ' so far' : '';
  book.row(
    'total',
    `${kits ? 'One kit' : 'Total'}${words}`,
    total.text,
    costs.map((cost) => book.money(cost)).join(' + '),
  );
  const sums = { total, soFar: soFar || undefined };
  if (!kits) return sums;

  const ofItems = sum(items.flatMap(({ paid }) => paid ?? []));
  const whole = sum(lines.flatMap(({ boltCost }) => boltCost ?? [])).add(ofItems.mul(kits));
  // What a bolt is too short for has no number of bolts.
  const inBolts = lines.every(({ line: { bolts, buy } }) => bolts ?? buy.inches === '0');
  if (inBolts)
    book.row(
      'kitCost',
      `${kits > 1 ? `All ${kits} kits` : 'In whole bolts'}${words}`,
      book.money(whole),
      `whole bolts${items.length ? ', and the items of every kit' : ''}: ${book.money(book.paid(whole.div(kits)))} a kit`,
      ['kits', 'bolt'],
    );
  return {
    ...sums,
    kits: { count: kits, each: total, cost: inBolts ? book.sum(whole) : undefined },
  };
};

/** What is on the list, in a sentence. */
const summaryOf = (lines: CountedLine[], items: CountedItem[], isUnfinished: boolean): string => {
  const count = new Set(lines.map(({ line }, at) => line.letter || at)).size;
  const byLength = items.some(({ item }) => item.fabric) ? ' by length' : '';
  const things = [count ? plural(count, 'fabric') + byLength : '', ...items.map(({ text }) => text)]
    .filter(Boolean)
    .join(', ');
  return things
    ? `${things}.`
    : `Nothing on the list yet${isUnfinished ? '' : ': put calculators inside this worksheet'}.`;
};

/**
 * One shopping list from all the parts of a quilt: each fabric's parts are added before they are rounded, and planned
 * together where that saves cloth; with prices, and with bolts where kits are cut. A part whose fabric was not declared
 * still gets its line.
 */
export const reckonWorksheet = (
  input: WorksheetInput = {},
  plan: Planner = planCloth,
): WorksheetResult | Refused => {
  const book = new Book(worksheetFields, input);
  return book.finish<WorksheetResult>(() => {
    const given = input ?? {};
    adoptCurrency(book, given);
    const declared = readFabrics(book, given.fabrics);
    const items = readItems(given.items, declared);
    const unfinished = sentences(given.unfinished);
    const isUnfinished = unfinished.length > 0;
    book.notes.push(...sentences(given.troubles), ...unfinished);
    book.given(
      'kits',
      'bolt',
      'width',
      'length',
      'fabricWidth',
      'seam',
      'shrinkage',
      'increment',
      'currency',
    );

    const lines = groupsOf(book, declared, given.parts).flatMap((group) => {
      if (group.parts.length) return linesOf(book, declared, group, plan);
      const { letter } = group;
      if (!isUnfinished && !items.some(({ fabric }) => fabric === letter))
        noteUnused(book, letter, sentences(given.named).includes(letter));
      return [];
    });
    const bought = countItems(book, items);
    const money = totals(book, lines, bought, isUnfinished);

    const need = sum(lines.map(({ line }) => exact(line.need)));
    const inches = sum(lines.map(({ line }) => exact(line.buy.inches)));
    return {
      buy: purchase(inches, book.values.increment, book.style.comma),
      fabric: need,
      spare: inches.sub(need),
      summary: summaryOf(lines, bought, isUnfinished),
      cuts: [],
      fabrics: lines.map(({ line }) => line),
      items: bought.map(({ item: { price: _, ...item }, paid }) => ({
        ...item,
        cost: paid && book.sum(paid),
      })),
      ...money,
    };
  });
};
