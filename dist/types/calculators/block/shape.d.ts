import type { Answer } from '../../ledger/answer.js';
import { type Cloth } from '../../ledger/cloth.js';
import { type Field } from '../../ledger/field.js';
import type { Input, Ledger } from '../../ledger/ledger.js';
import type { Size } from '../../ledger/quilt.js';
import { type ShopRow } from '../../ledger/shop.js';
import type { Exact } from '../../measure/exact.js';
import { type Message } from '../../measure/message.js';
import type { FabricPlan, FabricRow, ListSurroundings, PlannedSayings } from '../cutting/plan-shape.js';
import { type ChartSayings } from './chart.js';
import type { Chart } from './patch.js';
import type { Method, PieceSayings } from './pieces.js';
/** Each method by its code: half-square triangles first, then geese. */
export declare const METHODS: {
    readonly 'two-one': {
        readonly halves: "two";
        readonly geese: "one";
    };
    readonly 'two-four': {
        readonly halves: "two";
        readonly geese: "four";
    };
    readonly 'eight-one': {
        readonly halves: "eight";
        readonly geese: "one";
    };
    readonly 'eight-four': {
        readonly halves: "eight";
        readonly geese: "four";
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
    method: Field<"two-one" | "two-four" | "eight-one" | "eight-four"> & {
        options: readonly MethodCode[];
    };
};
/** Input of {@link reckonBlock}: `chart` (text, or rows of cells), `block`, `count`, `method`, `seam`, `fabricWidth`, … */
export type BlockInput = Input<typeof blockFields> & ListSurroundings & {
    /** What the block is called. */
    name?: unknown;
};
/** The rows that it reckons. If there are several fabrics, each has its own row. */
export type BlockRow = 'cell' | 'cellLength' | 'unfinished' | 'patches' | 'halvesOtherwise' | 'geeseOtherwise' | 'washedWidth' | ShopRow;
export type BlockLedger = Ledger<typeof blockFields, BlockRow | FabricRow>;
/** What it says. */
export interface BlockSayings extends ChartSayings, PieceSayings, PlannedSayings {
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
export interface FabricNeed {
    fabric: string;
    need: Exact;
}
export declare const say: <Code extends "square" | "summary" | "picture" | "letter" | "betweenMarks" | "rectangle" | "tooManyCells" | "emptyChart" | "inCell" | "marksNeeded" | "tooManyFabrics" | "emptyCell" | "notPatch" | "notSpan" | "outside" | "overlaps" | "gap" | "halfNotSquare" | "quarterNotSquare" | "insideNotSquare" | "gooseNotTwoByOne" | "gooseWay" | "squareFor" | "widthOfFabric" | "ofPiece" | "cutUp" | "ofFabric" | "fabricName" | "stripsAcross" | "caution" | "boughtEach" | "piecesFrom" | "fabricHead" | "noFabric" | "pairSquareTwo" | "pairSquareEight" | "quarterTriangles" | "gooseRectangle" | "skyCorner" | "gooseSquare" | "skySquare" | "middleSquare" | "cornerTriangles" | "patchTooSmall" | "unlikeSkies" | "halvesOtherWay" | "geeseOtherWay" | "cellName">(code: Code, ...[values]: BlockSayings[Code] extends undefined ? [] : [values: BlockSayings[Code]]) => Message<Code>;
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
    week?: number | undefined;
    used: {
        cloth: Cloth;
        chart: Chart;
        name: string;
    };
}
