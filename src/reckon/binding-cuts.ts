import { biasSquares, squareByArea, type BiasNeed } from '../planner/bias.js';
import { fewest, reachOf } from '../planner/joins.js';
import { downTo, exact, most, rootDown, rootUp, wholeDown, type Exact } from '../measure/exact.js';
import { INCHES } from '../measure/units.js';
import { FAT_QUARTER } from '../trade/conventions.js';
import type { BindingResult, bindingFields } from './binding.js';
import type { Own } from './answer.js';
import type { Book } from './book.js';
import { readLength } from './fields.js';

/** A binding whose length and strip are known, and what it is cut from. */
export interface BindingJob extends ReturnType<Book<typeof bindingFields>['cloth']> {
  book: Book<typeof bindingFields>;
  need: Exact;
  strip: Exact;
  /** The id of the row that holds the strip's width, and the input to change where it cannot be cut. */
  stripRow: 'stripWidth' | 'strip';
  stripInput: 'stripWidth' | 'finished' | 'fabricWidth';
  /** Joined at 45°, as bias always is. */
  diagonal: boolean;
  /** What each join uses up. */
  loss: Exact;
}

type Cutting = Omit<Own<BindingResult>, 'length' | 'stripWidth' | 'fatQuarters'>;

/** Cloth as narrow as this is meant to be wider. */
const NARROW = 10;

const lossRow = ({ book, diagonal, loss, stripRow }: BindingJob): void => {
  if (diagonal) book.row('loss', 'Each join uses', loss, 'at 45°: the strip’s width', ['join', stripRow]);
  else book.row('loss', 'Each join uses', loss, '2 × {seam} =', ['join']);
};

const tooWide = ({ book, stripInput, cloth }: BindingJob, what: string): never =>
  cloth.lt(NARROW)
    ? book.refuse('fabricWidth', `${what} Write wider cloth, like 40 in.`)
    : book.refuse(
        stripInput,
        `${what} Write a narrower one, like ${stripInput === 'finished' ? '3/8' : '2 1/2'} in, or wider cloth.`,
      );

/** How so many strips reach the binding's length. */
const reaches = ({ book, loss }: BindingJob, strips: number, each: Exact, eachRow: string): string => {
  const sum = book.joined(strips, eachRow, `${strips - 1} × {loss}`, reachOf(strips, each, loss));
  return `${sum} ≥ {need unit}`;
};

/** Strips across the cloth, joined end to end. */
export const straightCut = (job: BindingJob): Cutting => {
  const { book, need, strip, stripRow, cloth, clothRow, kept, washed, diagonal, loss } = job;
  const { l } = book;
  if (strip.gt(cloth)) tooWide(job, `A strip ${l(strip)} wide is wider than the cloth, ${l(cloth)}.`);
  const strips = fewest(need, cloth, loss);
  if (!strips) {
    // Half an inch holds the usual seam twice.
    const [input, better] = diagonal
      ? (['join', 'straight'] as const)
      : cloth.gt(exact(1, 2))
        ? (['seam', 'a smaller seam, like 1/4 in'] as const)
        : (['fabricWidth', 'wider cloth, like 40 in'] as const);
    return book.refuse(
      input,
      `A join that uses ${l(loss)} leaves nothing of strips ${l(cloth)} long. Write ${better}.`,
    );
  }
  lossRow(job);
  book.row('strips', 'Strips across the cloth', strips, reaches(job, strips, cloth, clothRow));
  const joined = strips > 1 ? `, joined ${diagonal ? 'at 45°' : 'straight'},` : '';
  return {
    ...book.buy(strip.mul(strips).div(kept), `{strips} × {${stripRow}}${washed} =`),
    summary: `${strips > 1 ? `${strips} strips` : 'One strip'} ${l(strip)} wide${joined} for ${l(need)} of ${book.values.fold}-fold binding.`,
    strips,
    yields: reachOf(strips, cloth, loss),
    cuts: [book.cut(strips, 'binding strip', strip, cloth)],
  };
};

const biasNeed = ({ book, need, strip, loss }: BindingJob): BiasNeed => ({
  length: need,
  strip,
  seam: book.values.seam,
  join: loss,
  unit: INCHES[book.style.units],
});

/** Squares for continuous bias: one, or the fewest equal ones that fit across the cloth. */
export const biasCut = (job: BindingJob): Cutting => {
  const { book, need, strip, stripRow, cloth, kept, washed, loss } = job;
  const { l } = book;
  const { seam, mark, fold } = book.values;
  const squares = biasSquares(biasNeed(job), cloth);
  if (!squares)
    return tooWide(job, `No square of cloth ${l(cloth)} wide holds a bias strip ${l(strip)} wide.`);
  const { side, count, rounds, lengthSquared } = squares;
  const several = count > 1;
  const byArea = squareByArea(biasNeed(job));
  const inner = side.sub(seam.mul(2));

  if (several) lossRow(job);
  const [label, why] = several
    ? [`Each of ${count} squares`, `; one does not fit cloth ${l(cloth)} wide`]
    : ['Square', ''];
  book.row('square', label, side, `the least whose whole rounds reach {need unit}${why}`, [stripRow, 'seam']);
  const across = rootUp(inner.mul(inner).div(2));
  book.row(
    'rounds',
    'Rounds of its tube',
    rounds,
    `({square} − 2 × {seam}) ÷ √2 = ${l(across)} across: ${rounds} × {${stripRow}} fit`,
  );
  const yields = most(need, downTo(rootDown(lengthSquared, mark).sub(loss.mul(count - 1)), mark));
  const [times, less] = several ? [`${count} × `, ` − ${count - 1} × {loss}`] : ['', ''];
  book.row(
    'yields',
    'They give',
    yields,
    `${times}{rounds} × ({square} − 2 × {seam}) × √2${less}, not below {need unit}`,
  );
  book.row(
    'byArea',
    'By area alone, a square of',
    byArea,
    `√({need} × {${stripRow}}) + 2 × {seam}, rounded up; its last round may be too narrow to use`,
  );
  const high = Math.ceil(count / wholeDown(cloth.div(side)));
  return {
    ...book.buy(side.mul(high).div(kept), `${high} × {square}${washed} =`),
    summary: `${several ? `${count} squares` : 'One square'} of ${l(side)} for ${l(need)} of ${fold}-fold bias binding, cut ${l(strip)} wide.`,
    strips: count,
    yields,
    square: side,
    squares: count,
    rounds,
    byArea,
    cuts: [book.cut(count, 'square for continuous bias', side, side)],
  };
};

/** The same binding from fat quarters: strips along the longer side, or for bias a square of each. */
export const fatQuarters = (job: BindingJob): BindingResult['fatQuarters'] => {
  const { book, need, strip, stripRow, kept, loss } = job;
  const { n, l } = book;
  const label = 'Or from fat quarters';
  const [long, high] = [FAT_QUARTER.width, FAT_QUARTER.height].map((side) =>
    readLength(side, book.style).mul(kept),
  ) as [Exact, Exact];

  if (book.values.cut === 'bias') {
    const squares = biasSquares(biasNeed(job), high);
    if (squares) {
      const { count, side } = squares;
      book.row('fatQuarters', label, count, `a ${l(side)} square from each`, ['need', stripRow, 'seam']);
      return { strips: count, count };
    }
  } else {
    const each = wholeDown(high.div(strip));
    const strips = each && fewest(need, long, loss);
    if (strips) {
      const count = Math.ceil(strips / each);
      book.row('fatStrips', 'Strips from fat quarters', strips, reaches(job, strips, long, n(long)));
      book.row('fatQuarters', label, count, `${n(high)} ÷ {${stripRow}}: ${each} from each`, ['fatStrips']);
      return { strips, count };
    }
  }
  book.row(
    'fatQuarters',
    label,
    'not possible',
    `a strip {${stripRow} unit} wide is too wide for ${book.size(high, long)}`,
  );
  return undefined;
};
