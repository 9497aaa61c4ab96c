import type { Message } from '../measure/message.js';
import type { Teller } from './teller.js';
/** Says what the page says, and what only a spreadsheet file does. */
export declare const saying: (t: Teller) => ({ code, values }: Message) => string;
