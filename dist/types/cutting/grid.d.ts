import { type Exact } from '../measure/exact.js';
/** What cannot be planned, in a sentence for the reader. */
export interface NoPlan {
    ok: false;
    message: string;
    /** The piece at fault (its place in the list), where one is. */
    piece?: number;
}
export declare const noPlan: (message: string, piece?: number) => NoPlan;
/** Lengths as whole numbers, so that a search compares plain integers. */
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
/** The grid on which all the lengths are whole, or 1/4096 in where that would take more than `finest` steps an inch. */
export declare const gridFor: (lengths: Exact[], finest: number) => Grid;
export declare const MOST_PIECES = 1000000;
/** Why these sizes and counts cannot be planned; nothing when they can. */
export declare const refuse: (cloth: Exact[], pieces: {
    sizes: Exact[];
    count: number;
}[]) => NoPlan | undefined;
