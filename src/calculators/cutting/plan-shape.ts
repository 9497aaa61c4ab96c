import type { Cloth, ClothLedger } from '../../ledger/cloth.js';
import type { Field } from '../../ledger/field.js';
import type { Planner } from '../../ledger/planning.js';
import type { Cut, Money, Purchase } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import type { ShopLedger } from '../../ledger/shop.js';
import type { LaidPlan } from '../../ledger/strips.js';
import type { Ledger } from '../../ledger/ledger.js';
import type { Exact } from '../../measure/exact.js';
import { sayings, type Message } from '../../measure/message.js';
import type { CuttingPlan } from '../../planner/plan.js';
import type { SheetKind } from '../../trade/cloths.js';
import type { PatchKind } from './list-words.js';

/** Usable widths of the fabrics in a list, and what the reader should know about it. */
export type ListSurroundings = {
  /** Usable widths of fabrics by their letters, if they differ from `fabricWidth`. */
  widths?: Record<string, unknown> | undefined;
  /** The width of every other fabric that the list names. Default `fabricWidth`. */
  usualWidth?: unknown;
  /** The sheets that fabrics are bought in, by their letters: `{ B: 'fat-quarter' }`. A `sheet` of the list's own counts before them. */
  sheets?: Record<string, unknown> | undefined;
  /** The letters of the fabrics that the whole list is cut from. The first is the letter of lines that name none. */
  letters?: string[] | undefined;
  /** What the reader should know about this list: sentences, or a message, or several of these. */
  caution?: unknown;
};

/** The row of each fabric, if there are several fabrics, or sheets. */
export type FabricRow = `fabric-${string}`;

/** The ledger of a calculator that plans a list of pieces. */
export type PlanLedger = ClothLedger & ShopLedger & Ledger<PlanFields, FabricRow>;
type PlanFields = ClothLedger['fields'] & ShopLedger['fields'];

/** The ledger of a calculator that may cut from sheets. */
export type SheetLedger = Ledger<
  { sheet: Field<string | undefined>; oneWay: Field<boolean>; shrinkage: Field<Exact> },
  never
>;

/** Cloth of a fixed size, in its size after the wash. */
export interface Sheet extends Size {
  kind: SheetKind;
  /** Its size as sold, if its name does not say it. */
  sold: Size | undefined;
}

/** What the fabrics of a list are cut from. */
export interface SheetsOfList {
  /** The sheets that the list itself names. Then all its fabrics are cut from them. */
  own: Sheet | undefined;
  /** The sheets that this fabric is cut from, or undefined if it is cut from cloth by length. */
  of: (fabric: string) => Sheet | undefined;
}

/** A list to plan, and what to cut it from: cloth by length, or sheets. */
export interface Job {
  ledger: PlanLedger;
  /** The input that the pieces come from. An error is about it. */
  source: string;
  /** The inputs that a plan comes from. */
  from: string[];
  input: ListSurroundings;
  plan: Planner;
  sheets: SheetsOfList;
  cloth: Cloth;
  /** Whether pieces may be turned. */
  turn: boolean;
  /** Whether the list names one fabric, or none. */
  isOne: boolean;
  /** Whether one of its fabrics is cut from cloth by length. Then a price is of a yard or a metre. */
  hasCloth: boolean;
}

/** What is said of a list that is planned. */
export interface PlannedSayings {
  widthOfFabric: { fabric: string; says: Message };
  /** Why a piece cannot be planned. */
  ofPiece: { piece: Message; size: Size; says: Message };
  /** The square that a strip gives, if it becomes triangles. */
  squareFor: { piece: Message };
  /** A line of the cut list: squares that become triangles, and the fabric of a piece. */
  cutUp: { piece: Message; kind: Exclude<PatchKind, 'rectangle'> };
  ofFabric: { fabric: string; piece: Message };
  /** The name of a fabric's row. If there is no letter, it is the only fabric. */
  fabricName: { fabric: string };
  /** Strips across cloth of this width, and the cloth that they take. */
  stripsAcross: { width: Quantity; need: Quantity; isLeast: boolean };
  betweenMarks: { sizes: { written: Exact; cut: Exact }[]; areMore: boolean };
  caution: { text: string };
  /** `each` is the size of the sheets if all fabrics are bought in the same ones, `size` that of one fabric's if not. */
  boughtEach: {
    fabrics: { fabric: string; buy: Purchase; size: Size | undefined }[];
    each: { kind: SheetKind; size: Size } | undefined;
  };
  piecesFrom: { count: number; need: Exact; width: Exact };
  /** In the drawing. */
  fabricHead: undefined;
  /** Shown in place of a letter in the list of strips. */
  noFabric: undefined;
}

/** What is said only if it is cut from sheets. */
export interface SheetSayings {
  notSheet: { text: string };
  sheetOfNothing: undefined;
  /** What is wrong with the sheets that a fabric is bought in. */
  sheetOfFabric: { fabric: string; says: Message };
  /** The price counts only for the cloth that is bought by length. */
  priceOfCloth: undefined;
  /** The price is for what the list was cut from before. */
  otherPrice: undefined;
  /** A number of sheets, to buy or in a drawing. */
  sheets: { count: number; kind: SheetKind; size: Size | undefined };
  /** Strips of this length, `strips` tall together, in the room that the sheets have. */
  stripsOnSheets: { width: Exact; strips: Quantity; room: Quantity; isLeast: boolean };
}

export const say = sayings<PlannedSayings & SheetSayings>();

/** One fabric's plan. */
export interface FabricPlan extends LaidPlan {
  /** Its letter, as the list names it. */
  fabric: string;
  /** Exact inches of cloth before rounding, or 0 if it is cut from sheets. */
  need: Exact;
  /** Sheets needed, if it is cut from sheets. */
  sheets?: number | undefined;
  buy: Purchase;
  /** What it costs, as a decimal number, if there is a price. */
  cost?: string | undefined;
  pieces: Cut[];
  /** The usable width as sold, before the wash. */
  sold?: Exact | undefined;
  /** Its cost, its pieces without the letter, its sheets and its plan. Not part of the public result. */
  used: { cost: Money | undefined; cuts: Cut[]; sheet: Sheet | undefined; plan?: CuttingPlan };
}
