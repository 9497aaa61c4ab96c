import { batting } from '../../calculators/batting/batting.js';
import { battingFields, type BattingAnswer } from '../../calculators/batting/shape.js';
import { propertiesOf } from '../../face/calculator.js';
import { Face } from '../../face/face.js';
import { batting as words } from '../../words/en/batting.js';
import { inEnglish } from '../../words/en/english.js';

/**
 * Batting for a quilt: the package that does, or the length to buy from a roll; and the quilt's size for a bed.
 *
 * @tagname quilt-batting
 */
export class QuiltBatting extends Face<BattingAnswer> {
  static override properties = propertiesOf(battingFields);

  /** Batting added on each side of the quilt. A length. Default `4 in`, or `10 cm` in metric. */
  declare overage: string | number | undefined;
  /** The shop's own packages: `small 40 x 50 @ 12.50; large 90 x 100 @ 29`. Default: the usual sizes. */
  declare packages: string | undefined;
  /** Widths of the rolls to buy from, in place of a package: `96` or `90, 108`. Default none. */
  declare roll: string | number | undefined;
  /** The bed the quilt is for: `twin`, `queen` …, or its size in centimetres, `140x200`. Default `none`: `width` and `length` are given. */
  declare bed:
    | 'none'
    | 'crib'
    | 'twin'
    | 'twin-long'
    | 'full'
    | 'queen'
    | 'king'
    | 'california-king'
    | '60x120'
    | '70x140'
    | '90x190'
    | '90x200'
    | '120x200'
    | '135x190'
    | '140x200'
    | '150x200'
    | '160x200'
    | '180x200'
    | '200x200'
    | undefined;
  /** How far the quilt hangs over the mattress at both sides and the foot. A length. Default `12 in`, or `30 cm` in metric. */
  declare drop: string | number | undefined;
  /** Length to tuck under the pillows. Default 0. */
  declare tuck: string | number | undefined;

  override readonly calculator = batting;
  protected override readonly english = inEnglish(words);
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-batting': QuiltBatting;
  }
}
