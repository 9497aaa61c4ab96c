import type { Answer } from '../ledger/answer.js';
import { inputsOf, optional } from '../ledger/field.js';
import { countField } from '../ledger/kinds.js';
import type { Sheet } from '../calculators/cutting/plan-shape.js';
import type { Ledger } from '../ledger/ledger.js';
import { lengthField } from '../ledger/lengths.js';
import type { Cut, Money, Purchase } from '../ledger/purchase.js';
import { quiltFields, type Size } from '../ledger/quilt.js';
import { shopFields } from '../ledger/shop.js';
import type { LaidPlan } from '../ledger/strips.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { soldLength } from '../measure/shop.js';
import type { Free } from '../planner/free.js';
import type { CuttingPlan } from '../planner/plan.js';
import { BOLT } from '../trade/conventions.js';
import type { WorkbookPart } from './input.js';

const { shrinkage, increment, currency } = shopFields;

export const worksheetFields = /* @__PURE__ */ inputsOf(() => ({
  width: optional(quiltFields.width, { more: true }),
  length: optional(quiltFields.length, { more: true }),
  fabricWidth: optional(lengthField({ more: true })),
  seam: optional(
    lengthField({ zero: true, most: '2 in', more: true, example: { in: ['1/4'], cm: ['0.75'] } }),
  ),
  kits: optional(countField(10_000)),
  bolt: { ...lengthField({ initial: BOLT, most: '100000 in' }), write: soldLength },
  shrinkage,
  increment,
  currency,
}));

/** The rows: for each line the need, what to buy and the bolts; then the totals. */
export type WorksheetRow =
  `need-${string}` | `buy-${string}` | `bolts-${string}` | `left-${string}` | 'total' | 'kitCost';

export type WorksheetLedger = Ledger<typeof worksheetFields, WorksheetRow>;

/** Parts that are cut from one length together. */
export interface PlannedTogether extends LaidPlan {
  /** The fabric's letter. */
  fabric: string;
  need: Exact;
  buy: Purchase;
  pieces: Cut[];
  /** How many sheets, if it is cut from sheets. */
  sheets?: number | undefined;
  used?: { sheet: Sheet | undefined; isNumbered: boolean };
}

/** What a reader has of a fabric, and what is cut from it. */
export interface OwnCloth {
  /** As she wrote it. */
  written: string;
  /** Nothing of this line is left to buy. */
  isEnough: boolean;
  /** How to cut it. Sheets of the size that is bought are in the plan of all sheets. */
  plans: PlannedTogether[];
}

/** How many of its blocks a reader's own cloth makes. */
export interface BlocksFromOwn {
  title: Message;
  blocks: number;
  of: number;
  /** The letter of the fabric that runs out first. */
  runsOut?: string | undefined;
}

/** Equal pieces that are left over. Exact inches of washed cloth, rounded down to the marks of a ruler. */
export interface Leftover extends Size {
  count: number;
}

/** A part that is cut from what others leave, so that nothing is bought for it. */
export interface FromLeftover {
  title: Message;
  /** The letter and the name of the fabric that it is cut from. */
  fabric: string;
  name: string;
  /** What it is cut from, in words. */
  text: Message;
  /** The same pieces, before it is cut from them. */
  from: Size[];
  cuts: Cut[];
  /** Where they lie, how it is cut from them, and what they leave then. Not part of the public result. */
  used: { part: WorkbookPart; cut: { from: Free; plan: CuttingPlan; left: Free[] }[] };
}

/** One fabric, in one width, on the shopping list. Lengths are exact inches. */
export interface ShoppingLine {
  /** Empty for a part that names no fabric. */
  letter: string;
  name: string;
  /** What it is for, each with its own need. */
  parts: { title: Message; need: Exact }[];
  /** Before rounding, all parts together. */
  need: Exact;
  /** What planning the parts together saves. */
  saved: Exact;
  buy: Purchase;
  /** What to buy in words: `3 3/4 yd`, with its width if that is not the usual one. */
  text: Message;
  /** The usable width of the cloth as sold. Absent if no part says it. */
  width?: Exact | undefined;
  /** Exact inches bought beyond the need. */
  spare: Exact;
  /** Two lengths to buy, if they are less than one. Each is for the parts with these titles. `buy` is both together. */
  lengths?: { parts: Message[]; need: Exact; buy: Purchase }[] | undefined;
  price?: Money | undefined;
  cost?: Money | undefined;
  /** Where kits are cut: bolts needed; with what one kit buys in one length, fewer would not do. */
  bolts?: number | undefined;
  /** What the reader has of it, if she is asked. Then `buy` is what is missing. */
  own?: OwnCloth | undefined;
  /** How to cut the parts from one length, if that saves cloth. Otherwise each part says itself how to cut it. */
  together?: PlannedTogether | undefined;
  /**
   * What is left over if all parts are cut by their plans: the largest sizes that are worth keeping, `width` across the cloth.
   * Reckoned when somebody reads it.
   */
  leftovers: Leftover[];
  /** Everything that is left, and where it lies. Not part of the public result. */
  used: { left: () => Free[] };
}

/** What one part cuts from the sheets of all parts. */
export interface SheetsOfPart {
  /** The part, with its week if it has one. */
  part: Message;
  week?: number | undefined;
  pieces: Cut[];
  /** The numbers of the sheets that it cuts from. The first sheet that anybody opens is 1. */
  from: number[];
  /** How many of them no part has opened before. */
  opened: number;
}

/** Something bought by the piece, on the shopping list. */
export interface ShoppingItem {
  title: Message;
  /** The letter and the name of its fabric. Empty if it is not cloth. */
  fabric: string;
  name: string;
  /** What to buy: `5 fat quarters`. */
  text: Message;
  /** Of one: one fat quarter, one package, one yard of a roll. Absent if it is not known. */
  price?: Money | undefined;
  cost?: Money | undefined;
  /** The sheets of all parts together, if it is cloth in sheets. */
  sheets?: number | undefined;
  /** What they are for, each with the sheets that it takes by itself. */
  parts?: { title: Message; sheets: number }[] | undefined;
  /** What each part cuts from which sheets, in the order of the weeks. Undefined if there are too many sheets. */
  weeks?: SheetsOfPart[] | undefined;
  /** What the reader has of it, if she is asked. Then what to buy is what is missing. */
  own?: OwnCloth | undefined;
  /** How to cut the parts from the sheets together, if there are several parts. */
  together?: PlannedTogether | undefined;
  /** If it is cloth in sheets: what is left over of them. See {@link ShoppingLine}. */
  leftovers?: Leftover[] | undefined;
  /** The same as an amount, if we know it as an amount; and everything that is left of sheets. */
  used: { buy: Purchase | undefined; sheet?: Sheet; left?: () => Free[] };
}

/** The totals. */
export interface Sums {
  /** All costs together, if there are prices. */
  total?: Money | undefined;
  /** More will be to pay: something has no price, or is not on the list. `notes` name it. */
  soFar?: boolean | undefined;
  /** The cost of one kit, and of the whole bolts and the items for all kits. */
  kits?: { count: number; each?: Money | undefined; cost?: Money | undefined } | undefined;
}

/** What {@link reckonWorksheet} gives back. */
export interface WorksheetAnswer extends Answer, Sums {
  fabrics: ShoppingLine[];
  items: ShoppingItem[];
  /** How many blocks the reader's own cloth makes. */
  makes?: BlocksFromOwn[] | undefined;
  /** The parts that are cut from what others leave. */
  fromLeftovers?: FromLeftover[] | undefined;
}
