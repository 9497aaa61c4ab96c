import { type Picture } from '../../ledger/picture.js';
import { type PartKind, type TopAnswer, type TopPart } from './shape.js';
/** The letters of the pieces beside the blocks. */
type Fabrics = Partial<Record<PartKind, string | undefined>>;
/** The letter of each kind of piece that a top has, by the order of its kinds. */
export declare const fabricsOf: (parts: TopPart[], letters: string[] | undefined) => Fabrics;
/** The top to scale, block by block, with its sashing or its setting triangles. */
export declare const draw: ({ used: { layout }, parts, finished, summary }: TopAnswer, letters?: string[]) => Picture[];
export {};
