import type { Calculator } from '../../calculators/calculator.js';
import { reckon } from '../../calculators/top/reckon.js';
import type { BlockChoice } from '../../calculators/top/choices.js';
import { say, topFields, type Blocks, type TopAnswer } from '../../calculators/top/shape.js';
import { blocksOf, top } from '../../calculators/top/top.js';
import { propertiesOf } from '../../face/calculator.js';
import type { Fold } from '../../face/face.js';
import { PlanningFace } from '../../face/planning-face.js';
import { isAsServed } from '../../face/server.js';
import { inEnglish } from '../../words/en/english.js';
import { top as words } from '../../words/en/top.js';
import { choiceList } from './choices.js';

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

  /** The bed the quilt is for: `twin`, `queen` …, or its size in centimetres, `140x200`. The sheet then shows the numbers of blocks that come closest to it. Default `none`. */
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
  /** The size that is wanted, in place of a bed: `60 x 80`. Default none. */
  declare target: string | undefined;
  /** All borders together, on one side: they are part of the wanted size. A length. Default 0. */
  declare border: string | number | undefined;

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

  /** The numbers of blocks for the wanted size; also before anybody has said how many there are. */
  get #choices(): BlockChoice[] | undefined {
    const { answer } = this;
    if (answer) return answer.choices;
    return reckon({ ...this.reckonInput(), across: 1, down: 1 }, () => 0).own?.choices;
  }

  protected override ownFolds(): Fold[] {
    const choices = this.#choices;
    if (!choices) return [];
    const off = this.off || this.locks('across') || this.locks('down');
    const list = choiceList(choices, { t: this.teller, take: this.#takeBlocks, off });
    return [{ caption: say('blocksForSize'), shown: [list], isOpen: !this.good }];
  }

  /** Takes as many blocks, as if the reader had typed them. */
  #takeBlocks = ({ across, down }: BlockChoice): void => {
    // The list stays open, and the focus on its button.
    this.setOpen(say('blocksForSize').code, true);
    this.change('across', `${across}`);
    this.change('down', `${down}`);
    this.tellBoth();
  };

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
