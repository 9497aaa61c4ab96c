import type { Answer } from '../../ledger/answer.js';
import { type Cloth } from '../../ledger/cloth.js';
import type { Input, Ledger } from '../../ledger/ledger.js';
import type { Cut, Purchase } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { type ShopRow } from '../../ledger/shop.js';
import type { OwnCloth } from '../../ledger/widths.js';
import type { Exact } from '../../measure/exact.js';
import { type Message } from '../../measure/message.js';
export declare const bordersFields: {
    shrinkage: import("../../ledger/field.js").Field<import("fraction.js").default>;
    increment: import("../../ledger/field.js").Field<import("../../measure/shop.js").Step>;
    price: import("../../ledger/field.js").Field<import("fraction.js").default | undefined>;
    currency: import("../../ledger/field.js").Field<string | undefined>;
    mark: import("../../ledger/field.js").Field<import("fraction.js").default>;
    grain: import("../../ledger/field.js").Field<"across" | "along"> & {
        options: readonly ("across" | "along")[];
    };
    join: import("../../ledger/field.js").Field<"diagonal" | "straight"> & {
        options: readonly ("diagonal" | "straight")[];
    };
    seam: import("../../ledger/field.js").Field<import("fraction.js").default>;
    fabricWidth: import("../../ledger/field.js").Field<import("fraction.js").default>;
    width: import("../../ledger/field.js").Field<import("fraction.js").default>;
    length: import("../../ledger/field.js").Field<import("fraction.js").default>;
    borders: import("../../ledger/field.js").Field<import("fraction.js").default[] | undefined> & {
        each: true;
    };
    corners: import("../../ledger/field.js").Field<("squares" | "sides-first" | "ends-first" | "mitred")[]> & {
        options: readonly ("squares" | "sides-first" | "ends-first" | "mitred")[];
    };
    target: import("../../ledger/field.js").Field<[import("fraction.js").default, import("fraction.js").default] | undefined>;
};
/** Input of {@link reckonBorders}: `width`, `length`, `borders`, `target`, `corners`, `grain`, `join`, `fabricWidth`, … */
export type BordersInput = Input<typeof bordersFields>;
/** How a border's corners are made. */
export type Corners = 'sides-first' | 'ends-first' | 'squares' | 'mitred';
/** The rows that do not belong to one border. */
export type BordersRow = 'washedWidth' | 'targetSides' | 'targetEnds' | ShopRow;
/** The rows that each border has. */
export type BorderPart = 'Width' | 'EndsWidth' | 'Sides' | 'Ends' | 'TopWidth' | 'TopLength' | 'FinishedWidth' | 'FinishedLength' | 'Strips' | 'Fabric';
/** A row of one border, with its number from the inside: `border2Sides`. */
export type BorderRow = `border${number}${BorderPart}`;
export declare const rowOf: (number: number, part: BorderPart) => BorderRow;
export type BordersLedger = Ledger<typeof bordersFields, BordersRow | BorderRow>;
/** `side` means left and right, `end` means top and bottom. */
export type PieceKind = 'side' | 'end' | 'corner';
/**
 * `joined`: strips across the cloth, joined into one length and cut up; `separate`: strips across the cloth, each piece
 * made on its own; `along`: parallel to the selvage, without joins.
 */
export type Plan = 'joined' | 'separate' | 'along';
/** What to buy of a border, and how much of it is left over if that is little. */
export interface BorderBought {
    buy: Purchase;
    spare: Exact | undefined;
}
/** What it says. */
export interface BordersSayings {
    /** What is wrong. */
    noBorder: undefined;
    reachedAlready: {
        borders: number;
        size: Size;
        larger: Size;
    };
    mitredUneven: {
        side: Exact;
        end: Exact;
    };
    tooWideAlong: {
        number: number;
        wide: Exact;
        cloth: Exact;
    };
    tooShortToJoin: {
        cloth: Exact;
    };
    joinedNoLonger: {
        wide: Exact;
        cloth: Exact;
    };
    seamsLeaveNothing: {
        measured: Exact;
        reckoned: Exact;
    };
    /** What is worth knowing. */
    cornersCopied: {
        styles: number;
        borders: number;
    };
    cornersUnused: {
        styles: number;
        borders: number;
    };
    reachedWithoutLast: undefined;
    lastBorder: {
        side: Exact;
        end: Exact;
    };
    /** What to buy if the borders are from different cloths. */
    fromDifferentCloths: {
        buys: BorderBought[];
    };
    /** The same, where they are. */
    forEachBorder: {
        buys: BorderBought[];
    };
    measureTop: undefined;
    /** The rows of one border, by its number. */
    borderRow: {
        number: number;
        is: 'cutWidth' | 'sidesCutWidth' | 'endsCutWidth' | 'side' | 'end' | 'strips' | 'cloth';
    };
    topBefore: {
        number: number;
        side: 'width' | 'length';
    };
    topWith: {
        number: number;
        side: 'width' | 'length';
    };
    /** A size between two marks of the ruler, and the size that is cut. */
    cutOnMark: {
        size: Quantity;
        cut: Exact;
    };
    stripCount: {
        strips: number;
        joins: number;
    };
    /** How the strips were counted, for each width of strip. */
    eachWidth: {
        widths: Message[];
    };
    allJoined: {
        reach: Quantity;
        need: Quantity;
    };
    eachSeparate: {
        whole: number;
        shared: number;
        pieces: Quantity[];
        loss: Quantity;
    };
    /** `across` shows how many fit side by side, if all strips are equally wide. */
    sideBySide: {
        across: Quantity | undefined;
        fit: number;
        rows: number;
        isBehind: boolean;
    };
    /** All pieces lie beside the longest one, so the cloth is as long as that. */
    longestPiece: {
        fabric: Quantity;
        shrinkage: Quantity | undefined;
    };
    /** All borders are cut along the cloth, side by side. */
    allAlong: {
        how: Message;
        fabric: Quantity;
        longest: Message | undefined;
    };
    /** A line of the cut list. Corners are squares if all sides are equally wide. */
    borderPiece: {
        number: number;
        piece: PieceKind;
        isSquare: boolean;
    };
    borderNumber: {
        number: number;
    };
    summary: {
        strips: number;
        joins: number;
        grain: 'across' | 'along';
        borders: number;
        finished: Size;
    };
    /** The lists under the drawing. */
    plans: undefined;
    borderHead: undefined;
    stripsHead: undefined;
    joinsHead: undefined;
    planOf: {
        number: number;
        plan: Plan;
    };
    stripsForBorders: undefined;
    picture: {
        summary: Message;
    };
    quiltTop: undefined;
}
export declare const say: <Code extends "stripCount" | "summary" | "seamsLeaveNothing" | "picture" | "stripsHead" | "cutOnMark" | "lastBorder" | "noBorder" | "reachedAlready" | "mitredUneven" | "tooWideAlong" | "tooShortToJoin" | "joinedNoLonger" | "cornersCopied" | "cornersUnused" | "reachedWithoutLast" | "fromDifferentCloths" | "forEachBorder" | "measureTop" | "borderRow" | "topBefore" | "topWith" | "eachWidth" | "allJoined" | "eachSeparate" | "sideBySide" | "longestPiece" | "allAlong" | "borderPiece" | "borderNumber" | "plans" | "borderHead" | "joinsHead" | "planOf" | "stripsForBorders" | "quiltTop">(code: Code, ...[values]: BordersSayings[Code] extends undefined ? [] : [values: BordersSayings[Code]]) => Message<Code>;
/** Equal pieces of one border: its sides, its top and bottom (`end`), or its corner squares. */
export interface BorderPiece {
    piece: PieceKind;
    count: number;
    /** Cut sizes in exact inches. The cut list has them on the ruler's marks. */
    length: Exact;
    width: Exact;
}
/** One way to cut a border. */
export interface BorderPlan {
    plan: Plan;
    strips: number;
    joins: number;
    /** As bought, before the wash. */
    fabric: Exact;
    buy: Purchase;
}
/** One border. Lengths are exact inches. `buy` counts if it has its own cloth. */
export interface Border extends BorderPlan {
    /** Its finished width. If top and bottom differ, the width of the sides. */
    finished: Exact;
    /** Its finished width at top and bottom, if that differs. */
    finishedEnds?: Exact | undefined;
    corners: Corners;
    pieces: BorderPiece[];
    /** What it is cut from. */
    cloth: OwnCloth;
    /** Every plan that the cloth allows: across joined, across separate, along. The border uses the best one. */
    plans: BorderPlan[];
}
/** A border with its pieces, and how its strips were counted. */
export interface CutBorder {
    number: number;
    border: Border;
    cuts: Cut[];
    strips: Message;
    how: Message;
}
/** What {@link reckonBorders} gives back; `fabric` and `buy` are for all borders from one cloth. */
export interface BordersAnswer extends Answer {
    /** From the inside out. */
    borders: Border[];
    /** The top's size with its borders. */
    finished: Size;
    used: {
        cloth: Cloth;
        borders: CutBorder[];
    };
}
