import { type Exact } from '../measure/exact.js';
/** One way to cut a piece from a roll, in lengths that are joined edge to edge. */
export interface RollPlan {
    roll: Exact;
    lengths: number;
    /** How long each length is cut. */
    each: Exact;
    /** `lengthwise`: the roll's length runs along the piece's length; `crosswise`: across it. */
    direction: 'lengthwise' | 'crosswise';
    fabric: Exact;
}
interface Piece {
    width: Exact;
    length: Exact;
}
/**
 * Ways to cut a piece from rolls of these widths, best first: the fewest lengths, then the least area. Ways with more than two
 * lengths are left out, unless no roll is wide enough for two.
 */
export declare const rollPlans: (rolls: Exact[], piece: Piece) => RollPlan[];
export {};
