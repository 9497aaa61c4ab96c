import { type Picture } from '../../ledger/picture.js';
import { type BattingAnswer } from './shape.js';
/** The batting that is needed, on the batting that is bought, with what is left over. */
export declare const draw: (answer: BattingAnswer) => Picture[];
