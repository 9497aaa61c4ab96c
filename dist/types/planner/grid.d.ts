import { type Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
/** Why a list cannot be planned. */
export interface PlanSayings {
    sizeOfNothing: undefined;
    longerThanCloth: undefined;
    wholeCount: undefined;
    tooManySizes: {
        most: number;
    };
    tooManyPieces: undefined;
    tooManyToPlace: undefined;
    largerThanSheet: undefined;
    largerThanCloth: {
        cloth: Exact;
    };
}
export declare const say: <Code extends "tooManySizes" | "sizeOfNothing" | "longerThanCloth" | "wholeCount" | "tooManyPieces" | "tooManyToPlace" | "largerThanSheet" | "largerThanCloth">(code: Code, ...[values]: PlanSayings[Code] extends undefined ? [] : [values: PlanSayings[Code]]) => Message<Code>;
/** What cannot be planned, and why. */
export interface NoPlan {
    ok: false;
    problem: Message;
    /** The place in the list of the piece that causes it, if one does. */
    piece?: number;
}
export declare const noPlan: (problem: Message, piece?: number) => NoPlan;
/** Makes lengths whole numbers, so that the search compares plain integers. */
export interface Grid {
    /** Whether every length is a whole number of steps; if not, pieces are rounded up and cloth down. */
    exact: boolean;
    /** A piece, never smaller than it is. */
    up: (length: Exact) => number;
    /** Cloth, never larger than it is. */
    down: (length: Exact) => number;
    /** Back to inches. */
    inches: (steps: number) => Exact;
}
/** The greatest common divisor. */
export declare const gcd: <T extends bigint | number>(a: T, b: T) => T;
/** The grid on which all lengths are whole numbers, or 1/4096 in if that would need more than `finest` steps an inch. */
export declare const gridFor: (lengths: Exact[], finest: number) => Grid;
export declare const MOST_PIECES = 1000000;
/** Why these sizes and counts cannot be planned, or undefined if they can. */
export declare const refuse: (cloth: Exact[], pieces: {
    sizes: Exact[];
    count: number;
}[]) => NoPlan | undefined;
