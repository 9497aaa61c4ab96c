import { type Picture } from '../../ledger/picture.js';
import { type TopAnswer } from './shape.js';
/** The top to scale, block by block, with its sashing or its setting triangles. */
export declare const draw: ({ used: { layout }, finished, summary }: TopAnswer) => Picture[];
