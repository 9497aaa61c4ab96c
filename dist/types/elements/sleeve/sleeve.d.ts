import { type SleeveAnswer } from '../../calculators/sleeve/shape.js';
import { Face } from '../../face/face.js';
/**
 * The sleeve that a quilt hangs by: its strip, its joins and its cloth. In a worksheet it is cut from what other parts leave, if it
 * fits there, and so is a label.
 *
 * @tagname quilt-sleeve
 */
export declare class QuiltSleeve extends Face<SleeveAnswer> {
    static properties: import("lit").PropertyDeclarations;
    /** What the strip is cut to. A length. Default `8 1/2 in`, or `22 cm` in metric. */
    stripWidth: string | number | undefined;
    /** How far the sleeve ends short of each side of the quilt. A length. Default `1 in`, or `2.5 cm` in metric. */
    short: string | number | undefined;
    /** Each of the two turns of a hem. A length. Default `1/2 in`, or `1.5 cm` in metric. */
    hem: string | number | undefined;
    /**
     * A label for the back: its finished size, like `4 x 6`. For a label of another fabric, write both letters: `fabric="A B"`, the
     * sleeve’s first. Default none.
     */
    label: string | undefined;
    readonly calculator: import("../../calculators/calculator.js").Calculator<SleeveAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-sleeve': QuiltSleeve;
    }
}
