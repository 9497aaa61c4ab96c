import type { Calculator } from '../../calculators/calculator.js';
import { reckon } from '../../calculators/top/reckon.js';
import { topFields, type Blocks, type TopAnswer } from '../../calculators/top/shape.js';
import { blocksOf, top } from '../../calculators/top/top.js';
import { propertiesOf } from '../../face/calculator.js';
import { PlanningFace } from '../../face/planning-face.js';
import { isAsServed } from '../../face/server.js';
import { inEnglish } from '../../words/en/english.js';
import { top as words } from '../../words/en/top.js';

/** The blocks of a top. */
const BLOCKS = ['block', 'across', 'down', 'set'] as const;

/**
 * A quilt top's size from its blocks, with sashing, cornerstones and setting triangles.
 *
 * @tagname quilt-top
 */
export class QuiltTop extends PlanningFace<TopAnswer> {
  static override properties = propertiesOf(topFields);

  /** A block's finished side. A length. Required. */
  declare block: string | number | undefined;
  /** Blocks across, a whole number. Required. */
  declare across: string | number | undefined;
  /** Blocks down, a whole number. Required. */
  declare down: string | number | undefined;
  /** Finished width of the sashing between blocks. A length. Default 0, none. */
  declare sashing: string | number | undefined;
  /** Squares where sashing crosses. Default false. */
  declare cornerstones: boolean;
  /** Sashing round the outside too. Default false. */
  declare frame: boolean;
  /** `straight` or `on-point`. Default `straight`. */
  declare set: 'straight' | 'on-point' | undefined;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  declare mark: string | number | undefined;

  constructor() {
    super();
    this.cornerstones = false;
    this.frame = false;
  }

  /** Its blocks as the attributes say, and as they are now. Undefined if something is wrong. */
  get blocks(): { written: Blocks | undefined; now: Blocks | undefined } {
    const input = this.reckonInput();
    const written = Object.fromEntries(BLOCKS.map((key) => [key, this.written(key) ?? input[key]]));
    const layout = this.answer?.used.layout;
    const now = layout && { count: layout.count, block: layout.block };
    if (BLOCKS.every((key) => written[key] === input[key])) return { written: now, now };
    // Nobody asks for their cloth here, so it is not planned.
    return { written: blocksOf({ ...input, ...written }), now };
  }

  override readonly calculator: Calculator<TopAnswer> = {
    ...top,
    reckon: (input) => (isAsServed(this) ? reckon(input) : this.plans.reckon((plan) => reckon(input, plan))),
  };
  protected override readonly english = inEnglish(words);
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-top': QuiltTop;
  }
}
