import { type Style } from '../../measure/format.js';
import type { Cut } from '../../reckon/answer.js';
import type { Money, WorksheetResult } from '../../reckon/worksheet.js';
import type { Listing } from '../../sheet/calculator.js';
import type { Cells } from '../../sheet/export.js';
/** One line of the shopping list: cloth by length, or something bought by the piece. */
interface Line {
    letter: string;
    name: string;
    uses: string;
    /** Exact inches; empty for what is bought by the piece. */
    need: string;
    amount: string;
    unit: string;
    text: string;
    price?: Money | undefined;
    cost?: Money | undefined;
    bolts?: number | undefined;
    width?: string | undefined;
}
/** The list's lines in the order of their letters; what has no letter comes last. */
export declare const linesOf: ({ fabrics, items }: WorksheetResult) => Line[];
export declare const nameOf: ({ letter, name }: {
    letter: string;
    name: string;
}) => string;
/** The shopping list as it is shown. */
export declare const shopping: (result: WorksheetResult, style: Style) => Listing;
/** One line of the cut list of all parts. */
export interface Piece {
    letter: string;
    name: string;
    title: string;
    cut: Cut;
}
/** The shopping list and the cut list as cells, numbers as numbers. */
export declare const worksheetCells: (result: WorksheetResult, pieces: Piece[], { units }: Style) => Cells;
export {};
