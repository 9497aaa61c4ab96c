import { type TemplateResult } from 'lit';
import type { CellState } from '../../face/cell.js';
/** The most cells each way that a page shows. A chart that is larger is wrong, and stays a text. */
export declare const MOST_SHOWN = 24;
/** The chart as a table of cells, as its author would write it, with an empty cell after each row and a row after the last. */
export declare const grid: ({ id, text, label, t }: CellState, isWrong: (row: number, cell: number) => boolean) => TemplateResult | undefined;
/** The chart in these cells, as text, without the empty ones at the ends. */
export declare const chartIn: (rows: string[][]) => string;
export declare const gridStyles: import("lit").CSSResult;
