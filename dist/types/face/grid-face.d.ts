import { type TemplateResult } from 'lit';
import type { Answer } from '../ledger/answer.js';
import type { CellState } from './cell.js';
import { type GridPlace } from './grid.js';
import { ListFace } from './list-face.js';
/** A face with an input that is a grid of cells. Its text is written from the texts in the cells. */
export declare abstract class GridFace<A extends Answer = Answer> extends ListFace<A> {
    #private;
    /** The input that is a grid. */
    protected abstract readonly gridKey: string;
    /** Whether Enter goes to the next row of the same column, and not to the next cell. */
    protected readonly entersDown: boolean;
    /** The most rows that the page shows as cells. A longer text stays a text: nobody types it cell by cell. */
    protected abstract readonly mostRows: number;
    /** The cells. Undefined if the text cannot be put in cells. */
    protected abstract grid(state: CellState): TemplateResult | undefined;
    /** The text of these cells. */
    protected abstract writeGrid(rows: string[][]): string;
    /** The rows after somebody typed in one cell. */
    protected afterTyping(rows: string[][], _place: GridPlace): string[][];
    /** The rows after somebody pasted a text into one cell. */
    protected afterPasting(rows: string[][], place: GridPlace, text: string): string[][];
    /** Whether a row is only begun, so that what it lacks is not wrong yet. */
    protected isBegunRow(_rows: string[][], _row: number): boolean;
    /** The cell that has the focus. */
    protected entered: GridPlace | undefined;
    constructor();
    /** The cells as the reader has them while she is in the grid: an emptied row keeps its place until she leaves. */
    protected get liveRows(): string[][] | undefined;
    protected placeOf(id: string): ReturnType<ListFace['placeOf']>;
    protected typed: (event: Event) => void;
    protected focusIn: (event: {
        target: EventTarget | null;
    }) => void;
    protected focusOut: (event: FocusEvent) => void;
    protected keyDown: (event: KeyboardEvent) => void;
}
