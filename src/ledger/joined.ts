import { count, type Quantity } from './quantity.js';

/** How far so many equal strips reach, sewn end to end; all their joins use up the losses. */
export const joined = (strips: number, each: Quantity, losses: Quantity): Quantity =>
  strips > 1 ? count(strips).times(each).minus(losses) : each;
