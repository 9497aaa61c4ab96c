import { type TemplateResult } from 'lit';
import { type CutCell, type CutRow } from '../../calculators/cutting/cut-cells.js';
import { type CellState } from '../../face/cell.js';
import { type GridPlace } from '../../face/grid.js';
/** A list as it is shown, and what the reader can do in it. */
export interface ListGrid {
    rows: CutRow[];
    /** The fabrics to choose from, in words. Undefined if their letters are written. */
    fabrics: Record<string, string> | undefined;
    isWrong: (row: number, cell: CutCell) => boolean;
    /** The cell that has the focus. */
    entered: GridPlace | undefined;
    typeIn: (sign: string) => void;
}
/** A row from the texts in its cells, and back. */
export declare const rowOf: (texts: string[]) => CutRow;
export declare const textsOf: (row: CutRow) => string[];
/** The list as a row of cells for each piece, with an empty row after the last. */
export declare const listGrid: ({ id, label, t }: CellState, list: ListGrid) => TemplateResult;
export declare const listStyles: import("lit").CSSResult;
