import type { Answer } from '../ledger/answer.js';
import type { ListSurroundings } from '../calculators/cutting/plan-shape.js';
import { ReadingFace } from './planning-face.js';
import { type Table } from './table.js';
/** A face whose pieces are in the table that its author wrote inside it, or in the cells of the page. */
export declare abstract class ListFace<A extends Answer = Answer> extends ReadingFace<A> {
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
    /** What a worksheet around it says of its fabrics, and of its pieces while they are as the page wrote them. */
    protected surroundings(): ListSurroundings;
}
