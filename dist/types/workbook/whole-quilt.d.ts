import type { Chart } from '../calculators/block/patch.js';
import type { BordersAnswer } from '../calculators/borders/shape.js';
import type { BindingAnswer } from '../calculators/binding/shape.js';
import type { TopAnswer } from '../calculators/top/shape.js';
import { type Picture } from '../ledger/picture.js';
/** A part of the quilt with the letters of its fabrics, as its author wrote them. */
interface Lettered<A> {
    answer: A;
    letters: string[];
}
/** A kind of block in the places of the top. */
export interface BlockKind {
    name: string;
    count: number;
    /** Undefined while something in it is wrong, or is still being planned. */
    chart: Chart | undefined;
}
/** What there is of a quilt. */
export interface QuiltParts {
    top?: Lettered<TopAnswer> | undefined;
    /** In the order in which they begin. */
    blocks?: BlockKind[];
    borders?: Lettered<BordersAnswer> | undefined;
    binding?: Lettered<BindingAnswer> | undefined;
}
/**
 * The whole quilt to scale, from its blocks to its binding: every piece of cloth once, as large as it finishes. Where a part is
 * missing, it has what there is. The binding lies outside the finished size, where it covers the raw edge.
 */
export declare const wholeQuilt: (parts: QuiltParts) => Picture | undefined;
export {};
