import { drawBacking } from '../../drawing/backing.js';
import type { Style } from '../../measure/format.js';
import {
  backingFields,
  reckonBacking,
  type BackingLayout,
  type BackingResult,
} from '../../reckon/backing.js';
import { lengthOf } from '../../drawing/picture.js';
import { propertiesOf, type Calculator, type Listing } from '../../face/calculator.js';
import { QuiltSheet } from '../../face/sheet.js';

const words = ({ panels, strip, seams, direction }: BackingLayout): string =>
  `${panels} ${panels > 1 ? 'panels' : 'panel'}${strip ? ` and a strip pieced from ${strip.count}` : ''}, ${seams === 0 ? 'cloth' : 'seams'} ${direction === 'lengthwise' ? 'along the length' : 'across'}`;

const layouts = ({ layouts }: BackingResult, style: Style): Listing => ({
  caption: 'Ways to lay it out',
  head: ['Panels', 'Seams', 'Cloth', 'Buy'],
  rows: layouts.map((layout) => [
    words(layout),
    `${layout.seams}`,
    lengthOf(layout.fabric, style),
    layout.buy.text,
  ]),
});

/**
 * Cloth for a quilt's back: panels, seams, every layout that is possible, and what to buy.
 *
 * @tagname quilt-backing
 */
export class QuiltBacking extends QuiltSheet<BackingResult> {
  static override properties = propertiesOf(backingFields);

  /** Cloth added on each side of the quilt. A length. Default `4 in`. */
  declare overage: string | number | undefined;
  /** The print's repeat along the cloth, where panels have to match. A length. Default 0, nothing to match. */
  declare repeat: string | number | undefined;
  /** The print has a right way up, so panels may not be turned. Default false. */
  declare oneWay: boolean;
  /** A pieced strip may make up the missing width, for less cloth and more seams. Default false. */
  declare piecedStrip: boolean;

  constructor() {
    super();
    this.oneWay = false;
    this.piecedStrip = false;
  }

  override readonly calculator: Calculator<BackingResult> = {
    title: 'Backing',
    fields: backingFields,
    reckon: reckonBacking,
    own: ['seam'],
    draw: (result, style) => [drawBacking(result, style)],
    listings: (result, style) => [layouts(result, style)],
    instead: ({ layouts }) =>
      layouts.filter(({ strip }) => strip).map(({ buy }) => ({ words: 'A pieced strip', buy })),
    takes: ({ fabric, cuts }, [letter = '']) => [{ fabric: letter, need: fabric, cuts, pieces: [] }],
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-backing': QuiltBacking;
  }
}
