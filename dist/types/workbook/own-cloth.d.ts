import type { Planner } from '../ledger/planning.js';
import { type Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { type CutFromOwn, type OwnPiece } from '../planner/own-pieces.js';
import type { CutPiece } from '../planner/plan.js';
import { type AtHand } from './at-hand.js';
import type { PlannedTogether } from './shape.js';
/** A reader's own cloth of one fabric. Each line of the list takes from it what it uses. */
export declare class Stock {
    #private;
    /** As the reader wrote it. */
    readonly written: string;
    /** Whether the fabric says how wide it is. */
    readonly isWide: boolean;
    constructor(
    /** As the reader wrote it. */
    written: string, pieces: AtHand[], 
    /** Whether the fabric says how wide it is. */
    isWide: boolean);
    /** The same cloth again, for another way to make the list. */
    copy(): Stock;
    get pieces(): AtHand[];
    /** Lengths of cloth are as wide as the cloth of the parts, if the fabric does not say how wide it is. */
    asWideAs(width: Exact): void;
    /** Takes so many of a piece. */
    take(piece: AtHand, count: number): void;
}
/** How a piece of cloth lies, and how much a wash leaves of it. */
export interface Lying {
    oneWay: boolean;
    kept: Exact;
}
/** A piece of own cloth as it is cut, in its size after the wash. */
export declare const asCut: (piece: AtHand, { oneWay, kept }: Lying) => OwnPiece;
/** What is cut from own cloth, and what is left. */
export interface OwnPlan {
    /** For each of the pieces that were asked for: how many are left. */
    rest: number[];
    used: {
        piece: AtHand;
        cloth: OwnPiece;
        cut: CutFromOwn;
    }[];
}
/** The ways to cut pieces from own cloth first. A number is the progress of a plan that is not ready yet. */
export declare const waysFrom: (wanted: CutPiece[], own: AtHand[], lying: Lying, plan: Planner) => (OwnPlan | number)[];
/** Gives what own cloth has to the lists in their order, and returns what each still wants. */
export declare const stillWanted: (wanted: number[][], rest: number[]) => number[][];
/** The plans on own cloth, as they are drawn. */
export declare const drawnOwn: (letter: string, { used }: OwnPlan, names: Message[]) => PlannedTogether[];
