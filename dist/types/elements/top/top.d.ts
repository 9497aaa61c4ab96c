import type { Calculator } from '../../calculators/calculator.js';
import { type Blocks, type TopAnswer } from '../../calculators/top/shape.js';
import type { Fold } from '../../face/face.js';
import { PlanningFace } from '../../face/planning-face.js';
/**
 * A quilt top's size from its blocks, with sashing, cornerstones and setting triangles.
 *
 * @tagname quilt-top
 */
export declare class QuiltTop extends PlanningFace<TopAnswer> {
    #private;
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
    /** The bed the quilt is for: `twin`, `queen` …, or its size in centimetres, `140x200`. The sheet then shows the numbers of blocks that come closest to it. Default `none`. */
    bed: 'none' | 'crib' | 'twin' | 'twin-long' | 'full' | 'queen' | 'king' | 'california-king' | '60x120' | '70x140' | '90x190' | '90x200' | '120x200' | '135x190' | '140x200' | '150x200' | '160x200' | '180x200' | '200x200' | undefined;
    /** How far the quilt hangs over the mattress at both sides and the foot. A length. Default `12 in`, or `30 cm` in metric. */
    drop: string | number | undefined;
    /** Length to tuck under the pillows. Default 0. */
    tuck: string | number | undefined;
    /** The size that is wanted, in place of a bed: `60 x 80`. Default none. */
    target: string | undefined;
    /** All borders together, on one side: they are part of the wanted size. A length. Default 0. */
    border: string | number | undefined;
    constructor();
    /** Its blocks as the attributes say, and as they are now. Undefined if something is wrong. */
    get blocks(): {
        written: Blocks | undefined;
        now: Blocks | undefined;
    };
    protected ownFolds(): Fold[];
    readonly calculator: Calculator<TopAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-top': QuiltTop;
    }
}
