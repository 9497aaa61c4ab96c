import type { Layout } from '../calculators/top/shape.js';
/**
 * Which kind of block lies in each place of the top, row by row. The kinds come in turn, and each exactly as often as its number
 * says. Then every row is turned, so that blocks of a kind do not stand in columns if that can be avoided: with two kinds on an even
 * number of columns, every second row begins with the other one. If there are fewer blocks than places, the last places stay empty.
 */
export declare const inTurn: (counts: number[], layout: Pick<Layout, "across" | "down" | "onPoint">) => (number | undefined)[];
