import { type Exact } from '../../measure/exact.js';
import type { ListedPiece } from '../cutting/cut-list.js';
import type { Chart } from './patch.js';
import { type Seams } from './pieces.js';
export interface StripSetSayings {
    /** A strip that is sewn to others and cut across into rows of the block. */
    rowStrip: undefined;
}
/**
 * The strips to cut for so many blocks, as long as the cloth is wide: a set of strips for each kind of row, sewn together and cut
 * across into rows. Undefined if a row is not made of equal patches, or is longer than the cloth is wide.
 */
export declare const stripsFor: (chart: Chart, block: Exact, blocks: number, { seam, mark }: Seams, cloth: Exact) => ListedPiece[] | undefined;
