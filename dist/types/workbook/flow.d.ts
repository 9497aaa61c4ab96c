import type { Calculator } from '../calculators/calculator.js';
import type { Answer } from '../ledger/answer.js';
import type { Input, Reckoning } from '../ledger/ledger.js';
import { Message } from '../measure/message.js';
import { type Fabrics } from './fabrics.js';
import { type PlacedBlock, type TopBlocks } from './places.js';
/** The values that a worksheet gives to a calculator inside it, and where they come from. */
export interface Flow {
    values: Record<string, unknown>;
    from: Record<string, Message>;
}
/** A part that sizes flow through. */
export interface FlowingPart {
    calculator: Calculator;
    /** The letters of its fabrics, as the author wrote them. */
    fabric?: unknown;
    /** The inputs that the author gave it. */
    input: Input;
    /** For a top: its blocks as the author wrote them, and as they are now. Undefined if they are wrong. */
    blocks?: TopBlocks | undefined;
    /** Whether it is a list of what to cut for the blocks. */
    isCutList?: boolean | undefined;
    /** For a block: what the places of the top ask of it. */
    placed?: PlacedBlock | undefined;
}
/** The inputs of the worksheet itself, as the author wrote them. */
export interface FlowSource {
    width?: unknown;
    length?: unknown;
    seam?: unknown;
    units?: unknown;
    shown?: unknown;
    shrinkage?: unknown;
    increment?: unknown;
    currency?: unknown;
}
/** A quilt's size as it flows from one part to the next. */
interface QuiltSize {
    width?: unknown;
    length?: unknown;
}
/** What the blocks of the top mean for the lists of what to cut. */
interface OfTop<P> {
    blocks: TopBlocks;
    placed: PlacedBlock[];
    /** The blocks that lie in its places, and how many there are of each. Undefined if nobody can read that. */
    counted: {
        part: P;
        count: number | undefined;
    }[];
    /** Says what the list lacks, and which lists that is about. */
    caution: Message | undefined;
    outgrown: P[];
    /** Says that there are fewer or more blocks than places. */
    uneven: Message | undefined;
}
/** What flowed, and what the reader should know about it. */
interface Flowed<P> extends Partial<Pick<OfTop<P>, 'caution' | 'uneven'>> {
    size: QuiltSize;
    /** The lists that are for other blocks than the top has now. */
    outgrown: P[];
    counted: OfTop<P>['counted'];
}
/**
 * Lets sizes and settings flow through the parts, in one pass: nothing flows back. `give` gives a part its values, and returns what
 * the part makes of them.
 */
export declare const flow: <P extends FlowingPart>(source: FlowSource, parts: P[], fabrics: Fabrics, give: (part: P, flow: Flow) => Reckoning<Answer>) => Flowed<P>;
/** Whether two values that flow are equal, at any depth: exact numbers and messages too. */
export declare const isSame: (a: unknown, b: unknown) => boolean;
export {};
