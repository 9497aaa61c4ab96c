import { type Picture } from '../../ledger/picture.js';
import { type BordersAnswer } from './shape.js';
/** The borders round the top, from the inside out, each piece with the length it is cut to. */
export declare const draw: ({ borders, finished, summary }: BordersAnswer) => Picture[];
