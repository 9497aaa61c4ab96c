import type { Answer } from '../../ledger/answer.js';
import { type Cloth } from '../../ledger/cloth.js';
import type { Input, Ledger } from '../../ledger/ledger.js';
import type { Cut } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { type ShopRow } from '../../ledger/shop.js';
import type { OwnCloth } from '../../ledger/widths.js';
import type { Exact } from '../../measure/exact.js';
import { type Message } from '../../measure/message.js';
import type { LooseCut } from '../calculator.js';
export declare const sleeveFields: {
    shrinkage: import("../../ledger/field.js").Field<import("fraction.js").default>;
    increment: import("../../ledger/field.js").Field<import("../../measure/shop.js").Step>;
    price: import("../../ledger/field.js").Field<import("fraction.js").default | undefined>;
    currency: import("../../ledger/field.js").Field<string | undefined>;
    seam: import("../../ledger/field.js").Field<import("fraction.js").default>;
    fabricWidth: import("../../ledger/field.js").Field<import("fraction.js").default>;
    width: import("../../ledger/field.js").Field<import("fraction.js").default>;
    stripWidth: import("../../ledger/field.js").Field<import("fraction.js").default>;
    short: import("../../ledger/field.js").Field<import("fraction.js").default>;
    hem: import("../../ledger/field.js").Field<import("fraction.js").default>;
    label: import("../../ledger/field.js").Field<[import("fraction.js").default, import("fraction.js").default] | undefined>;
};
/** Input of {@link reckonSleeve}: `width`, `stripWidth`, `short`, `hem`, `label`, `fabricWidth`, … */
export type SleeveInput = Input<typeof sleeveFields>;
/** The rows that it reckons. */
export type SleeveRow = 'finished' | 'cutLength' | 'depth' | 'strips' | 'labelWidth' | 'labelLength' | 'washedWidth' | ShopRow;
export type SleeveLedger = Ledger<typeof sleeveFields, SleeveRow>;
/** What it says. */
export interface SleeveSayings {
    tooNarrow: {
        width: Exact;
    };
    seamsTakeAll: {
        strip: Exact;
    };
    joinsTakeAll: {
        cloth: Exact;
    };
    /** How far the strips reach, and the length that is needed. */
    stripsReach: {
        reach: Quantity;
        need: Quantity;
    };
    /** How wide the cloth or the quilt is, and what the seams leave of that. */
    labelTooWide: {
        most: Exact;
        room: Exact;
    };
    /** The label needs no cloth of its own. */
    labelBeside: undefined;
    labelTitle: undefined;
    labelPiece: undefined;
    sleeveStrip: undefined;
    stripToJoin: undefined;
    seeLeftover: undefined;
    summary: {
        strips: number;
        finished: Exact;
        depth: Exact;
        label: Size | undefined;
    };
    picture: {
        summary: Message;
    };
    sleeve: undefined;
    sleeveSide: {
        side: Exact;
    };
}
export declare const say: <Code extends "sleeve" | "summary" | "stripToJoin" | "picture" | "stripsReach" | "tooNarrow" | "seamsTakeAll" | "joinsTakeAll" | "labelTooWide" | "labelBeside" | "labelTitle" | "labelPiece" | "sleeveStrip" | "seeLeftover" | "sleeveSide">(code: Code, ...[values]: SleeveSayings[Code] extends undefined ? [] : [values: SleeveSayings[Code]]) => Message<Code>;
/** What is cut, and the cloth for that alone, before a wash. */
interface CutAlone {
    cut: Cut;
    need: Exact;
}
/** What {@link reckonSleeve} gives back. */
export interface SleeveAnswer extends Answer {
    /** The finished sleeve: along the quilt's top edge, and its depth when it lies flat. */
    finished: Size;
    /** Strips across the cloth, joined end to end. */
    strips: number;
    used: {
        cloth: Cloth;
        quilt: Exact;
        short: Exact;
        strip: CutAlone;
        /** Ways to cut the sleeve from what other parts leave: in one strip, or in equal ones to join. */
        ways: LooseCut[][];
        /** The label, with its finished size and its cloth. */
        label: (CutAlone & {
            finished: Size;
            cloth: OwnCloth;
        }) | undefined;
    };
}
export {};
