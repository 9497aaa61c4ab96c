import { type Picture } from '../../ledger/picture.js';
import { type BindingAnswer } from './shape.js';
/** Strips across the cloth with their joins, or a square for bias. */
export declare const draw: (answer: BindingAnswer) => Picture[];
