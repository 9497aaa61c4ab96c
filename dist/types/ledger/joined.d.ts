import { type Quantity } from './quantity.js';
/** How far equal strips reach when sewn end to end. All joins together use up `losses`. */
export declare const joined: (strips: number, each: Quantity, losses: Quantity) => Quantity;
