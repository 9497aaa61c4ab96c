import type { Answer } from '../ledger/answer.js';
import { inputsOf, optional } from '../ledger/field.js';
import { countField } from '../ledger/kinds.js';
import type { Ledger } from '../ledger/ledger.js';
import { lengthField } from '../ledger/lengths.js';
import type { Cut, Money, Purchase } from '../ledger/purchase.js';
import { quiltFields } from '../ledger/quilt.js';
import { shopFields } from '../ledger/shop.js';
import type { LaidPlan } from '../ledger/strips.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { soldLength } from '../measure/shop.js';
import { BOLT } from '../trade/conventions.js';

const { shrinkage, increment, currency } = shopFields;

export const worksheetFields = /* @__PURE__ */ inputsOf(() => ({
  width: optional(quiltFields.width, { more: true }),
  length: optional(quiltFields.length, { more: true }),
  fabricWidth: optional(lengthField({ more: true })),
  seam: optional(lengthField({ zero: true, most: '2 in', more: true })),
  kits: optional(countField(10_000)),
  bolt: { ...lengthField({ initial: BOLT, most: '100000 in' }), write: soldLength },
  shrinkage,
  increment,
  currency,
}));

/** The rows that it reckons: of each line what it needs, what to buy and how many bolts, and what all comes to. */
export type WorksheetRow = `need-${string}` | `buy-${string}` | `bolts-${string}` | 'total' | 'kitCost';

export type WorksheetLedger = Ledger<typeof worksheetFields, WorksheetRow>;

/** Parts that are cut from one length together. */
export interface PlannedTogether extends LaidPlan {
  /** The fabric's letter. */
  fabric: string;
  need: Exact;
  buy: Purchase;
  pieces: Cut[];
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
  /** What to buy in words: `3 3/4 yd`, with its width where that is not the usual one. */
  text: Message;
  /** The cloth's usable width as sold; absent where no part says it. */
  width?: Exact | undefined;
  /** Exact inches bought beyond the need. */
  spare: Exact;
  /** The two lengths to buy, where they come to less than one, each for the parts of these titles. `buy` is both. */
  lengths?: { parts: Message[]; need: Exact; buy: Purchase }[] | undefined;
  price?: Money | undefined;
  cost?: Money | undefined;
  /** Where kits are cut: bolts needed; with what one kit buys in one length, fewer would not do. */
  bolts?: number | undefined;
  /** How to cut the parts from one length, where that saves cloth; otherwise each is cut as it says itself. */
  together?: PlannedTogether | undefined;
}

/** Something bought by the piece, on the shopping list. */
export interface ShoppingItem {
  title: Message;
  /** The letter and the name of the fabric it is of; empty where it is no cloth. */
  fabric: string;
  name: string;
  /** What to buy: `5 fat quarters`. */
  text: Message;
  cost?: Money | undefined;
  /** The same as an amount, where it is known as one. */
  used: { buy: Purchase | undefined };
}

/** What everything comes to. */
export interface Sums {
  /** All costs together, where there are prices. */
  total?: Money | undefined;
  /** More will be to pay: something has no price, or is not on the list. `notes` name it. */
  soFar?: boolean | undefined;
  /** What one kit comes to, and the whole bolts and the items for all of them. */
  kits?: { count: number; each?: Money | undefined; cost?: Money | undefined } | undefined;
}

/** What {@link reckonWorksheet} gives back. */
export interface WorksheetAnswer extends Answer, Sums {
  fabrics: ShoppingLine[];
  items: ShoppingItem[];
}
