import type { Calculator } from '../calculators/calculator.js';
import type { Answer } from '../ledger/answer.js';
import type { Style } from '../measure/format.js';
import type { Message } from '../measure/message.js';
/** That the shop has less than this takes, and what would do; nothing where it has enough. */
export declare const overStock: <A extends Answer>(stock: unknown, answer: A, calculator: Calculator<A>, style: Style) => Message | undefined;
