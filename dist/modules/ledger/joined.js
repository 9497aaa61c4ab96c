import { count } from './quantity.js';

/** How far so many equal strips reach, sewn end to end; all their joins use up the losses. */
const joined = (strips, each, losses) => strips > 1 ? count(strips).times(each).minus(losses) : each;

export { joined };
