/** A cell of an author's own table: its text, and the attributes that a chart uses, as they are written. */
export interface TableCell {
    text: string;
    colspan?: string | undefined;
    rowspan?: string | undefined;
    goose?: string | undefined;
}
export declare const CELL_ATTRIBUTES: readonly ["colspan", "rowspan", "goose"];
export type Table = TableCell[][];
/** The first table in an element; of a table inside one of its cells only that it is there. */
export declare const tableIn: (element: Element) => Table | undefined;
