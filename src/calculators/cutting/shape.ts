import type { Answer } from '../../ledger/answer.js';
import { clothFields, type Cloth } from '../../ledger/cloth.js';
import { markField } from '../../ledger/cuts.js';
import { inputsOf, optional } from '../../ledger/field.js';
import { flagField, sheetField } from '../../ledger/kinds.js';
import type { Input, Ledger } from '../../ledger/ledger.js';
import { lengthField, sizeField } from '../../ledger/lengths.js';
import type { Cut, Money, Purchase } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { shopFields, type ShopRow } from '../../ledger/shop.js';
import type { LaidPiece, LaidPlan } from '../../ledger/strips.js';
import type { Exact } from '../../measure/exact.js';
import { sayings, type Message } from '../../measure/message.js';
import type { SheetKind } from '../../trade/cloths.js';
import { SEAM } from '../../trade/conventions.js';
import { MAT, RULER } from '../../trade/patches.js';
import { cutListInUnit, writeCutList, type CutListSayings } from './cut-list.js';
import type { PatchKind } from './list-words.js';

export const cuttingFields = /* @__PURE__ */ inputsOf(() => ({
  list: optional<unknown>({
    kind: 'own',
    lines: true,
    read: (raw) => raw,
    write: writeCutList,
    marked: cutListInUnit,
  }),
  sheet: sheetField(),
  ...clothFields,
  seam: lengthField({ initial: SEAM, zero: true, most: '2 in', more: true }),
  oneWay: flagField(),
  ruler: lengthField({ initial: RULER, most: '120 in', more: true }),
  mat: sizeField({ initial: MAT, more: true }),
  ...markField,
  ...shopFields,
}));

/** Input of {@link reckonCutting}: `list` (rows of cells, or text), `sheet`, `oneWay`, `ruler`, `mat`, `fabricWidth`, … */
export type CuttingInput = Input<typeof cuttingFields> & {
  /** Usable widths of fabrics, by their letters, where they differ from `fabricWidth`. */
  widths?: Record<string, unknown> | undefined;
  /** The width of every other fabric that the list names. Default `fabricWidth`. */
  usualWidth?: unknown;
  /** What the reader should know about this list: sentences, or a message, or several of these. */
  caution?: unknown;
};

/** The rows that it reckons; of several fabrics, and of sheets, each has a row of its own. */
export type CuttingRow = 'washedWidth' | ShopRow;
export type FabricRow = `fabric-${string}`;

export type CuttingLedger = Ledger<typeof cuttingFields, CuttingRow | FabricRow>;

/** Cloth of a fixed size that a list is cut from, as a wash leaves it. */
export interface Sheet extends Size {
  kind: SheetKind;
  /** Its size as it is sold, where its kind does not say it. */
  sold: Size | undefined;
}

/** What it says. */
export interface CuttingSayings extends CutListSayings {
  notSheet: { text: string };
  sheetOfNothing: undefined;
  widthOfFabric: { fabric: string; says: Message };
  /** Why a piece cannot be planned. */
  ofPiece: { piece: Message; size: Size; says: Message };
  /** A line of what to cut: squares that are cut up into triangles, and of which fabric it is. */
  cutUp: { piece: Message; kind: Exclude<PatchKind, 'rectangle'> };
  ofFabric: { fabric: string; piece: Message };
  /** So many sheets, to buy; or as a drawing speaks of them. */
  sheets: { count: number; kind: SheetKind; size: Size | undefined };
  /** What a fabric's row is called; without a letter it is the only one. */
  fabricName: { fabric: string };
  /** Strips as long as this, which are as tall as `strips` together, within the room that so many sheets have. */
  stripsOnSheets: { width: Exact; strips: Quantity; room: Quantity; isLeast: boolean };
  /** Strips across cloth of this width, which take so much of it. */
  stripsAcross: { width: Quantity; need: Quantity; isLeast: boolean };
  betweenMarks: { sizes: { written: Exact; cut: Exact }[]; areMore: boolean };
  /** How often the cloth is folded so that a cut across it fits a ruler and a mat of this reach. */
  foldAcross: { folds: number; reach: Exact };
  tooWideToFold: { width: Exact; reach: Exact };
  foldStrips: { reach: Exact };
  tooTallToFold: { height: Exact };
  caution: { text: string };
  /** The price is of what the list was cut from before. */
  otherPrice: undefined;
  boughtEach: { fabrics: { fabric: string; buy: Purchase }[]; size: Size | undefined };
  piecesFrom: { count: number; need: Exact; width: Exact };
  /** In the drawing. */
  fabricHead: undefined;
  /** Stands in place of a letter in the list of strips. */
  noFabric: undefined;
}

export const say = sayings<CuttingSayings>();

/** One fabric's plan. */
export interface FabricPlan extends LaidPlan {
  /** Its letter, as the cut list names it. */
  fabric: string;
  /** Exact inches of cloth before rounding; 0 where it is cut from sheets. */
  need: Exact;
  /** Sheets needed, where it is cut from sheets. */
  sheets?: number | undefined;
  buy: Purchase;
  /** What it costs, as a decimal number, where a price was given. */
  cost?: string | undefined;
  pieces: Cut[];
  /** The usable width as sold, before a wash. */
  sold?: Exact | undefined;
  /** What it costs, and its pieces without its letter. No part of the public result. */
  used: { cost: Money | undefined; cuts: Cut[] };
}

/** What {@link reckonCutting} gives back. */
export interface CuttingAnswer extends Answer {
  /** Sheets in all, where the list is cut from sheets. */
  sheets?: number | undefined;
  /** The first fabric's layout. */
  layout: LaidPiece[];
  fabrics: FabricPlan[];
  used: { cloth?: Cloth; sheet: Sheet | undefined; oneWay: boolean };
}
