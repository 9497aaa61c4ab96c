import type { Face } from '../../face/face.js';
import type { QuiltParts } from '../../workbook/whole-quilt.js';
import type { QuiltBlock } from '../block/block.js';
/** A block in the places of the top, and how many there are. Undefined if nobody can read that. */
export interface CountedBlock {
    part: QuiltBlock;
    count: number | undefined;
}
/** What there is of the quilt on a worksheet: the first part of each kind that has an answer. */
export declare const quiltOf: (parts: Face[], blocks: CountedBlock[]) => QuiltParts;
