import type { Calculator } from '../../calculators/calculator.js';
import { type Blocks, type TopAnswer } from '../../calculators/top/shape.js';
import { PlanningFace } from '../../face/planning-face.js';
/**
 * A quilt top's size from its blocks, with sashing, cornerstones and setting triangles.
 *
 * @tagname quilt-top
 */
export declare class QuiltTop extends PlanningFace<TopAnswer> {
    static properties: import("lit").PropertyDeclarations;
    /** A block's finished side. A length. Required. */
    block: string | number | undefined;
    /** Blocks across, a whole number. Required. */
    across: string | number | undefined;
    /** Blocks down, a whole number. Required. */
    down: string | number | undefined;
    /** Finished width of the sashing between blocks. A length. Default 0, none. */
    sashing: string | number | undefined;
    /** Squares where sashing crosses. Default false. */
    cornerstones: boolean;
    /** Sashing round the outside too. Default false. */
    frame: boolean;
    /** `straight` or `on-point`. Default `straight`. */
    set: 'straight' | 'on-point' | undefined;
    /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
    mark: string | number | undefined;
    constructor();
    /** Its blocks as the attributes say, and as they are now. Undefined if something is wrong. */
    get blocks(): {
        written: Blocks | undefined;
        now: Blocks | undefined;
    };
    readonly calculator: Calculator<TopAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-top': QuiltTop;
    }
}
