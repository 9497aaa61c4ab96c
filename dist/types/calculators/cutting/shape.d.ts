import type { Answer } from '../../ledger/answer.js';
import { type Cloth } from '../../ledger/cloth.js';
import type { Input, Ledger } from '../../ledger/ledger.js';
import type { Cut, Money, Purchase } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { type ShopRow } from '../../ledger/shop.js';
import type { LaidPiece, LaidPlan } from '../../ledger/strips.js';
import type { Exact } from '../../measure/exact.js';
import { type Message } from '../../measure/message.js';
import type { SheetKind } from '../../trade/cloths.js';
import { type CutListSayings } from './cut-list.js';
import type { PatchKind } from './list-words.js';
export declare const cuttingFields: {
    shrinkage: import("../../ledger/field.js").Field<import("fraction.js").default>;
    increment: import("../../ledger/field.js").Field<import("../../measure/shop.js").Step>;
    price: import("../../ledger/field.js").Field<import("fraction.js").default | undefined>;
    currency: import("../../ledger/field.js").Field<string | undefined>;
    mark: import("../../ledger/field.js").Field<import("fraction.js").default>;
    seam: import("../../ledger/field.js").Field<import("fraction.js").default>;
    oneWay: import("../../ledger/field.js").Field<boolean>;
    ruler: import("../../ledger/field.js").Field<import("fraction.js").default>;
    mat: import("../../ledger/field.js").Field<[import("fraction.js").default, import("fraction.js").default]>;
    fabricWidth: import("../../ledger/field.js").Field<import("fraction.js").default>;
    list: import("../../ledger/field.js").Field<unknown>;
    sheet: import("../../ledger/field.js").Field<string | undefined>;
};
/** Input of {@link reckonCutting}: `list` (rows of cells, or text), `sheet`, `oneWay`, `ruler`, `mat`, `fabricWidth`, … */
export type CuttingInput = Input<typeof cuttingFields> & {
    /** Usable widths of fabrics by their letters, if they differ from `fabricWidth`. */
    widths?: Record<string, unknown> | undefined;
    /** The width of every other fabric that the list names. Default `fabricWidth`. */
    usualWidth?: unknown;
    /** What the reader should know about this list: sentences, or a message, or several of these. */
    caution?: unknown;
};
/** The rows that it reckons. If there are several fabrics, or sheets, each has its own row. */
export type CuttingRow = 'washedWidth' | ShopRow;
export type FabricRow = `fabric-${string}`;
export type CuttingLedger = Ledger<typeof cuttingFields, CuttingRow | FabricRow>;
/** Cloth of a fixed size, in its size after the wash. */
export interface Sheet extends Size {
    kind: SheetKind;
    /** Its size as sold, if its name does not say it. */
    sold: Size | undefined;
}
/** What it says. */
export interface CuttingSayings extends CutListSayings {
    notSheet: {
        text: string;
    };
    sheetOfNothing: undefined;
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
    /** A line of the cut list: squares that become triangles, and the fabric of a piece. */
    cutUp: {
        piece: Message;
        kind: Exclude<PatchKind, 'rectangle'>;
    };
    ofFabric: {
        fabric: string;
        piece: Message;
    };
    /** A number of sheets, to buy or in a drawing. */
    sheets: {
        count: number;
        kind: SheetKind;
        size: Size | undefined;
    };
    /** The name of a fabric's row. If there is no letter, it is the only fabric. */
    fabricName: {
        fabric: string;
    };
    /** Strips of this length, `strips` tall together, in the room that the sheets have. */
    stripsOnSheets: {
        width: Exact;
        strips: Quantity;
        room: Quantity;
        isLeast: boolean;
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
    /** How often to fold the cloth, so that a cut across it fits a ruler and mat of this length. */
    foldAcross: {
        folds: number;
        reach: Exact;
    };
    tooWideToFold: {
        width: Exact;
        reach: Exact;
    };
    foldStrips: {
        reach: Exact;
    };
    tooTallToFold: {
        height: Exact;
    };
    caution: {
        text: string;
    };
    /** The price is for what the list was cut from before. */
    otherPrice: undefined;
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
export declare const say: <Code extends "piece" | "sheets" | "betweenMarks" | "squareFor" | "inLine" | "cellsTogether" | "sizeOfZero" | "noCount" | "countTooLarge" | "emptyList" | "noSizeColumn" | "noCountColumn" | "tooManyLines" | "noPiece" | "notSheet" | "sheetOfNothing" | "widthOfFabric" | "ofPiece" | "cutUp" | "ofFabric" | "fabricName" | "stripsOnSheets" | "stripsAcross" | "foldAcross" | "tooWideToFold" | "foldStrips" | "tooTallToFold" | "caution" | "otherPrice" | "boughtEach" | "piecesFrom" | "fabricHead" | "noFabric">(code: Code, ...[values]: CuttingSayings[Code] extends undefined ? [] : [values: CuttingSayings[Code]]) => Message<Code>;
/** One fabric's plan. */
export interface FabricPlan extends LaidPlan {
    /** Its letter, as the cut list names it. */
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
/** What {@link reckonCutting} gives back. */
export interface CuttingAnswer extends Answer {
    /** All sheets together, if the list is cut from sheets. */
    sheets?: number | undefined;
    /** The first fabric's layout. */
    layout: LaidPiece[];
    fabrics: FabricPlan[];
    used: {
        cloth?: Cloth;
        sheet: Sheet | undefined;
        oneWay: boolean;
    };
}
