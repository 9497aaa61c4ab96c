import type { Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
import { type Cloth, type CuttingPlan } from '../planner/plan.js';
import type { Purchase } from './purchase.js';
import { type Size } from './quilt.js';
import { type Quantity } from './quantity.js';
/** Where one piece lies. Exact inches from the left and the top of its cloth or sheet. */
export interface LaidPiece {
    x: Exact;
    y: Exact;
    width: Exact;
    height: Exact;
    /** The name of the piece in the cut list. Pieces with the same name share one message object, so that they can be compared by it. */
    piece: Message;
    /** The sheet it lies on, from 0. */
    sheet: number;
    /** For a square that becomes triangles: how many, 2 or 4. */
    triangles?: number | undefined;
}
/** Equal strips across the cloth, and what each gives. */
export interface CutStrip {
    count: number;
    height: Exact;
    /** `size` is that of the piece as it is cut, in exact inches, the short side first. */
    gives: {
        piece: Message;
        count: number;
        size?: Size | undefined;
    }[];
    /** Some of its pieces lie below others, so that only the drawing says how to cut it. */
    asDrawn?: boolean | undefined;
}
/** One fabric's plan, as it is drawn. */
export interface LaidPlan {
    strips: CutStrip[];
    layout: LaidPiece[];
    /** The cloth or sheet, usable: across, and along what is used. */
    width: Exact;
    height: Exact;
}
/** What a drawing of a plan can say. */
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
    /** The same for sheets with these numbers. */
    laidOnNumbers: {
        fabric: string;
        numbers: number[];
        of: Message;
    };
    laidSides: {
        short: Exact;
        long: Exact | undefined;
    };
}
export declare const sayOfLayout: <Code extends "laidPicture" | "laidOn" | "laidOnSome" | "laidOnNumbers" | "laidSides">(code: Code, ...[values]: LaidSayings[Code] extends undefined ? [] : [values: LaidSayings[Code]]) => Message<Code>;
/** The strips of a plan, from the top of the cloth. `names` are the names of its pieces. */
export declare const stripsOf: ({ sheets }: CuttingPlan, names: Message[]) => CutStrip[];
/** The height of all strips together, as a formula with equal heights added up: `8 × 2 1/2 + 1 × 12 1/2`. */
export declare const stacked: (strips: CutStrip[]) => Quantity;
/** A plan's strips, and where each piece lies. */
export declare const laidOut: (plan: CuttingPlan, { width, height }: Cloth, names: Message[], triangles?: number[]) => LaidPlan;
