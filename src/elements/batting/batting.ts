import { drawBatting } from '../../drawing/batting.js';
import { lengthOf, sizeOf } from '../../drawing/picture.js';
import { exact, type Exact } from '../../measure/exact.js';
import type { Style } from '../../measure/format.js';
import { battingFields, reckonBatting, type BattingResult } from '../../reckon/batting.js';
import { propertiesOf, type Calculator, type Listing } from '../../face/calculator.js';
import { QuiltSheet } from '../../face/sheet.js';

const bySize = <T>(things: T[], size: (thing: T) => Exact): T[] =>
  [...things].sort((a, b) => size(a).compare(size(b)));

const offers = ({ packages, rolls }: BattingResult, style: Style): Listing[] => [
  {
    caption: 'Packages',
    head: ['Package', 'Size', 'Does it do?'],
    rows: bySize(packages, ({ width, length }) => exact(width).mul(exact(length))).map((pack) => [
      pack.name,
      sizeOf(pack, style),
      `${pack.fits ? 'yes' : 'too small'}${pack.priceText ? `, ${pack.priceText}` : ''}`,
    ]),
  },
  {
    caption: 'From the roll',
    head: ['Roll', 'Lengths', 'Buy'],
    rows: bySize(rolls, ({ width }) => exact(width)).map(({ width, lengths, length, buy }) => [
      lengthOf(width, style),
      `${lengths > 1 ? `${lengths}, butted, each ` : ''}${lengthOf(length, style)}`,
      buy.text,
    ]),
  },
];

/**
 * Batting for a quilt: the package that does, or the length to buy from a roll; and the quilt's size for a bed.
 *
 * @tagname quilt-batting
 */
export class QuiltBatting extends QuiltSheet<BattingResult> {
  static override properties = propertiesOf(battingFields);

  /** Batting added on each side of the quilt. A length. Default `4 in`. */
  declare overage: string | number | undefined;
  /** The shop's own packages: `small 40 x 50 @ 12.50; large 90 x 100 @ 29`. Default: the usual sizes. */
  declare packages: string | undefined;
  /** Widths of the rolls to buy from, in place of a package: `96` or `90, 108`. Default none. */
  declare roll: string | number | undefined;
  /** The bed the quilt is for: `twin`, `queen` … Default `none`: `width` and `length` are given. */
  declare bed:
    'none' | 'crib' | 'twin' | 'twin-long' | 'full' | 'queen' | 'king' | 'california-king' | undefined;
  /** How far the quilt hangs over the mattress at both sides and the foot. A length. Default `12 in`. */
  declare drop: string | number | undefined;
  /** Length to tuck under the pillows. Default 0. */
  declare tuck: string | number | undefined;

  override readonly calculator: Calculator<BattingResult> = {
    title: 'Batting',
    fields: battingFields,
    reckon: reckonBatting,
    draw: (result, style) => [drawBatting(result, style)],
    listings: offers,
    own: ['shrinkage'],
    byPiece: () => true,
    takes: ({ fabric: need, cuts, buy, cost }, [fabric = '']) => [
      { fabric, need, cuts, item: buy.text, cost: cost?.amount },
    ],
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-batting': QuiltBatting;
  }
}
