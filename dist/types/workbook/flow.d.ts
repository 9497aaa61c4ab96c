import type { Calculator } from '../calculators/calculator.js';
import type { Blocks } from '../calculators/top/shape.js';
import type { Answer } from '../ledger/answer.js';
import type { Input, Reckoning } from '../ledger/ledger.js';
import { Message } from '../measure/message.js';
import { type Fabrics } from './fabrics.js';
/** Values a worksheet gives the calculators inside it, and where the sizes and the cloth’s width come from. */
export interface Flow {
    values: Record<string, unknown>;
    from: Record<string, Message>;
}
/** A part that sizes flow through. */
export interface FlowingPart {
    calculator: Calculator;
    /** The letters of its fabrics, as they are written on it. */
    fabric?: unknown;
    /** What is written on it. */
    input: Input;
    /** Of a top: its blocks as its author wrote them and as they are now; undefined where they cannot be reckoned. */
    blocks?: {
        written: Blocks | undefined;
        now: Blocks | undefined;
    } | undefined;
    /** Whether it is a list of what to cut for the blocks. */
    isCutList?: boolean | undefined;
}
/** What the worksheet itself says, as it is written there. */
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
 * Lets sizes and settings flow once through the parts. One pass: nothing flows back. `give` hands a part what flows to it, and
 * gives back what it has reckoned of that.
 */
export declare const flow: <P extends FlowingPart>(source: FlowSource, parts: P[], fabrics: Fabrics, give: (part: P, flow: Flow) => Reckoning<Answer>) => {
    size: QuiltSize;
    caution: Message | undefined;
};
/** Whether two values that flow are the same, however deep: exact numbers and messages too. */
export declare const isSame: (a: unknown, b: unknown) => boolean;
export {};
