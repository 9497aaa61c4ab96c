import { exact, most, sum, toMark, wholeUp, ZERO, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { purchase, toStep, type Purchase } from '../measure/shop.js';
import { fromUnit, toUnit } from '../measure/units.js';
import { SEAM } from '../trade/conventions.js';
import { Book, type Answer, type Cut, type Input, type Refused } from './book.js';
import { GrowingTop, type Width } from './border-lengths.js';
import {
  bestPlan,
  borderPlans,
  lotsOf,
  planWords,
  type BorderPlan,
  type Cloth,
  type Lot,
} from './border-strips.js';
import { clothFields, markField, shopFields } from './shared.js';
import type { Fields } from './fields.js';

export const bordersFields = {
  width: { kind: 'length', label: 'Top width', hint: 'finished, without borders' },
  length: { kind: 'length', label: 'Top length', hint: 'finished, without borders' },
  borders: { kind: 'lengths', label: 'Border width', optional: true, hint: 'finished; from the inside out' },
  corners: {
    kind: 'choices',
    label: 'Corners',
    initial: 'sides-first',
    options: {
      'sides-first': 'sides first',
      'ends-first': 'top and bottom first',
      squares: 'corner squares',
      mitred: 'mitred',
    },
  },
  target: { kind: 'size', label: 'Wanted size', optional: true, hint: 'reached with one more border' },
  ...clothFields,
  grain: {
    kind: 'choice',
    label: 'Strips cut',
    initial: 'across',
    options: { across: 'across the cloth', along: 'along the cloth' },
  },
  join: {
    kind: 'choice',
    label: 'Strips joined',
    initial: 'diagonal',
    options: { diagonal: 'at 45°', straight: 'straight' },
  },
  seam: { kind: 'length', label: 'Seam allowance', initial: SEAM, zero: true, most: '2 in' },
  ...markField,
  ...shopFields,
} as const satisfies Fields;

/** Input of {@link reckonBorders}: `width`, `length`, `borders`, `target`, `corners`, `grain`, `join`, `fabricWidth`, … */
export type BordersInput = Input<typeof bordersFields>;

/** Equal pieces of one border: its sides, its top and bottom (`end`), or its corner squares. */
export interface BorderPiece {
  piece: 'side' | 'end' | 'corner';
  count: number;
  /** Cut sizes, exact inches; the cut list has them on the ruler's marks. */
  length: string;
  width: string;
}

/** One border. Lengths are exact inches. */
export interface Border {
  /** Its finished width; at the sides, where top and bottom differ. */
  finished: string;
  /** Its finished width at top and bottom, where that differs. */
  finishedEnds?: string;
  corners: string;
  pieces: BorderPiece[];
  /** The plan that is used, with its strips, joins and cloth. */
  plan: BorderPlan['plan'];
  strips: number;
  joins: number;
  fabric: string;
  /** What to buy where this border has a cloth of its own. */
  buy: Purchase;
  /** Every plan that the cloth allows: across joined, across separate, along. */
  plans: { plan: BorderPlan['plan']; strips: number; joins: number; fabric: string; buy: Purchase }[];
}

/** What {@link reckonBorders} gives back; `fabric` and `buy` are for all borders from one cloth. */
export interface BordersResult extends Answer {
  /** From the inside out. */
  borders: Border[];
  /** The top's size with its borders. */
  finished: { width: string; length: string };
}

const PIECES = { side: 'side', end: 'top or bottom', corner: 'corner' };
const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/**
 * Borders round a top: what to cut for each, from how many strips, the cloth for all of them, and the finished size. A
 * length typed over a reckoned one changes all that follows. Impossible inputs give `errors`, never an exception.
 */
export const reckonBorders = (input: BordersInput = {}): BordersResult | Refused => {
  const book = new Book(bordersFields, input);
  return book.finish<BordersResult>(() => {
    const { n, l } = book;
    const { width, length, target, corners, grain, join, seam, mark, shrinkage, increment } = book.values;
    const listed = book.values.borders ?? [];
    const many = listed.length + (target ? 1 : 0);
    if (!many)
      book.refuse(
        'borders',
        'There is no border yet. Write the widths from the inside out, like 2, 4 1/2, or a wanted size, like 60 x 80.',
      );
    if (corners.length !== 1 && corners.length !== many)
      book.refuse(
        'corners',
        `There are ${corners.length} corner styles for ${plural(many, 'border')}. Write one for all, like squares, or one for each.`,
      );

    book.given('width', 'length', 'borders', 'target', 'corners');
    const { cloth: clothWidth, widthId, kept } = book.cloth();
    book.given('grain', 'join', 'seam');
    const cloth: Cloth = {
      width: clothWidth,
      kept,
      lossOf: (strip) => (join === 'diagonal' ? strip : seam.mul(2)),
    };
    const top = new GrowingTop(book, seam, mark, width, length);

    /** The last border, as wide as the wanted size takes; it may be nothing on an axis that has its size. */
    const lastWidths = (wanted: [Exact, Exact]): { side: Width; end: Width } => {
      const { side, end } = top.lacking(wanted);
      const { units } = book.style;
      const roomy = ({ value }: { value: Exact }): string =>
        n(fromUnit(exact(wholeUp(toUnit(value, units)) + 4), units));
      const larger = `Write a larger size, like ${roomy(top.width)} x ${roomy(top.length)}.`;
      if (side.value.lt(ZERO) || end.value.lt(ZERO))
        book.refuse(
          'target',
          `Without its last border it is ${book.size(top.width.value, top.length.value)} already. ${larger}`,
        );
      const each = `${l(side.value)} at each side and ${l(end.value)} at top and at bottom`;
      if (!side.value.equals(end.value)) {
        if (corners.at(-1) === 'mitred')
          book.refuse(
            'corners',
            `The wanted size takes ${each}, but a mitred border is as wide all round. Write squares or sides-first.`,
          );
        book.notes.push(`To reach the wanted size the last border is ${each}.`);
      } else if (side.value.equals(ZERO)) {
        if (!listed.length) book.refuse('target', `The top has this size already. ${larger}`);
        book.notes.push('The wanted size is reached without a last border.');
      }
      return { side, end };
    };

    const noPlan = (number: number, lots: Lot[]): never => {
      const wide = l(lots.map((lot) => lot.width).reduce((a, b) => most(a, b)));
      if (grain === 'along')
        return book.refuse(
          'grain',
          `Border ${number} is cut ${wide} wide, too wide to be cut along cloth of ${l(clothWidth)}. Write across.`,
        );
      if (clothWidth.lte(seam.mul(2)))
        return book.refuse(
          'fabricWidth',
          `Strips ${l(clothWidth)} long are too short to be joined. Write the width of your cloth, like 40 in.`,
        );
      return book.refuse(
        'join',
        `Joined at 45°, strips ${wide} wide from cloth of ${l(clothWidth)} get no longer. Write straight.`,
      );
    };

    const shown = ({ plan, strips, joins, fabric }: BorderPlan) => {
      const buy = purchase(toStep(fabric, increment), increment, book.style.comma);
      return { plan, strips, joins, fabric: mixed(fabric), buy };
    };
    const borders: Border[] = [];
    const cuts: Cut[] = [];
    const needs: { fabric: Exact; how: string; from: string[] }[] = [];
    const add = (widths: { side: Width; end: Width }): void => {
      const number = borders.length + 1;
      const style = corners[number - 1] ?? corners[0]!;
      const pieces = top.sew(number, style, widths);
      if (!pieces.length) return;
      const lots = lotsOf(pieces, mark);
      const plans = borderPlans(lots, cloth);
      const best = bestPlan(plans, grain) ?? noPlan(number, lots);

      const sizes = [...new Set(pieces.flatMap(({ from }) => from))];
      const words = planWords(best, cloth, n);
      const id = `border${number}Strips`;
      const value = `${best.strips}${best.joins ? `, ${plural(best.joins, 'join')}` : ''}`;
      book.row(id, `Border ${number}, strips`, value, words.strips, [
        ...sizes,
        widthId,
        'grain',
        ...(best.joins ? ['join'] : []),
      ]);
      const washed = shrinkage.gt(ZERO) ? ` ÷ (1 − ${book.percent(shrinkage)})` : '';
      const fabric = washed && words.fabric.includes('+') ? `(${words.fabric})` : words.fabric;
      needs.push({
        fabric: best.fabric,
        how: `${fabric}${washed} = ${l(best.fabric)}`,
        from: [id, ...sizes, ...(washed ? ['shrinkage'] : [])],
      });

      const { side, end } = widths;
      const same = side.value.equals(end.value);
      for (const { piece, count, length, width } of pieces) {
        const name = piece === 'corner' && same ? 'corner square' : PIECES[piece];
        cuts.push(book.cut(count, `border ${number}, ${name}`, toMark(width, mark), toMark(length, mark)));
      }
      borders.push({
        finished: mixed(side.value),
        ...(!same && { finishedEnds: mixed(end.value) }),
        corners: style,
        pieces: pieces.map(({ piece, count, length, width }) => ({
          piece,
          count,
          length: mixed(length),
          width: mixed(width),
        })),
        ...shown(best),
        plans: plans.map(shown),
      });
    };
    for (const value of listed) add({ side: { value, from: 'borders' }, end: { value, from: 'borders' } });
    if (target) add(lastWidths(target));

    book.given('mark', 'shrinkage', 'increment', 'price', 'currency');
    const one = needs.length === 1;
    if (!one)
      needs.forEach(({ fabric, how, from }, at) =>
        book.row(`border${at + 1}Fabric`, `Border ${at + 1}, cloth`, fabric, how, from),
      );
    const total = sum(needs.map(({ fabric }) => fabric));
    const bought = book.buy(
      total,
      one ? needs[0]!.how : `${needs.map(({ fabric }) => n(fabric)).join(' + ')} = ${l(total)}`,
      one ? needs[0]!.from : needs.map((_, at) => `border${at + 1}Fabric`),
    );
    if (!one)
      book.notes.push(
        `This is for all borders from one cloth. From different cloths buy ${borders.map(({ buy }, at) => `${buy.text} for border ${at + 1}`).join(', ')}.`,
      );
    book.notes.push(
      'Measure your own top through the middle, both ways, before you cut, and write that over the reckoned lengths.',
    );
    const strips = borders.reduce((all, border) => all + border.strips, 0);
    const joins = borders.reduce((all, border) => all + border.joins, 0);
    return {
      ...bought,
      finished: { width: mixed(top.width.value), length: mixed(top.length.value) },
      summary: `${plural(strips, 'strip')} ${grain} the cloth, ${joins ? plural(joins, 'join') : 'no join'}; with ${borders.length === 1 ? 'its border' : `${borders.length} borders`} the top is ${book.size(top.width.value, top.length.value)}.`,
      borders,
      cuts,
    };
  });
};
