import { biasSquares, squareByArea, type BiasNeed } from '../cutting/bias.js';
import { downTo, most, ONE, rootDown, rootUp, wholeDown, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { INCHES } from '../measure/units.js';
import { FAT_QUARTER } from '../trade/conventions.js';
import { fewest } from './backing.js';
import type { BindingResult, bindingFields } from './binding.js';
import type { Book, Own } from './book.js';
import { lengthOf } from './fields.js';

/** A binding whose length and strip are known, and what it is cut from. */
export interface BindingJob {
  book: Book<typeof bindingFields>;
  need: Exact;
  strip: Exact;
  /** The row that holds the strip's width, and the input to change where it cannot be cut. */
  stripId: string;
  stripInput: 'stripWidth' | 'finished' | 'fabricWidth';
  cloth: Exact;
  widthId: string;
  /** What a wash leaves of any length. */
  kept: Exact;
  /** Joined at 45°, as bias always is. */
  diagonal: boolean;
  /** What each join uses up. */
  loss: Exact;
}

type Cutting = Omit<Own<BindingResult>, 'length' | 'stripWidth' | 'fatQuarters'>;

const buy = ({ book, kept }: BindingJob, pieces: number, size: Exact, from: string[]) => {
  const fabric = size.mul(pieces).div(kept);
  const washed = !kept.equals(ONE);
  const unwashed = washed ? ` ÷ (1 − ${book.percent(book.values.shrinkage)})` : '';
  const how = `${pieces} × ${book.n(size)}${unwashed} = ${book.l(fabric)}`;
  return book.buy(fabric, how, washed ? [...from, 'shrinkage'] : from);
};

const lossRow = ({ book, diagonal, loss, stripId }: BindingJob): void => {
  const how = diagonal ? 'at 45°: the strip’s width' : `2 × ${book.n(book.values.seam)} = ${book.l(loss)}`;
  book.row('loss', 'Each join uses', loss, how, ['join', diagonal ? stripId : 'seam']);
};

/** What strips of one length give, joined end to end. */
const joined = ({ loss }: BindingJob, strips: number, long: Exact): Exact =>
  long.mul(strips).sub(loss.mul(strips - 1));

const joinedHow = (job: BindingJob, strips: number, long: Exact): string => {
  const { n, l } = job.book;
  const sum = strips > 1 ? `${strips} × ${n(long)} − ${strips - 1} × ${n(job.loss)} = ` : '';
  return `${sum}${n(joined(job, strips, long))} ≥ ${l(job.need)}`;
};

/** Strips no longer than what a join uses reach nowhere. */
const joinable = ({ loss, need }: BindingJob, long: Exact): boolean => long.gt(loss) || long.gte(need);

/** Strips across the cloth, joined end to end. */
export const straightCut = (job: BindingJob): Cutting => {
  const { book, need, strip, stripId, cloth, widthId, diagonal, loss } = job;
  const { l } = book;
  if (!joinable(job, cloth)) {
    const instead = diagonal ? 'join="straight"' : 'a smaller seam, like 1/4 in,';
    book.refuse(
      diagonal ? 'join' : 'seam',
      `A join that uses ${l(loss)} leaves nothing of strips ${l(cloth)} long. Write ${instead} or wider cloth.`,
    );
  }
  const strips = fewest(need, cloth, loss.div(2));
  lossRow(job);
  const how = joinedHow(job, strips, cloth);
  book.row('strips', 'Strips across the cloth', `${strips}`, how, [widthId, 'loss', 'need']);
  const pieces = strips > 1 ? `${strips} strips` : 'One strip';
  const join = strips > 1 ? `, joined ${diagonal ? 'at 45°' : 'straight'},` : '';
  return {
    ...buy(job, strips, strip, ['strips', stripId]),
    summary: `${pieces} ${l(strip)} wide${join} for ${l(need)} of ${book.values.fold}-fold binding.`,
    strips,
    yields: mixed(joined(job, strips, cloth)),
    cuts: [book.cut(strips, 'binding strip', strip, cloth)],
  };
};

const biasNeed = ({ book, need, strip, loss }: BindingJob): BiasNeed => ({
  length: need,
  strip,
  seam: book.values.seam,
  join: loss,
  unit: book.style.units === 'cm' ? INCHES.cm : ONE,
});

/** Squares for continuous bias: one, or the fewest equal ones that fit across the cloth. */
export const biasCut = (job: BindingJob): Cutting => {
  const { book, need, strip, stripId, stripInput, cloth, widthId, loss } = job;
  const { n, l } = book;
  const { seam, mark, fold } = book.values;
  const squares = biasSquares(biasNeed(job), cloth);
  if (!squares)
    return book.refuse(
      stripInput,
      `No square of cloth ${l(cloth)} wide holds a bias strip ${l(strip)} wide. Write a narrower strip, like 2 1/2 in, or wider cloth.`,
    );
  const { side, count, rounds, lengthSquared } = squares;
  const byArea = squareByArea(biasNeed(job));
  const inner = side.sub(seam.mul(2));
  const innerHow = `(${n(side)} − 2 × ${n(seam)})`;
  const several = count > 1;
  const from = ['need', stripId, 'seam'];

  const step = book.style.units === 'cm' ? 'centimetre' : 'inch';
  const areaHow = `√(${n(need)} × ${n(strip)}) + 2 × ${n(seam)}, up to the next ${step}; its last round may be too narrow`;
  book.row('byArea', 'Square by area alone', byArea, areaHow, from);
  if (several) lossRow(job);
  const whySeveral = several ? `; one square does not fit cloth ${l(cloth)} wide` : '';
  const squareHow = `the least whose whole rounds reach ${l(need)}${whySeveral}`;
  book.row('square', several ? `Each of ${count} squares` : 'Square', side, squareHow, [...from, widthId]);
  const across = rootUp(inner.mul(inner).div(2));
  const roundsHow = `${innerHow} ÷ √2 = ${l(across)} across: ${rounds} × ${n(strip)} fit`;
  book.row('rounds', 'Rounds of its tube', `${rounds}`, roundsHow, ['square', 'seam', stripId]);
  const yields = most(need, downTo(rootDown(lengthSquared, mark).sub(loss.mul(count - 1)), mark));
  const [times, less] = several ? [`${count} × `, ` − ${count - 1} × ${n(loss)}`] : ['', ''];
  const yieldsHow = `${times}${rounds} × ${innerHow} × √2${less}, not below ${l(need)}`;
  book.row('yields', 'They give', yields, yieldsHow, [
    'square',
    'rounds',
    'seam',
    'need',
    ...(several ? ['loss'] : []),
  ]);
  return {
    ...buy(job, Math.ceil(count / wholeDown(cloth.div(side))), side, ['square', widthId]),
    summary: `${several ? `${count} squares` : 'One square'} of ${l(side)} for ${l(need)} of ${fold}-fold bias binding, cut ${l(strip)} wide.`,
    strips: count,
    yields: mixed(yields),
    square: mixed(side),
    squares: count,
    rounds,
    byArea: mixed(byArea),
    cuts: [book.cut(count, 'square for continuous bias', side, side)],
  };
};

/** The same binding from fat quarters: strips along the longer side, or for bias a square of each. */
export const fatQuarters = (job: BindingJob): BindingResult['fatQuarters'] => {
  const { book, need, strip, stripId, kept, loss } = job;
  const { n, l } = book;
  const label = 'Or from fat quarters';
  const long = lengthOf(FAT_QUARTER.width, book.style).mul(kept);
  const high = lengthOf(FAT_QUARTER.height, book.style).mul(kept);

  if (book.values.cut === 'bias') {
    const squares = biasSquares(biasNeed(job), high);
    if (squares) {
      const how = `a ${l(squares.side)} square from each`;
      book.row('fatQuarters', label, `${squares.count}`, how, ['need', stripId, 'seam']);
      return { strips: squares.count, count: squares.count };
    }
  } else if (strip.lte(high) && joinable(job, long)) {
    const each = wholeDown(high.div(strip));
    const strips = fewest(need, long, loss.div(2));
    const count = Math.ceil(strips / each);
    book.row('fatStrips', 'Strips from fat quarters', `${strips}`, joinedHow(job, strips, long), [
      'loss',
      'need',
    ]);
    const how = `${n(high)} ÷ ${n(strip)}: ${each} from each`;
    book.row('fatQuarters', label, `${count}`, how, ['fatStrips', stripId]);
    return { strips, count };
  }
  book.row(
    'fatQuarters',
    label,
    'not possible',
    `a strip ${l(strip)} wide is too wide for ${book.size(high, long)}`,
    [stripId],
  );
  return undefined;
};
