import type { Style } from '../measure/format.js';
import type { Answer } from '../reckon/answer.js';
import type { Calculator } from './calculator.js';
/** That the shop has less than this takes, and what would do; nothing where it has enough. */
export declare const overStock: <R extends Answer>(stock: unknown, result: R, calculator: Calculator<R>, style: Style) => string | undefined;
