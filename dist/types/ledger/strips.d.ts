import type { Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
import { type Cloth, type CuttingPlan } from '../planner/plan.js';
import type { Purchase } from './purchase.js';
import { type Quantity } from './quantity.js';
/** Where one piece lies. Exact inches from the left and the top of its cloth or sheet. */
export interface LaidPiece {
    x: Exact;
    y: Exact;
    width: Exact;
    height: Exact;
    /** The piece's name in the cut list. Pieces that are called the same have one and the same message. */
    piece: Message;
    /** The sheet it lies on, from 0. */
    sheet: number;
    /** Of a square that triangles are cut from: how many, 2 or 4. */
    triangles?: number | undefined;
}
/** Strips cut alike across the cloth, and what each gives. */
export interface CutStrip {
    count: number;
    height: Exact;
    gives: {
        piece: Message;
        count: number;
    }[];
}
/** One fabric's plan, as it is drawn. */
export interface LaidPlan {
    strips: CutStrip[];
    layout: LaidPiece[];
    /** The cloth or sheet, usable: across, and along what is used. */
    width: Exact;
    height: Exact;
}
/** What a drawing of a plan says. */
export interface LaidSayings {
    laidPicture: {
        caption: Message;
        pieces: Message[];
    };
    laidOn: {
        fabric: string;
        buy: Purchase;
    };
    laidOnSome: {
        fabric: string;
        alike: number;
        of: Message;
    };
    laidSides: {
        short: Exact;
        long: Exact | undefined;
    };
}
export declare const sayOfLayout: <Code extends "laidPicture" | "laidOn" | "laidOnSome" | "laidSides">(code: Code, ...[values]: LaidSayings[Code] extends undefined ? [] : [values: LaidSayings[Code]]) => Message<Code>;
/** A plan's strips from the top of the cloth; `names` has those of the pieces. */
export declare const stripsOf: ({ sheets }: CuttingPlan, names: Message[]) => CutStrip[];
/** What strips come to, one below the other, those of one height together: `8 × 2 1/2 + 1 × 12 1/2`. */
export declare const stacked: (strips: CutStrip[]) => Quantity;
/** A plan's strips, and where each piece lies. */
export declare const laidOut: (plan: CuttingPlan, { width, height }: Cloth, names: Message[], triangles?: number[]) => LaidPlan;
