import { most, toMark, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { BINDING_ALLOWANCE, BINDING_STRIP, QUILT_THICKNESS, SEAM } from '../trade/conventions.js';
import { biasCut, fatQuarters, straightCut, type BindingJob } from './binding-cuts.js';
import { Book, type Answer, type Input, type Refused } from './book.js';
import { clothFields, markField, quiltFields, shopFields } from './shared.js';
import { lengthOf, type Fields } from './fields.js';

export const bindingFields = {
  width: { ...quiltFields.width, optional: true },
  length: { ...quiltFields.length, optional: true },
  perimeter: {
    kind: 'length',
    label: 'Way round, measured',
    optional: true,
    most: '4000 in',
    hint: 'for curved edges, in place of width and length',
    more: true,
  },
  allowance: {
    kind: 'length',
    label: 'Corners and closing',
    initial: BINDING_ALLOWANCE,
    zero: true,
    most: '100 in',
    hint: 'mitres and the closing tails',
  },
  stripWidth: {
    kind: 'length',
    label: 'Strip width',
    optional: true,
    hint: 'as cut, in place of a finished width',
  },
  finished: {
    kind: 'length',
    label: 'Finished width',
    optional: true,
    most: '6 in',
    hint: 'as it shows on the front',
  },
  fold: {
    kind: 'choice',
    label: 'Fold',
    initial: 'double',
    options: { double: 'double-fold', single: 'single-fold' },
  },
  thickness: {
    kind: 'length',
    label: 'Thickness of the quilt',
    initial: QUILT_THICKNESS,
    zero: true,
    most: '2 in',
    hint: 'goes into a finished width',
    more: true,
  },
  ...clothFields,
  cut: {
    kind: 'choice',
    label: 'Cut',
    initial: 'straight',
    options: { straight: 'straight, across the cloth', bias: 'bias' },
  },
  join: {
    kind: 'choice',
    label: 'Strips joined',
    initial: 'diagonal',
    options: { diagonal: 'at 45°', straight: 'straight' },
  },
  seam: {
    kind: 'length',
    label: 'Seam',
    initial: SEAM,
    most: '4 in',
    hint: 'of a straight join, and of the bias tube',
    more: true,
  },
  ...markField,
  ...shopFields,
} as const satisfies Fields;

/** Input of {@link reckonBinding}: `width`, `length`, `perimeter`, `allowance`, `stripWidth`, `finished`, `fold`, … */
export type BindingInput = Input<typeof bindingFields>;

/** What {@link reckonBinding} gives back. Lengths are exact inches. */
export interface BindingResult extends Answer {
  /** The binding needed: the way round and the allowance. */
  length: string;
  /** Strips to join: cut across the cloth, or the one long strip that each bias square gives. */
  strips: number;
  /** What each strip is cut to across. */
  stripWidth: string;
  /** How long the strips are once joined; for bias on a ruler mark, rounded down. */
  yields: string;
  /** Bias: the side of each square. */
  square?: string;
  /** Bias: how many squares. */
  squares?: number;
  /** Bias: how many whole rounds each square's tube gives. */
  rounds?: number;
  /** Bias: the side by area alone, which is the usual rule; its tube can end in a round too narrow to use. */
  byArea?: string;
  /** The same binding from fat quarters: strips along the longer side, or for bias a square each. Absent where none fits. */
  fatQuarters?: { strips: number; count: number };
}

/**
 * What to cut a strip to, from the width it is to show. Double-fold: two layers, each the seam allowance, the front, the
 * quilt's edge and the back. Single-fold: one, with an edge turned under.
 */
const stripFor = (book: Book<typeof bindingFields>): Exact => {
  const { finished, fold, thickness, mark } = book.values;
  if (!finished) {
    const usual = lengthOf(BINDING_STRIP, book.style);
    book.row('strip', 'Cut the strips', usual, 'the usual width', []);
    return usual;
  }
  const [widths, edges] = fold === 'double' ? [6, 2] : [4, 1];
  const whole = finished.mul(widths).add(thickness.mul(edges));
  const strip = most(toMark(whole, mark), mark);
  const marked = strip.equals(whole) ? '' : `, on a mark ${book.l(strip)}`;
  book.row(
    'strip',
    'Cut the strips',
    strip,
    `${widths} × ${book.n(finished)} + ${edges} × ${book.n(thickness)} = ${book.l(whole)}${marked}`,
    ['finished', 'fold', 'thickness', 'mark'],
  );
  return strip;
};

/**
 * Cloth for a quilt's binding: strips across the cloth joined end to end, or squares for continuous bias; and the same
 * from fat quarters. Impossible inputs give `errors`, never an exception.
 */
export const reckonBinding = (input: BindingInput = {}): BindingResult | Refused => {
  const book = new Book(bindingFields, input);
  if (!book.values.perimeter) book.require('width', 'length');
  return book.finish<BindingResult>(() => {
    const { n, l } = book;
    const { width, length, perimeter, allowance, stripWidth, finished, cut, join, seam } = book.values;
    const bias = cut === 'bias';

    book.given('width', 'length', 'perimeter');
    const sides = (): Exact => width!.add(length!).mul(2);
    const around = perimeter
      ? book.measurable('around', 'Way round', perimeter, 'as measured', ['perimeter'])
      : book.measurable(
          'around',
          'Way round',
          sides(),
          `2 × (${n(width!)} + ${n(length!)}) = ${l(sides())}`,
          ['width', 'length'],
        );
    book.given('allowance');
    const need = around.add(allowance);
    book.row('need', 'Binding needed', need, `${n(around)} + ${n(allowance)} = ${l(need)}`, [
      'around',
      'allowance',
    ]);
    if (perimeter && !bias)
      book.notes.push('A curved edge needs bias binding: strips cut straight do not bend round it.');

    book.given('stripWidth', 'finished', 'fold', 'thickness', 'mark');
    const strip = stripWidth ?? stripFor(book);
    const stripInput = stripWidth ? 'stripWidth' : finished ? 'finished' : 'fabricWidth';
    if (stripWidth && finished) book.notes.push('The strip width is used, not the finished width.');
    const { cloth, widthId, kept } = book.cloth();
    if (strip.gt(cloth))
      book.refuse(
        stripInput,
        `A strip ${l(strip)} wide is wider than the cloth, ${l(cloth)}. Write a narrower strip, like 2 1/2 in, or wider cloth.`,
      );

    book.given('cut', 'join', 'seam', 'shrinkage', 'increment', 'price', 'currency');
    const diagonal = bias || join === 'diagonal';
    const stripId = stripWidth ? 'stripWidth' : 'strip';
    const loss = diagonal ? strip : seam.mul(2);
    const job: BindingJob = { book, need, strip, stripId, stripInput, cloth, widthId, kept, diagonal, loss };
    const cutting = bias ? biasCut(job) : straightCut(job);
    const quarters = fatQuarters(job);
    return {
      ...cutting,
      length: mixed(need),
      stripWidth: mixed(strip),
      ...(quarters && { fatQuarters: quarters }),
    };
  });
};
