import { plural } from '../../reckon/shared.js';
import { drawTop } from '../../drawing/top.js';
import { lengthOf, sizeOf } from '../../drawing/picture.js';
import { rowIn, type Refused } from '../../reckon/answer.js';
import { reckonTop, topFields, type TopResult } from '../../reckon/top.js';
import { PlanningSheet } from '../../face/background-sheet.js';
import { propertiesOf, type Calculator } from '../../face/calculator.js';
import { isAsServed } from '../../face/server.js';
import { stripList } from '../cutting/strips.js';

/** What the blocks of a top are. */
const BLOCKS = ['block', 'across', 'down', 'set'] as const;

const inWords = (result: TopResult | Refused): string =>
  result.errors ? '' : `${plural(result.blocks, 'block')} of ${rowIn(result, 'block')!.value}`;

/**
 * A quilt top's size from its blocks, with sashing, cornerstones and setting triangles.
 *
 * @tagname quilt-top
 */
export class QuiltTop extends PlanningSheet<TopResult> {
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

  /** Its blocks as its attributes have them, and as they are now: `20 blocks of 12 in`. Empty where something is wrong. */
  get blocks(): { written: string; now: string } {
    const input = this.reckonInput();
    const written = Object.fromEntries(BLOCKS.map((key) => [key, this.written(key) ?? input[key]]));
    const now = inWords(this.result);
    if (BLOCKS.every((key) => written[key] === input[key])) return { written: now, now };
    // What they take of cloth is not asked.
    return { written: inWords(reckonTop({ ...input, ...written }, () => 0)), now };
  }

  override readonly calculator: Calculator<TopResult> = {
    title: 'Quilt top',
    fields: topFields,
    reckon: (input) =>
      isAsServed(this) ? reckonTop(input) : this.plans.reckon((plan) => reckonTop(input, plan)),
    finishes: 'quilt top',
    headline: ({ finished }, style) => ['Finished', sizeOf(finished, style)],
    draw: (result, style) => [drawTop(result, style)],
    takes: ({ parts }, letters) =>
      parts.map(({ part, fabric, cloth, cuts }, at) => ({
        ...cloth,
        title: part.replace(/^./, (first) => first.toUpperCase()),
        fabric: letters[at] ?? letters.at(-1) ?? '',
        need: fabric,
        cuts,
      })),
    listings: ({ parts, strips }, style) => {
      const own = parts.map(({ part, strips }) => ({ fabric: part, strips }));
      const cloth = {
        caption: 'Cloth, each from its own',
        head: ['Part', 'Cloth', 'Buy'],
        rows: parts.map(({ part, fabric, buy }) => [part, lengthOf(fabric, style), buy.text]),
      };
      const apart = [cloth, { ...stripList(own, style, 'Part'), caption: 'Strips, each from its own cloth' }];
      const all = [{ fabric: 'all', strips }];
      const together = [{ ...stripList(all, style, 'Part'), caption: 'Strips, all from one cloth' }];
      // Who names one fabric, or several, has decided.
      const named = this.flow?.values['letters'] as string[] | undefined;
      const letters = (named ?? this.fabric?.match(/[^\s,]+/g))?.length ?? 0;
      return parts.length < 2
        ? parts.map((part) => stripList([{ ...part, fabric: part.part }], style, 'Part'))
        : [letters < 2 ? together : [], letters === 1 ? [] : apart].flat();
    },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-top': QuiltTop;
  }
}
