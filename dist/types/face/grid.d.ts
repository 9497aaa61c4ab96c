import { type TemplateResult } from 'lit';
/** The row of a cell, and its place in that row. */
export type GridPlace = [row: number, at: number];
export type GridElement = HTMLInputElement | HTMLSelectElement;
/** What a cell of a grid is. */
export interface GridCellState {
    /** The id of the row of the page. */
    id: string;
    place: GridPlace;
    /** What it is called: nobody sees its row and its column by ear. */
    name: string;
    value: string;
    wrong: boolean;
    /** What can be chosen there, in words. Undefined if it is written. */
    choices?: Record<string, string> | undefined;
    /** How many signs it is wide, if that follows its text. */
    size?: number | undefined;
    placeholder?: string | undefined;
    /** The keyboard of a phone. */
    mode?: 'numeric' | undefined;
}
/** One cell. The first has the id of its row, and so its label. */
export declare const gridCell: ({ id, place, name, value, wrong, ...more }: GridCellState) => TemplateResult;
/** Whether this is a cell of a grid. */
export declare const isOfGrid: (target: unknown) => target is GridElement;
/** The cells of the grid around this one. */
export declare const cellsAround: (one: Element) => GridElement[];
export declare const placeOf: ({ dataset }: GridElement) => GridPlace;
/** The texts in the cells around this one, row by row. */
export declare const textsAround: (one: Element) => string[][];
/** The cells of a spreadsheet or a text, as they are copied. */
export declare const blockOf: (pasted: string) => string[][];
/** Rows of texts with a block of them put in from a place on. */
export declare const withBlock: (rows: string[][], [from, start]: GridPlace, block: string[][]) => string[][];
/** The cell some rows below or above this one, if there is one. */
export declare const beyond: (one: GridElement, step: number) => GridElement | undefined;
