import type { Answer } from '../../ledger/answer.js';
import { type Cloth } from '../../ledger/cloth.js';
import type { Input } from '../../ledger/ledger.js';
import type { Purchase } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import { type Size } from '../../ledger/quilt.js';
import { type ShopRow } from '../../ledger/shop.js';
import type { Exact } from '../../measure/exact.js';
import { type Message } from '../../measure/message.js';
export declare const backingFields: {
    shrinkage: import("../../ledger/field.js").Field<import("fraction.js").default>;
    increment: import("../../ledger/field.js").Field<import("../../measure/shop.js").Step>;
    price: import("../../ledger/field.js").Field<import("fraction.js").default | undefined>;
    currency: import("../../ledger/field.js").Field<string | undefined>;
    seam: import("../../ledger/field.js").Field<import("fraction.js").default>;
    repeat: import("../../ledger/field.js").Field<import("fraction.js").default>;
    oneWay: import("../../ledger/field.js").Field<boolean>;
    piecedStrip: import("../../ledger/field.js").Field<boolean>;
    fabricWidth: import("../../ledger/field.js").Field<import("fraction.js").default>;
    overage: import("../../ledger/field.js").Field<import("fraction.js").default>;
    width: import("../../ledger/field.js").Field<import("fraction.js").default>;
    length: import("../../ledger/field.js").Field<import("fraction.js").default>;
};
/** Input of {@link reckonBacking}: `width`, `length`, `overage`, `fabricWidth`, `seam`, `repeat`, `oneWay`, … */
export type BackingInput = Input<typeof backingFields>;
/** The rows that it reckons. */
export type BackingRow = 'needWidth' | 'needLength' | 'washedWidth' | 'panels' | 'panel' | 'strip' | 'stripCount' | ShopRow;
/** What it says. */
export interface BackingSayings {
    seamsLeaveNothing: {
        seam: Exact;
        cloth: Exact;
        isSeam: boolean;
    };
    tooManyPanels: {
        cloth: Exact;
        panels: number;
    };
    /** How far the panels reach, and the width that is needed. If they are too short, a strip makes up the rest. */
    panelsReach: {
        reach: Quantity;
        need: Quantity;
        isShort: boolean;
    };
    panelLength: {
        side: 'width' | 'length';
        from: Quantity;
    };
    backingPanel: undefined;
    stripToJoin: undefined;
    summary: Pick<BackingLayout, 'panels' | 'seams' | 'direction'> & {
        strip: boolean;
        oneWay: boolean;
        need: Size;
    };
    /** A layout in the list of layouts, and the heads of that list. */
    layout: BackingLayout;
    layouts: undefined;
    panelsHead: undefined;
    seamsHead: undefined;
    /** In the drawing. */
    picture: {
        summary: Message;
    };
    panelNumber: {
        number: number;
    };
    stripInPicture: undefined;
    /** A way that uses less cloth. */
    pieced: undefined;
}
export declare const say: <Code extends "layout" | "panelLength" | "layouts" | "summary" | "panelNumber" | "seamsLeaveNothing" | "tooManyPanels" | "panelsReach" | "backingPanel" | "stripToJoin" | "panelsHead" | "seamsHead" | "picture" | "stripInPicture" | "pieced">(code: Code, ...[values]: BackingSayings[Code] extends undefined ? [] : [values: BackingSayings[Code]]) => Message<Code>;
/** One way to make the back. Lengths are exact inches. */
export interface BackingLayout {
    /** Whole panels, side by side. */
    panels: number;
    /** `lengthwise`: the cloth's length, and the long seams, run along the quilt's length; `crosswise`: across it. */
    direction: 'lengthwise' | 'crosswise';
    /** All seams to sew, with the joins of the strip. */
    seams: number;
    /** How long each panel is cut, along the cloth. */
    panelLength: Exact;
    /** The strips that make up the missing width, joined end to end; only in a layout with a pieced strip. */
    strip?: {
        count: number;
        height: Exact;
    } | undefined;
    /** How wide the joined panels are, before trimming. */
    cover: Exact;
    fabric: Exact;
    buy: Purchase;
}
/** What {@link reckonBacking} gives back. */
export interface BackingAnswer extends Answer {
    /** The back's size before quilting. */
    need: Size;
    /** Every layout that is possible, the one to use first. */
    layouts: BackingLayout[];
    /** The largest piece left over, from the side of the last panel. Absent if nothing is left. */
    leftover?: Size | undefined;
    used: {
        cloth: Cloth;
        seam: Exact;
        quilt: Size;
    };
}
