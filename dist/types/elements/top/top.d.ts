import { type TopResult } from '../../reckon/top.js';
import { PlanningSheet } from '../../sheet/background-sheet.js';
import { type Calculator } from '../../sheet/calculator.js';
/**
 * A quilt top's size from its blocks, with sashing, cornerstones and setting triangles.
 *
 * @tagname quilt-top
 */
export declare class QuiltTop extends PlanningSheet<TopResult> {
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
    /** Its blocks as its attributes have them, and as they are now: `20 blocks of 12 in`. Empty where something is wrong. */
    get blocks(): {
        written: string;
        now: string;
    };
    readonly calculator: Calculator<TopResult>;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-top': QuiltTop;
    }
}
