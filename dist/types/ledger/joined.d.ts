import { type Quantity } from './quantity.js';
/** How far so many equal strips reach, sewn end to end; all their joins use up the losses. */
export declare const joined: (strips: number, each: Quantity, losses: Quantity) => Quantity;
