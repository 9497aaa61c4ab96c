import { type Picture } from '../../ledger/picture.js';
import { type BordersAnswer } from './shape.js';
/** The borders round the top, from the inside out. Each piece has its cut length. */
export declare const draw: ({ borders, finished, summary }: BordersAnswer) => Picture[];
