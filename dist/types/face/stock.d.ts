import type { Calculator } from '../calculators/calculator.js';
import type { Answer } from '../ledger/answer.js';
import type { Style } from '../measure/format.js';
import type { Message } from '../measure/message.js';
/** Says that the stock is too small, and what would do. Undefined if there is enough. */
export declare const overStock: <A extends Answer>(stock: unknown, answer: A, calculator: Calculator<A>, style: Style) => Message | undefined;
