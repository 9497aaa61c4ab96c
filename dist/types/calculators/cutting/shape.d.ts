import type { Answer } from '../../ledger/answer.js';
import { type Cloth } from '../../ledger/cloth.js';
import type { Input, Ledger } from '../../ledger/ledger.js';
import { type ShopRow } from '../../ledger/shop.js';
import type { LaidPiece } from '../../ledger/strips.js';
import type { Exact } from '../../measure/exact.js';
import type { CutCell, CutWay } from './cut-cells.js';
import { type CutListSayings } from './cut-list.js';
import type { FabricPlan, FabricRow, ListSurroundings, PlannedSayings, SheetSayings } from './plan-shape.js';
export declare const cuttingFields: {
    shrinkage: import("../../ledger/field.js").Field<import("fraction.js").default>;
    increment: import("../../ledger/field.js").Field<import("../../measure/shop.js").Step>;
    price: import("../../ledger/field.js").Field<import("fraction.js").default | undefined>;
    currency: import("../../ledger/field.js").Field<string | undefined>;
    week: import("../../ledger/field.js").Field<number | undefined>;
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
export type CuttingInput = Input<typeof cuttingFields> & ListSurroundings;
/** The rows that it reckons. If there are several fabrics, or sheets, each has its own row. */
export type CuttingRow = 'washedWidth' | ShopRow;
export type CuttingLedger = Ledger<typeof cuttingFields, CuttingRow | FabricRow>;
/** What it says. */
export interface CuttingSayings extends CutListSayings, PlannedSayings, SheetSayings {
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
    /** The list as cells: the head of a column, the name of a cell, how a piece is cut. */
    cellHead: {
        cell: CutCell;
    };
    cellName: {
        row: number;
        cell: CutCell;
    };
    cutWay: {
        way: CutWay;
    };
}
export declare const say: <Code extends "piece" | "sheets" | "notSheet" | "sheetOfNothing" | "sheetOfFabric" | "priceOfCloth" | "otherPrice" | "stripsOnSheets" | "widthOfFabric" | "fabricHead" | "betweenMarks" | "squareFor" | "ofPiece" | "cutUp" | "ofFabric" | "fabricName" | "stripsAcross" | "caution" | "boughtEach" | "piecesFrom" | "noFabric" | "inColumn" | "inLine" | "cellsTogether" | "sizeOfZero" | "noCount" | "countTooLarge" | "emptyList" | "noSizeColumn" | "noCountColumn" | "tooManyLines" | "noPiece" | "cellName" | "foldAcross" | "tooWideToFold" | "foldStrips" | "tooTallToFold" | "cellHead" | "cutWay">(code: Code, ...[values]: CuttingSayings[Code] extends undefined ? [] : [values: CuttingSayings[Code]]) => import("../../measure/message.js").Message<Code>;
/** What {@link reckonCutting} gives back. */
export interface CuttingAnswer extends Answer {
    /** All sheets together, if fabrics are cut from sheets. */
    sheets?: number | undefined;
    /** The first fabric's layout. */
    layout: LaidPiece[];
    fabrics: FabricPlan[];
    /** The week of a sew-along in which it is cut. */
    week?: number | undefined;
    used: {
        cloth?: Cloth;
        oneWay: boolean;
    };
}
