import { borders } from '../../calculators/borders/borders.js';
import { bordersFields, type BordersAnswer } from '../../calculators/borders/shape.js';
import { propertiesOf } from '../../face/calculator.js';
import { Face } from '../../face/face.js';
import { borders as words } from '../../words/en/borders.js';
import { inEnglish } from '../../words/en/english.js';

/**
 * Borders round a quilt top: cut lengths, strips, cloth, and the finished size.
 *
 * @tagname quilt-borders
 */
export class QuiltBorders extends Face<BordersAnswer> {
  static override properties = propertiesOf(bordersFields);

  /** Finished widths from the inside out: `2, 4 1/2`. Required unless `target` is given. */
  declare borders: string | number | undefined;
  /** `sides-first`, `ends-first`, `squares` or `mitred`; one for all, or one per border with commas. Default `sides-first`. */
  declare corners: string | undefined;
  /** `across` (strips from selvage to selvage) or `along` (unpieced, beside the selvage). Default `across`. */
  declare grain: 'across' | 'along' | undefined;
  /** The size wanted: `60 x 80`. One more border makes up what is missing. Default none. */
  declare target: string | undefined;
  /** How strips are joined: `diagonal` (at 45°) or `straight`. Default `diagonal`. */
  declare join: 'diagonal' | 'straight' | undefined;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  declare mark: string | number | undefined;

  override readonly calculator = borders;
  protected override readonly english = inEnglish(words);
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-borders': QuiltBorders;
  }
}
