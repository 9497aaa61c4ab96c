import type { CalculatorName } from '../calculators/calculator.js';
import type { Blocks } from '../calculators/top/shape.js';
import type { Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
/** A fabric of another width: a length, or a text that cannot be read. */
export interface FromFabric {
    letter: string;
    width: Exact | string;
}
/** What a part in a worksheet can say about a value that flows to it. */
export interface FlowSayings {
    fromWorksheet: undefined;
    fromFabric: {
        letter: string;
    };
    fromPart: {
        part: CalculatorName;
    };
    fromSeveral: {
        first: Message;
        others: FromFabric[];
    };
    noClothForBlocks: undefined;
    listForOtherBlocks: {
        now: Blocks;
        written: Blocks;
    };
}
export declare const sayOfFlow: <Code extends "fromWorksheet" | "fromFabric" | "fromPart" | "fromSeveral" | "noClothForBlocks" | "listForOtherBlocks">(code: Code, ...[values]: FlowSayings[Code] extends undefined ? [] : [values: FlowSayings[Code]]) => Message<Code>;
