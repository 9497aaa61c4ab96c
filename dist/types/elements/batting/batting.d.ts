import { type BattingAnswer } from '../../calculators/batting/shape.js';
import { Face } from '../../face/face.js';
/**
 * Batting for a quilt: the package that does, or the length to buy from a roll; and the quilt's size for a bed.
 *
 * @tagname quilt-batting
 */
export declare class QuiltBatting extends Face<BattingAnswer> {
    static properties: import("lit").PropertyDeclarations;
    /** Batting added on each side of the quilt. A length. Default `4 in`, or `10 cm` in metric. */
    overage: string | number | undefined;
    /** The shop's own packages: `small 40 x 50 @ 12.50; large 90 x 100 @ 29`. Default: the usual sizes. */
    packages: string | undefined;
    /** Widths of the rolls to buy from, in place of a package: `96` or `90, 108`. Default none. */
    roll: string | number | undefined;
    /** The bed the quilt is for: `twin`, `queen` …, or its size in centimetres, `140x200`. Default `none`: `width` and `length` are given. */
    bed: 'none' | 'crib' | 'twin' | 'twin-long' | 'full' | 'queen' | 'king' | 'california-king' | '60x120' | '70x140' | '90x190' | '90x200' | '120x200' | '135x190' | '140x200' | '150x200' | '160x200' | '180x200' | '200x200' | undefined;
    /** How far the quilt hangs over the mattress at both sides and the foot. A length. Default `12 in`, or `30 cm` in metric. */
    drop: string | number | undefined;
    /** Length to tuck under the pillows. Default 0. */
    tuck: string | number | undefined;
    readonly calculator: import("../../calculators/calculator.js").Calculator<BattingAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-batting': QuiltBatting;
    }
}
