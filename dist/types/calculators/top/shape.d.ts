import type { Answer } from '../../ledger/answer.js';
import { type BedRow, type BedSayings } from '../../ledger/bed.js';
import { type Cloth } from '../../ledger/cloth.js';
import type { Input, Ledger } from '../../ledger/ledger.js';
import type { Cut, Purchase } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { type ShopRow } from '../../ledger/shop.js';
import type { CutStrip } from '../../ledger/strips.js';
import type { OwnCloth } from '../../ledger/widths.js';
import type { Exact } from '../../measure/exact.js';
import { type Message } from '../../measure/message.js';
import type { CuttingPlan } from '../../planner/plan.js';
import { type BlockChoice } from './choices.js';
export declare const topFields: {
    shrinkage: import("../../ledger/field.js").Field<import("fraction.js").default>;
    increment: import("../../ledger/field.js").Field<import("../../measure/shop.js").Step>;
    price: import("../../ledger/field.js").Field<import("fraction.js").default | undefined>;
    currency: import("../../ledger/field.js").Field<string | undefined>;
    mark: import("../../ledger/field.js").Field<import("fraction.js").default>;
    seam: import("../../ledger/field.js").Field<import("fraction.js").default>;
    fabricWidth: import("../../ledger/field.js").Field<import("fraction.js").default>;
    bed: import("../../ledger/field.js").Field<"crib" | "twin" | "twin-long" | "full" | "queen" | "king" | "california-king" | "60x120" | "70x140" | "90x190" | "90x200" | "120x200" | "135x190" | "140x200" | "150x200" | "160x200" | "180x200" | "200x200" | "none"> & {
        options: readonly ("crib" | "twin" | "twin-long" | "full" | "queen" | "king" | "california-king" | "60x120" | "70x140" | "90x190" | "90x200" | "120x200" | "135x190" | "140x200" | "150x200" | "160x200" | "180x200" | "200x200" | "none")[];
    };
    drop: import("../../ledger/field.js").Field<import("fraction.js").default>;
    tuck: import("../../ledger/field.js").Field<import("fraction.js").default>;
    target: import("../../ledger/field.js").Field<[import("fraction.js").default, import("fraction.js").default] | undefined>;
    border: import("../../ledger/field.js").Field<import("fraction.js").default>;
    block: import("../../ledger/field.js").Field<import("fraction.js").default>;
    across: import("../../ledger/field.js").Field<number>;
    down: import("../../ledger/field.js").Field<number>;
    set: import("../../ledger/field.js").Field<"straight" | "on-point"> & {
        options: readonly ("straight" | "on-point")[];
    };
    sashing: import("../../ledger/field.js").Field<import("fraction.js").default>;
    cornerstones: import("../../ledger/field.js").Field<boolean>;
    frame: import("../../ledger/field.js").Field<boolean>;
};
/** Input of {@link reckonTop}: `block`, `across`, `down`, `sashing`, `cornerstones`, `frame`, `set`, `bed` or `target`, … */
export type TopInput = Input<typeof topFields>;
/** The rows that it reckons. */
export type TopRow = BedRow | 'blocks' | 'finishedWidth' | 'finishedLength' | 'unfinished' | 'washedWidth' | 'sideSquare' | 'cornerSquare' | 'sideTriangles' | 'sashingJoined' | 'sashingWhole' | ShopRow;
export type TopLedger = Ledger<typeof topFields, TopRow>;
/** The kinds of pieces besides the blocks. */
export type PartKind = 'sashing' | 'cornerstones' | 'triangles';
/** How many blocks there are, and the finished size of one. */
export interface Blocks {
    count: number;
    block: Exact;
}
/** How a top is laid out. */
export interface Layout extends Blocks {
    across: number;
    down: number;
    onPoint: boolean;
    /** 0 if there is none. */
    sashing: Exact;
    cornerstones: boolean;
    /** Whether there is sashing round the outside too. */
    frame: boolean;
}
/** What it says. */
export interface TopSayings extends BedSayings {
    /** A bed counts before a wanted size. */
    targetNotUsed: undefined;
    /** The numbers of blocks that come near to the wanted size. */
    blocksForSize: undefined;
    noBlocksForSize: undefined;
    choiceHead: undefined;
    finishedHead: undefined;
    differenceHead: undefined;
    blocksHead: undefined;
    takeBlocks: Pick<BlockChoice, 'across' | 'down'>;
    difference: Pick<BlockChoice, 'over' | 'border'>;
    needsCornerstones: undefined;
    runsRound: undefined;
    unfinishedSize: {
        size: Size;
    };
    moreEachWay: {
        allowance: Quantity;
    };
    /** A cut size before it is rounded up to a mark of the ruler. */
    upToMark: {
        size: Quantity;
    };
    stripsAcross: {
        need: Quantity;
    };
    onlyBlocks: undefined;
    ifAllFromOne: undefined;
    /** A strip of sashing that is slightly longer than the cloth is wide, and what a shorter one would save (or 0). */
    littleTooLong: {
        length: Exact;
        over: Exact;
        saves: Exact;
    };
    mayTakeLess: undefined;
    /** What is cut. */
    sash: undefined;
    sashBetweenBlocks: undefined;
    sashBetweenRows: undefined;
    sashBetweenRowsInOne: undefined;
    cornerstone: undefined;
    wholeToJoin: {
        piece: Message;
        length: Exact;
    };
    endToJoin: {
        piece: Message;
        length: Exact;
    };
    squareForSides: undefined;
    squareForCorners: undefined;
    /** A kind of piece, inside a sentence and as a title. */
    part: {
        kind: PartKind;
    };
    partTitle: {
        kind: PartKind;
    };
    allParts: undefined;
    /** `buy` is for these parts. Undefined if nothing is cut, or if the shopping list buys it with other things. */
    summary: {
        layout: Layout;
        finished: Size;
        parts: Message[];
        areOne: boolean;
        buy: Purchase | undefined;
    };
    finished: undefined;
    finishedSize: {
        size: Size;
    };
    /** Lists under the drawing. */
    clothApart: undefined;
    stripsApart: undefined;
    stripsTogether: undefined;
    partHead: undefined;
    picture: {
        summary: Message;
    };
}
export declare const say: <Code extends "size" | "part" | "finished" | "summary" | "picture" | "measureYours" | "notForCrib" | "blocksHead" | "stripsTogether" | "difference" | "upToMark" | "stripsAcross" | "targetNotUsed" | "blocksForSize" | "noBlocksForSize" | "choiceHead" | "finishedHead" | "differenceHead" | "takeBlocks" | "needsCornerstones" | "runsRound" | "unfinishedSize" | "moreEachWay" | "onlyBlocks" | "ifAllFromOne" | "littleTooLong" | "mayTakeLess" | "sash" | "sashBetweenBlocks" | "sashBetweenRows" | "sashBetweenRowsInOne" | "cornerstone" | "wholeToJoin" | "endToJoin" | "squareForSides" | "squareForCorners" | "partTitle" | "allParts" | "finishedSize" | "clothApart" | "stripsApart" | "partHead">(code: Code, ...[values]: TopSayings[Code] extends undefined ? [] : [values: TopSayings[Code]]) => Message<Code>;
/** Pieces of one kind: their strips, and their cloth, rounded on its own. */
export interface TopPart {
    part: Message;
    fabric: Exact;
    buy: Purchase;
    cloth: OwnCloth;
    cuts: Cut[];
    strips: CutStrip[];
    /** Its pieces before long ones are joined, and the plan of its cuts. */
    used: {
        kind: PartKind;
        pieces: Cut[];
        plan: CuttingPlan | undefined;
    };
}
/** What {@link reckonTop} gives back. */
export interface TopAnswer extends Answer {
    finished: Size;
    /** With the seam allowance all round. */
    unfinished: Size;
    blocks: number;
    /**
     * If a bed or a wanted size is given: the numbers of blocks that come nearest to it, best first. Those that are large enough come
     * first, and each of the others has the border that would make it exactly as large.
     */
    choices?: BlockChoice[] | undefined;
    /** Sashing, cornerstones and squares for setting triangles: cut sizes and counts. */
    pieces: Cut[];
    /** Side triangles on point: how many, and the square that four are cut from. */
    sideTriangles?: number;
    sideSquare?: Exact;
    /** The square that two corner triangles are cut from. */
    cornerSquare?: Exact;
    /** Cloth for each kind of piece. */
    parts: TopPart[];
    /** The strips if all pieces are cut from one cloth. */
    strips: CutStrip[];
    used: {
        cloth: Cloth;
        layout: Layout;
    };
}
