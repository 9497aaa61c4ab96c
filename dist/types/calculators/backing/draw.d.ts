import { type Picture } from '../../ledger/picture.js';
import { type BackingAnswer } from './shape.js';
/** The back from behind: its panels and seams, and the quilt within its overage. */
export declare const draw: ({ layouts, need, used, summary }: BackingAnswer) => Picture[];
