import { count, type Quantity } from './quantity.js';

/** How far equal strips reach when sewn end to end. All joins together use up `losses`. */
export const joined = (strips: number, each: Quantity, losses: Quantity): Quantity =>
  strips > 1 ? count(strips).times(each).minus(losses) : each;
