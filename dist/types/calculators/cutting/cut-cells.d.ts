import { type PatchKind } from './list-words.js';
/** What the cells of a row hold when a cut list is typed cell by cell, in order. */
export declare const CELLS: readonly ["fabric", "piece", "width", "length", "count", "way"];
export type CutCell = (typeof CELLS)[number];
/** How a piece is cut: its kind, and whether its size is the finished one. */
export type CutWay = PatchKind | `${PatchKind}-finished`;
export declare const WAYS: CutWay[];
/** A row of cells. A missing one is empty. */
export type CutRow = Partial<Record<CutCell, string>>;
/** Whether nothing is written in a row. */
export declare const isEmptyRow: (row: CutRow) => boolean;
/** Whether a row lacks something that every piece has. */
export declare const isUnfinishedRow: ({ width, count }: CutRow) => boolean;
/** Whether the first line of a list says what its columns are. */
export declare const hasHead: (list: string) => boolean;
/** A list as rows of cells. Undefined if its lines cannot be put in cells: then its text has to be corrected. */
export declare const cutRows: (list: unknown) => CutRow[] | undefined;
/** The row, cut in the way that its name says, if it says one. */
export declare const asNamed: (row: CutRow) => CutRow;
/** The row, cut in the way that somebody chose. A name that says another way loses the words that say so. */
export declare const inWay: (row: CutRow, way: string) => CutRow;
/** Rows of cells as text: a line for each piece, without the empty ones. A first line that looks like a head has one above it. */
export declare const writeCutRows: (rows: CutRow[]) => string;
