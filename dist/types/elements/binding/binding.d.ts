import { type BindingAnswer } from '../../calculators/binding/shape.js';
import { Face } from '../../face/face.js';
/**
 * Strips and cloth for a quilt's binding: double-fold or single-fold, cut straight or on the bias.
 *
 * @tagname quilt-binding
 */
export declare class QuiltBinding extends Face<BindingAnswer> {
    static properties: import("lit").PropertyDeclarations;
    /** The distance round a curved or scalloped edge, as you measured it. A length. Default: from the sides. */
    perimeter: string | number | undefined;
    /** Added for the mitred corners and the closing tails. A length. Default `10 in`, or `25 cm` in metric. */
    allowance: string | number | undefined;
    /** What the strips are cut to. A length. Default `2 1/2 in` (`6.5 cm` in metric), or reckoned from `finished`. */
    stripWidth: string | number | undefined;
    /** The width that shows on the front. A length; used if there is no `strip-width`. Default none. */
    finished: string | number | undefined;
    /** How thick the quilt is, for a strip reckoned from `finished`. A length. Default `1/8 in`, or `3 mm` in metric. */
    thickness: string | number | undefined;
    /** `double` or `single`. Default `double`. */
    fold: 'double' | 'single' | undefined;
    /** `straight` (across the cloth) or `bias`. Default `straight`. */
    cut: 'straight' | 'bias' | undefined;
    /** How strips are joined: `diagonal` (at 45°) or `straight`. Default `diagonal`. */
    join: 'diagonal' | 'straight' | undefined;
    /** The marks of the ruler, which cut sizes fall on: `1/8 in`, `1/16 in`, `1 mm`. Default `1/8 in`, or `1 mm` in metric. */
    mark: string | number | undefined;
    readonly calculator: import("../../calculators/calculator.js").Calculator<BindingAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-binding': QuiltBinding;
    }
}
