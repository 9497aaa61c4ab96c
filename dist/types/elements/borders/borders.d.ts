import { type BordersAnswer } from '../../calculators/borders/shape.js';
import { Face } from '../../face/face.js';
/**
 * Borders round a quilt top: cut lengths, strips, cloth, and the finished size.
 *
 * @tagname quilt-borders
 */
export declare class QuiltBorders extends Face<BordersAnswer> {
    static properties: import("lit").PropertyDeclarations;
    /** Finished widths from the inside out: `2, 4 1/2`. Required unless `target` is given. */
    borders: string | number | undefined;
    /** `sides-first`, `ends-first`, `squares` or `mitred`; one for all, or one per border with commas. Default `sides-first`. */
    corners: string | undefined;
    /** `across` (strips from selvage to selvage) or `along` (unpieced, beside the selvage). Default `across`. */
    grain: 'across' | 'along' | undefined;
    /** The size wanted: `60 x 80`. One more border makes up what is missing. Default none. */
    target: string | undefined;
    /** How strips are joined: `diagonal` (at 45°) or `straight`. Default `diagonal`. */
    join: 'diagonal' | 'straight' | undefined;
    /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
    mark: string | number | undefined;
    readonly calculator: import("../../calculators/calculator.js").Calculator<BordersAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-borders': QuiltBorders;
    }
}
