import type { LooseCut } from '../calculators/calculator.js';
import { textOf } from '../ledger/field.js';
import { Ledger, type Input, type Reckoning } from '../ledger/ledger.js';
import { readLength } from '../ledger/lengths.js';
import { readSheet } from '../calculators/cutting/sheets.js';
import { ownWords } from '../ledger/own-words.js';
import type { Planner } from '../ledger/planning.js';
import { refuse, unlessRefused } from '../ledger/refusal.js';
import { sayOfShop } from '../ledger/shop.js';
import { most, ONE, ZERO, type Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import type { Rectangle } from '../planner/free.js';
import { planCloth } from '../planner/plan.js';
import type { WorkbookInput, WorkbookItem, WorkbookPart } from './input.js';
import { letterOf } from './parts.js';
import { adoptCurrency } from './prices.js';
import { reckonOn } from './reckon.js';
import { say } from './sayings.js';
import { worksheetFields, type WorksheetAnswer, type WorksheetLedger } from './shape.js';

/** A fabric as the page declares it. */
export interface FabricInput {
  letter: string;
  name?: string | undefined;
  /** What it is bought in, if that is not cloth by length: `fat-quarter`, or a size. Then its price is of one of these. */
  sheet?: unknown;
  /** What the reader has of it: `9 fat quarters`, `1 1/2 yd`, `9 x 40 in`, or several of these. */
  atHand?: unknown;
  /** Of one yard or metre. */
  price?: unknown;
  /** Its usable width. It is only for a note if it cannot be read: each part says how wide its cloth is. */
  fabricWidth?: unknown;
}

/**
 * What one part of the quilt takes from one fabric. Its lengths come from the result of a calculator, so they are exact inches. The
 * worksheet's `units` do not matter.
 */
export interface PartInput {
  /** `Binding`, `Borders` … */
  title: string;
  /** The fabric's letter; empty where the part names none. */
  fabric: string;
  /** Exact inches of cloth, before rounding. It does not count with `sheet`. */
  need: string;
  /** The cloth's usable width it was reckoned with, exact inches. */
  width?: string;
  /** The width as sold, if a wash leaves less of it. Default `width`. */
  sold?: string;
  /** The pieces, for planning several parts together. Absent if the part has to be cut on its own. */
  pieces?: { piece?: string; width: string; length: string; count: number; turn: boolean }[];
  /**
   * What it leaves beside pieces that have to lie as its result says, like the piece beside the last panel of a backing: exact inches
   * of washed cloth from where its cloth begins.
   */
  leaves?: { x: string; y: string; width: string; height: string }[];
  /**
   * Ways to cut it from what other parts leave, the best first, each with its pieces. If that is possible, nothing is bought for it:
   * see `fromLeftovers` of the result.
   */
  fromLeftover?: NonNullable<PartInput['pieces']>[];
  /** What its pieces are cut from, in place of cloth by length: `fat-quarter`, or a size in inches. The parts of a fabric share them. */
  sheet?: string;
  /** The week of a sew-along in which it is cut. */
  week?: number;
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
  /** The letter of its fabric, if it is cloth. */
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

/** An entry of a list as a page wrote it. It may hold anything. */
type AsWritten<T> = { [K in keyof T]?: unknown };

/** The entries of a list, as far as a page wrote one. */
const entries = <T extends object>(list: T[] | undefined): AsWritten<T>[] =>
  Array.isArray(list) ? list.filter((one) => one && typeof one === 'object') : [];
const texts = (list: unknown): string[] => (Array.isArray(list) ? list.map(textOf).filter(Boolean) : []);

/** Cloth in inches. Throws a `Refusal`. */
const readAmount = (written: unknown): Exact => {
  const value = readLength(written, { units: 'in' });
  return value.lt(0) ? refuse(say('negativeCloth')) : value;
};

/** Somebody's text as a message. The same text always gives the same message object. */
type Words = (text: string) => Message;
const wordsOnce = (): Words => {
  const known = new Map<string, Message>();
  return (text) => {
    const message = known.get(text) ?? ownWords(text);
    known.set(text, message);
    return message;
  };
};

const readPieces = (pieces: PartInput['pieces'], words: Words): LooseCut[] =>
  entries(pieces).map(({ piece, width, length, count, turn }) => {
    const name = textOf(piece);
    return {
      ...(name && { piece: words(name) }),
      width: readAmount(width),
      length: readAmount(length),
      // Pieces without a number are not planned: their part is cut on its own.
      count: typeof count === 'number' ? count : NaN,
      turn: !!turn,
    };
  });

/** Ways to cut a part from what others leave. One that does not say how many pieces is left out. */
const readWays = (ways: unknown[], words: Words): LooseCut[][] =>
  ways
    .map((way) => (Array.isArray(way) ? readPieces(way, words) : []))
    .filter((way) => way.length && way.every(({ count }) => Number.isInteger(count) && count > 0));

const readLeaves = (leaves: unknown[]): Rectangle[] =>
  entries(leaves as NonNullable<PartInput['leaves']>).map(({ x, y, width, height }) => ({
    x: readAmount(x),
    y: readAmount(y),
    width: readAmount(width),
    height: readAmount(height),
  }));

/** The sheets of a part, in their size after the wash. Throws a `Refusal` if it does not say what to cut from them. */
const readSheets = (written: unknown, pieces: LooseCut[], washed: Exact): WorkbookPart['sheets'] => {
  const text = textOf(written).trim();
  if (!text) return undefined;
  if (!pieces.length || pieces.some(({ count }) => !Number.isInteger(count) || count < 1))
    refuse(say('noPieces'));
  const kept = washed.gt(1) ? ONE.div(washed) : ONE;
  return { sheet: readSheet(text, { units: 'in' }, { oneWay: pieces.some(({ turn }) => !turn), kept }) };
};

/** How much is bought for what a wash leaves: never less than that. */
const readWashed = (written: unknown): Exact => most(ONE, readAmount(written));

const MOST_WEEKS = 520;

/** A whole number of weeks. Anything else says no week. */
const readWeek = (written: unknown): number | undefined => {
  const week = Number(textOf(written) || NaN);
  return Number.isInteger(week) && week > 0 && week <= MOST_WEEKS ? week : undefined;
};

const readPart = (
  { title, fabric, need, width = '0', sold = width, washed = '1', ...part }: AsWritten<PartInput>,
  words: Words,
): WorkbookPart => {
  const name = textOf(title);
  const called = name ? words(name) : say('somePart');
  const week = readWeek(part.week);
  const read = (): WorkbookPart => {
    const pieces = Array.isArray(part.pieces) ? readPieces(part.pieces, words) : [];
    const perInch = readWashed(washed);
    const sheets = readSheets(part.sheet, pieces, perInch);
    return {
      title: called,
      when: week ? say('inWeek', { week, title: called }) : called,
      week,
      fabric: letterOf(fabric),
      need: sheets ? ZERO : readAmount(need),
      width: readAmount(width),
      sold: readAmount(sold),
      washed: perInch,
      pieces,
      leaves: Array.isArray(part.leaves) ? readLeaves(part.leaves) : undefined,
      fromLeftover: Array.isArray(part.fromLeftover) ? readWays(part.fromLeftover, words) : undefined,
      sheets,
      price: { written: part.price },
      per: part.per === 'yd' || part.per === 'm' ? part.per : undefined,
    };
  };
  return unlessRefused(read, ({ problem: says }) =>
    refuse(sayOfShop('about', { what: called, says }), 'parts'),
  );
};

const readItem = ({ title, fabric, text, cost }: AsWritten<ItemInput>): WorkbookItem => {
  const words = textOf(text) || textOf(title);
  return {
    title: ownWords(textOf(title)),
    fabric: textOf(fabric),
    buy: words ? ownWords(words) : say('something'),
    cost: { written: cost },
  };
};

/** A worksheet's plain input as values. Throws a `Refusal`. */
const readInput = (ledger: WorksheetLedger, input: WorksheetInput): WorkbookInput => {
  const words = wordsOnce();
  const fabrics = entries(input.fabrics).map(({ letter, ...fabric }) => ({ letter, ...fabric }));
  const parts = entries(input.parts);
  const items = entries(input.items).map(readItem);
  // A price that names the currency counts, even if the part cannot be read.
  adoptCurrency(ledger, { fabrics, parts: parts.map(({ price }) => ({ price: { written: price } })), items });
  return {
    fabrics,
    parts: parts.map((part) => readPart(part, words)),
    items,
    makers: [],
    troubles: texts(input.troubles).map(ownWords),
    unfinished: texts(input.unfinished).map(ownWords),
    named: texts(input.named),
  };
};

/** The shopping list of a plain input. */
export const reckonPlain = (
  input: WorksheetInput | null = {},
  plan: Planner = planCloth,
): Reckoning<WorksheetAnswer> => {
  const ledger: WorksheetLedger = new Ledger(worksheetFields, input);
  return ledger.finish(() => reckonOn(ledger, readInput(ledger, input ?? {}), plan));
};
