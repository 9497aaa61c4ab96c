import { type Exact } from '../measure/exact.js';
/** One way to cut a piece from a roll, in lengths that are butted edge to edge. */
export interface RollPlan {
    roll: Exact;
    lengths: number;
    /** What each length is cut to. */
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
 * Ways to cut a piece from rolls of these widths, best first: the fewest lengths, then the least area. Not more than two
 * lengths, unless no roll does with two.
 */
export declare const rollPlans: (rolls: Exact[], piece: Piece) => RollPlan[];
export {};
