import { type BackingAnswer } from '../../calculators/backing/shape.js';
import { Face } from '../../face/face.js';
/**
 * Cloth for a quilt's back: panels, seams, every layout that is possible, and what to buy.
 *
 * @tagname quilt-backing
 */
export declare class QuiltBacking extends Face<BackingAnswer> {
    static properties: import("lit").PropertyDeclarations;
    /** Cloth added on each side of the quilt. A length. Default `4 in`, or `10 cm` in metric. */
    overage: string | number | undefined;
    /** The print's repeat along the cloth, if panels have to match. A length. Default 0, nothing to match. */
    repeat: string | number | undefined;
    /** The print has a right way up, so panels may not be turned. Default false. */
    oneWay: boolean;
    /** A pieced strip may take the place of the last panel: less cloth, more seams. Default false. */
    piecedStrip: boolean;
    readonly calculator: import("../../calculators/calculator.js").Calculator<BackingAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
    constructor();
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-backing': QuiltBacking;
    }
}
