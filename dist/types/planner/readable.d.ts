import type { Layout, Lot } from './fill.js';
/** Where one piece lies, in steps of the grid. */
interface Spot {
    piece: number;
    turned: boolean;
    x: number;
    y: number;
    right: number;
    bottom: number;
}
/** A strip from edge to edge; its spots are those of the first of `times`, from its own top. */
interface GridStrip {
    times: number;
    height: number;
    spots: Spot[];
    key: string;
}
/**
 * A layout as a person reads it: each sheet in strips from edge to edge, tallest first, equal ones together; in a strip,
 * equal columns beside each other.
 */
export declare const readable: (sheets: Layout["sheets"], lots: Lot[]) => {
    times: number;
    strips: GridStrip[];
    key: string;
}[];
export {};
