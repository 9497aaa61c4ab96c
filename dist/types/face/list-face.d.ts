import type { Answer } from '../ledger/answer.js';
import { type ListSurroundings } from '../calculators/cutting/plan-shape.js';
import { ReadingFace } from './planning-face.js';
import { Teller } from '../words/teller.js';
import { type Table } from './table.js';
/** A face whose pieces are in the table that its author wrote inside it, or in the cells of the page. */
export declare abstract class ListFace<A extends Answer = Answer> extends ReadingFace<A> {
    #private;
    /** The author's own table. */
    protected table: Table | undefined;
    protected readonly watched: {
        childList: boolean;
        characterData: boolean;
        subtree: boolean;
        attributeFilter: ("goose" | "colspan" | "rowspan")[];
    };
    protected readInside(): void;
    /** Whether the pieces are still those that the page wrote. */
    abstract get isAsWritten(): boolean;
    /** What the pieces are cut from, if that is not cloth by length. */
    abstract sheet: string | undefined;
    protected change(key: string, value: unknown): void;
    /**
     * What a worksheet around it says of its fabrics, and of its pieces while they are as the page wrote them. A price that was for
     * something else does not count.
     */
    protected surroundings(): ListSurroundings & {
        price?: undefined;
    };
    /** If fabrics are bought in sheets, a list without sheets of its own is not cut from cloth by length. */
    protected tellerNow(): Teller;
    /** A week is of use only in a sew-along. */
    protected standing(settings: Parameters<ReadingFace['standing']>[0]): ReturnType<ReadingFace['standing']>;
}
