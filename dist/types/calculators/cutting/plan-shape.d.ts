import type { Cloth, ClothLedger } from '../../ledger/cloth.js';
import type { Planner } from '../../ledger/planning.js';
import type { Cut, Money, Purchase } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import type { ShopLedger } from '../../ledger/shop.js';
import type { LaidPlan } from '../../ledger/strips.js';
import type { Ledger } from '../../ledger/ledger.js';
import type { Exact } from '../../measure/exact.js';
import { type Message } from '../../measure/message.js';
import type { SheetKind } from '../../trade/cloths.js';
import type { PatchKind } from './list-words.js';
/** Usable widths of the fabrics in a list, and what the reader should know about it. */
export type ListSurroundings = {
    /** Usable widths of fabrics by their letters, if they differ from `fabricWidth`. */
    widths?: Record<string, unknown> | undefined;
    /** The width of every other fabric that the list names. Default `fabricWidth`. */
    usualWidth?: unknown;
    /** What the reader should know about this list: sentences, or a message, or several of these. */
    caution?: unknown;
};
/** The row of each fabric, if there are several fabrics, or sheets. */
export type FabricRow = `fabric-${string}`;
/** The ledger of a calculator that plans a list of pieces. */
export type PlanLedger = ClothLedger & ShopLedger & Ledger<PlanFields, FabricRow>;
type PlanFields = ClothLedger['fields'] & ShopLedger['fields'];
/** Cloth of a fixed size, in its size after the wash. */
export interface Sheet extends Size {
    kind: SheetKind;
    /** Its size as sold, if its name does not say it. */
    sold: Size | undefined;
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
    sheet?: Sheet | undefined;
    cloth: Cloth;
    /** Whether pieces may be turned. */
    turn: boolean;
    /** Whether the list names one fabric, or none. */
    isOne: boolean;
}
/** What is said of a list that is planned. */
export interface PlannedSayings {
    widthOfFabric: {
        fabric: string;
        says: Message;
    };
    /** Why a piece cannot be planned. */
    ofPiece: {
        piece: Message;
        size: Size;
        says: Message;
    };
    /** The square that a strip gives, if it becomes triangles. */
    squareFor: {
        piece: Message;
    };
    /** A line of the cut list: squares that become triangles, and the fabric of a piece. */
    cutUp: {
        piece: Message;
        kind: Exclude<PatchKind, 'rectangle'>;
    };
    ofFabric: {
        fabric: string;
        piece: Message;
    };
    /** The name of a fabric's row. If there is no letter, it is the only fabric. */
    fabricName: {
        fabric: string;
    };
    /** Strips across cloth of this width, and the cloth that they take. */
    stripsAcross: {
        width: Quantity;
        need: Quantity;
        isLeast: boolean;
    };
    betweenMarks: {
        sizes: {
            written: Exact;
            cut: Exact;
        }[];
        areMore: boolean;
    };
    caution: {
        text: string;
    };
    boughtEach: {
        fabrics: {
            fabric: string;
            buy: Purchase;
        }[];
        size: Size | undefined;
    };
    piecesFrom: {
        count: number;
        need: Exact;
        width: Exact;
    };
    /** In the drawing. */
    fabricHead: undefined;
    /** Shown in place of a letter in the list of strips. */
    noFabric: undefined;
}
/** What is said only if it is cut from sheets. */
export interface SheetSayings {
    /** A number of sheets, to buy or in a drawing. */
    sheets: {
        count: number;
        kind: SheetKind;
        size: Size | undefined;
    };
    /** Strips of this length, `strips` tall together, in the room that the sheets have. */
    stripsOnSheets: {
        width: Exact;
        strips: Quantity;
        room: Quantity;
        isLeast: boolean;
    };
}
export declare const say: <Code extends "sheets" | "betweenMarks" | "squareFor" | "widthOfFabric" | "ofPiece" | "cutUp" | "ofFabric" | "fabricName" | "stripsAcross" | "caution" | "boughtEach" | "piecesFrom" | "fabricHead" | "noFabric" | "stripsOnSheets">(code: Code, ...[values]: (PlannedSayings & SheetSayings)[Code] extends undefined ? [] : [values: (PlannedSayings & SheetSayings)[Code]]) => Message<Code>;
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
    /** Its cost, and its pieces without the letter. Not part of the public result. */
    used: {
        cost: Money | undefined;
        cuts: Cut[];
    };
}
export {};
