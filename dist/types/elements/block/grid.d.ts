import { type TemplateResult } from 'lit';
import type { CellState } from '../../face/cell.js';
/** The chart as a table of cells, as its author would write it, with an empty cell after each row and a row after the last. */
export declare const grid: ({ id, text, label, t }: CellState, isWrong: (row: number, cell: number) => boolean) => TemplateResult | undefined;
/** Whether this is a cell of a chart. */
export declare const isOfGrid: (target: unknown) => target is HTMLInputElement;
/** The chart in the cells around this one, as text. */
export declare const chartAround: (one: HTMLInputElement) => string;
/** The same with a block of cells from a spreadsheet or a text, put in from this cell on. */
export declare const chartWith: (one: HTMLInputElement, pasted: string) => string;
/** The cell above or below this one, if there is one. */
export declare const beyond: (one: HTMLInputElement, step: number) => HTMLInputElement | undefined;
export declare const gridStyles: import("lit").CSSResult;
