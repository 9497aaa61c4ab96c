import type { Answer } from '../../ledger/answer.js';
import { type Cloth } from '../../ledger/cloth.js';
import { type Field } from '../../ledger/field.js';
import type { Input, Ledger } from '../../ledger/ledger.js';
import { type Size } from '../../ledger/quilt.js';
import { type ShopRow } from '../../ledger/shop.js';
import type { Exact } from '../../measure/exact.js';
import { type Message } from '../../measure/message.js';
import type { Purchase } from '../../ledger/purchase.js';
import type { FabricPlan, FabricRow, ListSurroundings, PlannedSayings, SheetSayings } from '../cutting/plan-shape.js';
import type { Making } from '../calculator.js';
import { type ChartSayings } from './chart.js';
import type { Chart } from './patch.js';
import type { Method, PieceSayings } from './pieces.js';
import type { StripSetSayings } from './strip-sets.js';
/** Each method by its code: half-square triangles first, then geese. */
export declare const METHODS: {
    readonly 'two-one': {
        readonly halves: "two";
        readonly geese: "one";
        readonly rows: "patches";
    };
    readonly 'two-four': {
        readonly halves: "two";
        readonly geese: "four";
        readonly rows: "patches";
    };
    readonly 'eight-one': {
        readonly halves: "eight";
        readonly geese: "one";
        readonly rows: "patches";
    };
    readonly 'eight-four': {
        readonly halves: "eight";
        readonly geese: "four";
        readonly rows: "patches";
    };
    readonly strips: {
        readonly halves: "two";
        readonly geese: "one";
        readonly rows: "strips";
    };
};
export type MethodCode = keyof typeof METHODS;
export declare const blockFields: {
    shrinkage: Field<import("fraction.js").default>;
    increment: Field<import("../../measure/shop.js").Step>;
    price: Field<import("fraction.js").default | undefined>;
    currency: Field<string | undefined>;
    week: Field<number | undefined>;
    mark: Field<import("fraction.js").default>;
    seam: Field<import("fraction.js").default>;
    fabricWidth: Field<import("fraction.js").default>;
    chart: {
        kind: "own";
        lines: true;
        example: string[];
        read: (raw: unknown) => unknown;
        write: (chart: unknown) => string;
    };
    block: Field<import("fraction.js").default>;
    count: Field<number>;
    method: Field<"strips" | "two-one" | "two-four" | "eight-one" | "eight-four"> & {
        options: readonly MethodCode[];
    };
    sheet: Field<string | undefined>;
    oneWay: Field<boolean>;
};
/** Input of {@link reckonBlock}: `chart` (text, or rows of cells), `block`, `count`, `method`, `sheet`, `seam`, `fabricWidth`, … */
export type BlockInput = Input<typeof blockFields> & ListSurroundings & {
    /** What the block is called. */
    name?: unknown;
};
/** The rows that it reckons. If there are several fabrics, each has its own row. */
export type BlockRow = 'cell' | 'cellLength' | 'unfinished' | 'patches' | 'halvesOtherwise' | 'geeseOtherwise' | 'rowsOtherwise' | 'washedWidth' | ShopRow;
export type BlockLedger = Ledger<typeof blockFields, BlockRow | FabricRow>;
/** What it says. */
export interface BlockSayings extends ChartSayings, PieceSayings, PlannedSayings, SheetSayings, StripSetSayings {
    /** A patch would finish smaller than a mark of the ruler. */
    patchTooSmall: {
        patch: Size;
        mark: Exact;
    };
    unlikeSkies: undefined;
    /** What the other method takes of each fabric. */
    halvesOtherWay: {
        way: Method['halves'];
        fabrics: FabricNeed[];
    };
    geeseOtherWay: {
        way: Method['geese'];
        fabrics: FabricNeed[];
    };
    rowsOtherWay: {
        way: Method['rows'];
        fabrics: FabricNeed[];
    };
    /** Strips were chosen, but some row is not made of equal patches, or is too long. */
    notOfStrips: undefined;
    summary: {
        name: string;
        count: number;
        block: Exact;
        says: Message;
    };
    picture: {
        name: string;
        block: Exact;
        columns: number;
        rows: number;
    };
    letter: {
        letter: string;
    };
    /** The name of a cell of the chart. */
    cellName: {
        row: number;
        cell: number;
    };
}
/** What a method takes of a fabric: inches of cloth, or sheets. */
export interface FabricNeed {
    fabric: string;
    need: Exact | Purchase;
}
export declare const say: <Code extends "sheets" | "square" | "rectangle" | "summary" | "picture" | "letter" | "notSheet" | "sheetOfNothing" | "sheetOfFabric" | "priceOfCloth" | "otherPrice" | "stripsOnSheets" | "widthOfFabric" | "fabricHead" | "betweenMarks" | "tooManyCells" | "emptyChart" | "inCell" | "marksNeeded" | "tooManyFabrics" | "emptyCell" | "notPatch" | "notSpan" | "outside" | "overlaps" | "gap" | "halfNotSquare" | "quarterNotSquare" | "insideNotSquare" | "gooseNotTwoByOne" | "gooseWay" | "squareFor" | "ofPiece" | "cutUp" | "ofFabric" | "fabricName" | "stripsAcross" | "caution" | "boughtEach" | "piecesFrom" | "noFabric" | "pairSquareTwo" | "pairSquareEight" | "quarterTriangles" | "gooseRectangle" | "skyCorner" | "gooseSquare" | "skySquare" | "middleSquare" | "cornerTriangles" | "rowStrip" | "patchTooSmall" | "unlikeSkies" | "halvesOtherWay" | "geeseOtherWay" | "rowsOtherWay" | "notOfStrips" | "cellName">(code: Code, ...[values]: BlockSayings[Code] extends undefined ? [] : [values: BlockSayings[Code]]) => Message<Code>;
/** What one block has of one fabric. */
export interface BlockFabric {
    fabric: string;
    /** Pieces of it in one block. */
    pieces: number;
    /** What they cover in one finished block, in square inches. */
    area: Exact;
}
/** What {@link reckonBlock} gives back. */
export interface BlockAnswer extends Answer {
    /** How many blocks there are, and the finished side of one. */
    count: number;
    block: Exact;
    /** The same with its seam allowance. */
    unfinished: Exact;
    /** The cells of the chart. */
    columns: number;
    rows: number;
    /** The finished size of one cell. */
    cell: Size;
    /** Pieces of cloth in one block. */
    patches: number;
    /** What each fabric covers in one block. */
    letters: BlockFabric[];
    /** Cloth for each fabric, for all blocks. */
    fabrics: FabricPlan[];
    /** All sheets together, if fabrics are cut from sheets. */
    sheets?: number | undefined;
    week?: number | undefined;
    used: {
        cloth?: Cloth;
        chart: Chart;
        name: string;
        oneWay: boolean;
        kept: Exact;
        piecesOf: Making['piecesOf'];
    };
}
