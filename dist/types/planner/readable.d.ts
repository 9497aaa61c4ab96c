import type { Layout, Lot } from './fill.js';
/** Where one piece lies, in steps of the grid. */
export interface Spot {
    piece: number;
    turned: boolean;
    x: number;
    y: number;
    right: number;
    bottom: number;
}
/** A strip from edge to edge, and equal ones below it. The spots are those of the first, measured from its own top. */
interface GridStrip {
    times: number;
    height: number;
    spots: Spot[];
    key: string;
}
/**
 * Puts a layout in an order that is easy to read: each sheet in strips from edge to edge, tallest first, equal ones together. In a
 * strip, equal columns are beside each other.
 */
export declare const readable: (sheets: Layout["sheets"], lots: Lot[]) => {
    times: number;
    strips: GridStrip[];
    key: string;
}[];
export {};
