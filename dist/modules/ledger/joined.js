import { count } from './quantity.js';

/** How far equal strips reach when sewn end to end. All joins together use up `losses`. */
const joined = (strips, each, losses) => strips > 1 ? count(strips).times(each).minus(losses) : each;

export { joined };
