import { backing } from '../../calculators/backing/backing.js';
import { backingFields, type BackingAnswer } from '../../calculators/backing/shape.js';
import { propertiesOf } from '../../face/calculator.js';
import { Face } from '../../face/face.js';
import { inEnglish } from '../../words/en/english.js';
import { backing as words } from '../../words/en/backing.js';

/**
 * Cloth for a quilt's back: panels, seams, every layout that is possible, and what to buy.
 *
 * @tagname quilt-backing
 */
export class QuiltBacking extends Face<BackingAnswer> {
  static override properties = propertiesOf(backingFields);

  /** Cloth added on each side of the quilt. A length. Default `4 in`, or `10 cm` in metric. */
  declare overage: string | number | undefined;
  /** The print's repeat along the cloth, if panels have to match. A length. Default 0, nothing to match. */
  declare repeat: string | number | undefined;
  /** The print has a right way up, so panels may not be turned. Default false. */
  declare oneWay: boolean;
  /** A pieced strip may take the place of the last panel: less cloth, more seams. Default false. */
  declare piecedStrip: boolean;

  override readonly calculator = backing;
  protected override readonly english = inEnglish(words);

  constructor() {
    super();
    this.oneWay = false;
    this.piecedStrip = false;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-backing': QuiltBacking;
  }
}
