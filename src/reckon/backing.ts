import { upTo, wholeUp, ZERO, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { purchase, toStep, type Purchase } from '../measure/shop.js';
import { BACKING_SEAM, OVERAGE } from '../trade/conventions.js';
import { Book, type Answer, type Input, type Refused } from './book.js';
import { clothFields, quiltFields, shopFields } from './shared.js';
import type { Fields } from './fields.js';

export const backingFields = {
  ...quiltFields,
  overage: { kind: 'length', label: 'Overage, each side', initial: OVERAGE, zero: true, most: '36 in', hint: 'what longarm quilters ask for' },
  ...clothFields,
  seam: { kind: 'length', label: 'Seam joining panels', initial: BACKING_SEAM, zero: true, most: '4 in' },
  repeat: { kind: 'length', label: 'Pattern repeat', initial: '0', zero: true, most: '60 in', hint: '0 where nothing has to match', more: true },
  oneWay: { kind: 'flag', label: 'One-way print', more: true },
  piecedStrip: { kind: 'flag', label: 'Allow a pieced strip', hint: 'less cloth, more seams', more: true },
  ...shopFields,
} as const satisfies Fields;

/** Input of {@link reckonBacking}: `width`, `length`, `overage`, `fabricWidth`, `seam`, `repeat`, `oneWay`, … */
export type BackingInput = Input<typeof backingFields>;

/** One way to make the back. Lengths are exact inches. */
export interface BackingLayout {
  /** Whole panels, side by side. */
  panels: number;
  /** `lengthwise`: the cloth's length, and the long seams, run along the quilt's length; `crosswise`: across it. */
  direction: 'lengthwise' | 'crosswise';
  /** All seams to sew, the strip's joins included. */
  seams: number;
  /** What each panel is cut to, along the cloth. */
  panelLength: string;
  /** The strips that make up the missing width, joined end to end; only in a layout with a pieced strip. */
  strip?: { count: number; height: string };
  /** What the joined panels cover across, before trimming. */
  cover: string;
  fabric: string;
  buy: Purchase;
}

/** What {@link reckonBacking} gives back. */
export interface BackingResult extends Answer {
  /** The back's size before quilting. */
  need: { width: string; length: string };
  /** Every layout that is possible, the one to use first. */
  layouts: BackingLayout[];
  /** The largest piece left over: from the last panel's side. Absent where nothing is left. */
  leftover?: { width: string; length: string };
}

interface Plan {
  panels: number;
  direction: BackingLayout['direction'];
  seams: number;
  /** Along the cloth as bought, one panel. */
  panel: Exact;
  strip?: { count: number; height: Exact };
  cover: Exact;
  fabric: Exact;
}

/** n panels side by side, each seam taking its allowance from both. */
const covered = (panels: number, width: Exact, seam: Exact): Exact =>
  width.mul(panels).sub(seam.mul(2 * (panels - 1)));

/** The fewest panels or strips that reach a length; the width must be more than two seams. */
export const fewest = (reach: Exact, width: Exact, seam: Exact): number =>
  width.gte(reach) ? 1 : wholeUp(reach.sub(seam.mul(2)).div(width.sub(seam.mul(2))));

/**
 * Cloth for a quilt's back: every layout of panels, with its seams and cloth; the least cloth first, then the fewest
 * seams. A layout with a pieced strip comes after the whole panels unless `piecedStrip` is set.
 * Impossible inputs give `errors`, never an exception.
 */
export const reckonBacking = (input: BackingInput = {}): BackingResult | Refused => {
  const book = new Book(backingFields, input);
  return book.finish<BackingResult>(() => {
    const { n, l } = book;
    const { width, length, overage, seam, repeat, oneWay, piecedStrip, increment } = book.values;
    const seams = seam.mul(2);

    book.given('width', 'length', 'overage');
    const needWidth = width.add(overage.mul(2));
    const needLength = length.add(overage.mul(2));
    book.row('needWidth', 'Backing width', needWidth, '{width} + 2 × {overage} =');
    book.row('needLength', 'Backing length', needLength, '{length} + 2 × {overage} =');
    const { cloth, widthId, kept } = book.cloth();
    if (cloth.lte(seams) && cloth.lt(needWidth) && cloth.lt(needLength))
      book.refuse('seam', `Two seams of ${l(seam)} leave nothing of cloth ${l(cloth)} wide. Write a smaller seam, like 1/2 in.`);

    const layoutsIn = (direction: Plan['direction'], across: Exact, along: Exact): Plan[] => {
      const uncut = along.div(kept);
      if (cloth.gte(across)) return [{ panels: 1, direction, seams: 0, panel: uncut, cover: cloth, fabric: uncut }];
      if (cloth.lte(seams)) return [];
      const panels = fewest(across, cloth, seam);
      // Panels match where each starts at the same place of the print as it was bought.
      const panel = repeat.gt(ZERO) ? upTo(uncut, repeat) : uncut;
      const whole = { panels, direction, seams: panels - 1, panel, cover: covered(panels, cloth, seam), fabric: panel.mul(panels) };
      if (oneWay) return [whole];
      const count = fewest(along, cloth, seam);
      const height = across.sub(covered(panels - 1, cloth, seam)).add(seams).div(kept);
      const fabric = panel.mul(panels - 1).add(height.mul(count));
      return [whole, { panels: panels - 1, direction, seams: panels + count - 2, panel, strip: { count, height }, cover: across, fabric }];
    };
    const rank = (plan: Plan): number => (plan.strip && !piecedStrip ? 1 : 0);
    const plans = [
      ...layoutsIn('lengthwise', needWidth, needLength),
      ...(oneWay ? [] : layoutsIn('crosswise', needLength, needWidth)),
    ].sort((a, b) => rank(a) - rank(b) || a.fabric.compare(b.fabric) || a.seams - b.seams);

    book.given('seam', 'repeat', 'oneWay', 'piecedStrip', 'shrinkage', 'increment', 'price', 'currency');
    const { panels, panel, strip, direction, seams: sewn, fabric } = plans[0]!;
    const [across, along] = direction === 'lengthwise' ? [needWidth, needLength] : [needLength, needWidth];
    const [acrossId, alongId] = direction === 'lengthwise' ? ['needWidth', 'needLength'] : ['needLength', 'needWidth'];
    const side = covered(panels, cloth, seam);
    const washed = kept.equals(1) ? '' : ' ÷ (1 − {shrinkage})';
    const joined = (count: number): string =>
      count > 1 ? `${count} × {${widthId}} − ${2 * count - 2} × {seam} = ${n(covered(count, cloth, seam))}` : `{${widthId}}`;
    book.row(
      'panels',
      'Panels side by side',
      `${panels}`,
      `${joined(panels)} ${strip ? '<' : '≥'} {${acrossId} unit}${strip ? ': a strip makes up the rest' : ''}`,
    );
    const repeats = panel.equals(along.div(kept)) ? '' : ', up to whole repeats of {repeat}';
    book.row('panel', 'Each panel, along the cloth', panel, `{${alongId}}${washed}${repeats} =`);
    if (strip) {
      book.row('strip', 'Strip, each piece', strip.height, `({${acrossId}} − ${n(side)} + 2 × {seam})${washed} =`, ['panels']);
      book.row('stripCount', 'Pieces in the strip', `${strip.count}`, `${joined(strip.count)} ≥ {${alongId} unit}`);
    }
    const bought = book.buy(fabric, `{panels} × {panel}${strip ? ' + {stripCount} × {strip}' : ''} =`);

    const over = side.sub(across);
    const cuts = [book.cut(panels, 'backing panel', book.values.fabricWidth, panel)];
    if (strip) cuts.push(book.cut(strip.count, 'strip, to be joined end to end', strip.height, book.values.fabricWidth));
    const runs = sewn ? `, running ${direction === 'lengthwise' ? 'along the quilt’s length' : 'across the quilt'}` : '';
    return {
      ...bought,
      need: { width: mixed(needWidth), length: mixed(needLength) },
      summary: `${panels === 1 ? 'One panel' : `${panels} panels`}${strip ? ' and a pieced strip' : ''}, ${sewn || 'no'} seam${sewn > 1 ? 's' : ''}${runs}, for a back ${book.size(needWidth, needLength)}.`,
      layouts: plans.map((plan) => ({
        panels: plan.panels,
        direction: plan.direction,
        seams: plan.seams,
        panelLength: mixed(plan.panel),
        ...(plan.strip && { strip: { count: plan.strip.count, height: mixed(plan.strip.height) } }),
        cover: mixed(plan.cover),
        fabric: mixed(plan.fabric),
        buy: purchase(toStep(plan.fabric, increment), increment, book.style.comma),
      })),
      ...(!strip && over.gt(0) && { leftover: { width: mixed(over), length: mixed(panel) } }),
      cuts,
    };
  });
};
