import { fewest, reachOf } from '../planner/joins.js';
import { upTo, type Exact } from '../measure/exact.js';
import type { Purchase } from '../measure/shop.js';
import { BACKING_SEAM } from '../trade/conventions.js';
import type { Answer, Input, Refused } from './answer.js';
import { Book } from './book.js';
import { flagField, lengthField } from './fields.js';
import {
  clothFields,
  MOST_JOINED,
  NEED_ROWS,
  overageField,
  quiltFields,
  shopFields,
  facing,
  withOverage,
  type Size,
} from './shared.js';

export const backingFields = {
  ...quiltFields,
  overage: overageField,
  ...clothFields,
  seam: lengthField('Seam joining panels', { initial: BACKING_SEAM, zero: true, most: '4 in' }),
  repeat: lengthField('Pattern repeat', {
    initial: '0',
    zero: true,
    most: '60 in',
    hint: '0 where nothing has to match',
    more: true,
  }),
  oneWay: flagField('One-way print', { hint: 'it has a right way up' }),
  piecedStrip: flagField('Allow a pieced strip', { hint: 'less cloth, more seams', more: true }),
  ...shopFields,
};

/** Input of {@link reckonBacking}: `width`, `length`, `overage`, `fabricWidth`, `seam`, `repeat`, `oneWay`, … */
export type BackingInput = Input<typeof backingFields>;

/** One way to make the back. Lengths are exact inches. */
export interface BackingLayout<Length = string> {
  /** Whole panels, side by side. */
  panels: number;
  /** `lengthwise`: the cloth's length, and the long seams, run along the quilt's length; `crosswise`: across it. */
  direction: 'lengthwise' | 'crosswise';
  /** All seams to sew, the strip's joins included. */
  seams: number;
  /** What each panel is cut to, along the cloth. */
  panelLength: Length;
  /** The strips that make up the missing width, joined end to end; only in a layout with a pieced strip. */
  strip?: { count: number; height: Length };
  /** What the joined panels cover across, before trimming. */
  cover: Length;
  fabric: Length;
  buy: Purchase;
}

/** What {@link reckonBacking} gives back. */
export interface BackingResult extends Answer {
  /** The back's size before quilting. */
  need: Size;
  /** Every layout that is possible, the one to use first. */
  layouts: BackingLayout[];
  /** The largest piece left over: from the last panel's side. Absent where nothing is left. */
  leftover?: Size;
}

/**
 * Cloth for a quilt's back: every layout of panels, with its seams and cloth; the least cloth first, then the fewest
 * seams. A layout with a pieced strip comes after the whole panels unless `piecedStrip` is set.
 * Impossible inputs give `errors`, never an exception.
 */
export const reckonBacking = (input: BackingInput = {}): BackingResult | Refused => {
  const book = new Book(backingFields, input);
  return book.finish<BackingResult>(() => {
    const { n, l } = book;
    const { width, length, seam, repeat, oneWay, piecedStrip } = book.values;
    const loss = seam.mul(2);

    book.given('width', 'length');
    const need = withOverage(book, 'Backing', { width, length });
    const { cloth, clothRow, kept, washed } = book.cloth();

    const layoutsIn = (
      direction: BackingLayout['direction'],
      across: Exact,
      along: Exact,
    ): BackingLayout<Exact>[] => {
      const panels = fewest(across, cloth, loss);
      if (!panels) return [];
      const uncut = along.div(kept);
      // Panels match where each starts at the same place of the print as it was bought.
      const panelLength = panels > 1 && repeat.gt(0) ? upTo(uncut, repeat) : uncut;
      const layout = (panels: number, strip?: { count: number; height: Exact }): BackingLayout<Exact> => {
        const fabric = panelLength.mul(panels).add(strip ? strip.height.mul(strip.count) : 0);
        const seams = panels - 1 + (strip ? strip.count : 0);
        const cover = strip ? across : reachOf(panels, cloth, loss);
        return { panels, direction, seams, panelLength, strip, cover, fabric, buy: book.toBuy(fabric) };
      };
      const whole = layout(panels);
      const count = fewest(along, cloth, loss);
      if (panels === 1 || oneWay || !count) return [whole];
      const height = across
        .sub(reachOf(panels - 1, cloth, loss))
        .add(loss)
        .div(kept);
      return [whole, layout(panels - 1, { count, height })];
    };
    const layouts = layoutsIn('lengthwise', need.width, need.length);
    if (!oneWay) layouts.push(...layoutsIn('crosswise', need.length, need.width));
    const isLast = ({ strip }: BackingLayout<Exact>): number => (strip && !piecedStrip ? 1 : 0);
    const [best] = layouts.sort(
      (a, b) => isLast(a) - isLast(b) || a.fabric.compare(b.fabric) || a.seams - b.seams,
    );
    if (!best)
      return book.refuse(
        cloth.gt(1) ? 'seam' : 'fabricWidth',
        `Two seams of ${l(seam)} leave nothing of cloth ${l(cloth)} wide. Write ${cloth.gt(1) ? 'a smaller seam, like 1/2 in' : 'wider cloth, like 40 in'}.`,
      );
    if (best.panels > MOST_JOINED)
      return book.refuse(
        'fabricWidth',
        `Cloth ${l(cloth)} wide takes ${best.panels} panels. Write wider cloth, like 40 in.`,
      );

    book.given();
    const { panels, panelLength, strip, seams, fabric } = best;
    const lengthwise = best.direction === 'lengthwise';
    const [across, along] = facing(need, !lengthwise);
    const [acrossRow, alongRow] = facing(NEED_ROWS, !lengthwise);
    const side = reachOf(panels, cloth, loss);
    const joined = (count: number): string =>
      book.joined(count, clothRow, `${2 * count - 2} × {seam}`, reachOf(count, cloth, loss));
    const reaches = strip ? `< {${acrossRow} unit}: a strip makes up the rest` : `≥ {${acrossRow} unit}`;
    book.row('panels', 'Panels side by side', panels, `${joined(panels)} ${reaches}`);
    const repeats = panelLength.equals(along.div(kept)) ? '' : ', up to whole repeats of {repeat}';
    book.row(
      'panel',
      'Each panel, along the cloth',
      panelLength,
      washed || repeats
        ? `{${alongRow}}${washed}${repeats} =`
        : `the backing’s ${alongRow === 'needLength' ? 'length' : 'width'}`,
      [alongRow],
    );
    const cuts = [book.cut(panels, 'backing panel', cloth, panelLength.mul(kept))];
    if (strip) {
      book.row(
        'strip',
        'Strip, each piece',
        strip.height,
        `({${acrossRow}} − ${n(side)} + 2 × {seam})${washed} =`,
        ['panels'],
      );
      book.row(
        'stripCount',
        'Pieces in the strip',
        strip.count,
        `${joined(strip.count)} ≥ {${alongRow} unit}`,
      );
      cuts.push(book.cut(strip.count, 'strip, to be joined end to end', strip.height.mul(kept), cloth));
    }
    const runs = seams ? `, running ${lengthwise ? 'along the quilt’s length' : 'across the quilt'}` : '';
    return {
      ...book.buy(fabric, `{panels} × {panel}${strip ? ' + {stripCount} × {strip}' : ''} =`),
      need,
      summary: `${panels === 1 ? 'One panel' : `${panels} panels`}${strip ? ' and a pieced strip' : ''}, ${seams || 'no'} seam${seams > 1 ? 's' : ''}${runs}${oneWay ? ', as a one-way print has to lie' : ''}, for a back ${book.size(need.width, need.length)}.`,
      layouts,
      leftover: side.gt(across) ? { width: side.sub(across), length: panelLength.mul(kept) } : undefined,
      cuts,
    };
  });
};
