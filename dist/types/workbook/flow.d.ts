import type { Calculator } from '../calculators/calculator.js';
import type { Blocks } from '../calculators/top/shape.js';
import type { Answer } from '../ledger/answer.js';
import type { Input, Reckoning } from '../ledger/ledger.js';
import { Message } from '../measure/message.js';
import { type Fabrics } from './fabrics.js';
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
    blocks?: {
        written: Blocks | undefined;
        now: Blocks | undefined;
    } | undefined;
    /** Whether it is a list of what to cut for the blocks. */
    isCutList?: boolean | undefined;
    /** Whether its blocks are always as large as those of the top. */
    followsBlock?: boolean | undefined;
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
/**
 * Lets sizes and settings flow through the parts, in one pass: nothing flows back. `give` gives a part its values, and returns what
 * the part makes of them.
 */
export declare const flow: <P extends FlowingPart>(source: FlowSource, parts: P[], fabrics: Fabrics, give: (part: P, flow: Flow) => Reckoning<Answer>) => {
    size: QuiltSize;
    caution: Message | undefined;
};
/** Whether two values that flow are equal, at any depth: exact numbers and messages too. */
export declare const isSame: (a: unknown, b: unknown) => boolean;
export {};
