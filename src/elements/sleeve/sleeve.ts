import { sleeveFields, type SleeveAnswer } from '../../calculators/sleeve/shape.js';
import { sleeve } from '../../calculators/sleeve/sleeve.js';
import { propertiesOf } from '../../face/calculator.js';
import { Face } from '../../face/face.js';
import { inEnglish } from '../../words/en/english.js';
import { sleeve as words } from '../../words/en/sleeve.js';

/**
 * The sleeve that a quilt hangs by: its strip, its joins and its cloth. In a worksheet it is cut from what other parts leave, if it
 * fits there, and so is a label.
 *
 * @tagname quilt-sleeve
 */
export class QuiltSleeve extends Face<SleeveAnswer> {
  static override properties = propertiesOf(sleeveFields);

  /** What the strip is cut to. A length. Default `8 1/2 in`, or `22 cm` in metric. */
  declare stripWidth: string | number | undefined;
  /** How far the sleeve ends short of each side of the quilt. A length. Default `1 in`, or `2.5 cm` in metric. */
  declare short: string | number | undefined;
  /** Each of the two turns of a hem. A length. Default `1/2 in`, or `1.5 cm` in metric. */
  declare hem: string | number | undefined;

  /**
   * A label for the back: its finished size, like `4 x 6`. For a label of another fabric, write both letters: `fabric="A B"`, the
   * sleeve’s first. Default none.
   */
  declare label: string | undefined;

  override readonly calculator = sleeve;
  protected override readonly english = inEnglish(words);
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-sleeve': QuiltSleeve;
  }
}
