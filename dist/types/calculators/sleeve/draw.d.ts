import type { Picture } from '../../ledger/picture.js';
import { type SleeveAnswer } from './shape.js';
/** The quilt's top edge from behind, with the sleeve along it. */
export declare const draw: ({ finished, used, summary }: SleeveAnswer) => Picture[];
