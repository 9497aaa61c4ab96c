import type { RollPlan } from '../cutting/rolls.js';
import { least, ONE, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import type { battingFields, BattingResult, Size } from './batting.js';
import { SMALL_SPARE, type Book, type Own } from './book.js';
import type { RankedPackage } from './packages.js';

type Bought = Pick<Own<BattingResult>, 'buy' | 'fabric' | 'spare' | 'summary' | 'cuts'>;

/** One package: what it leaves over both ways, and its price where the list gives one. */
export const buyPackage = (
  book: Book<typeof battingFields>,
  pack: RankedPackage,
  need: Size<Exact>,
): Bought => {
  const { n, l } = book;
  const { name, width, length, turned, price } = pack;
  const text = `1 ${name ? `${name} ` : ''}package, ${book.size(width, length)}`;
  const [across, along] = turned ? [need.length, need.width] : [need.width, need.length];
  const [beside, beyond] = [width.sub(across), length.sub(along)];
  const from = ['packages', 'needWidth', 'needLength'];

  const priced = book.values.packages?.every((other) => other.price);
  const buyHow = `the ${priced ? 'cheapest' : 'smallest'} that fits: ${n(width)} ≥ ${n(across)} and ${n(length)} ≥ ${l(along)}`;
  book.row('buy', 'Buy', text, buyHow, from);
  const spareHow = `${n(width)} − ${n(across)} and ${n(length)} − ${n(along)}`;
  book.row('spare', 'Spare', book.size(beside, beyond), spareHow, ['buy', 'needWidth', 'needLength']);
  if (price) book.price(ONE, text, price, ['buy', 'packages']);
  book.notes.push('Read the label before buying: makers’ sizes differ by a few inches.');
  const spare = least(beside, beyond);
  if (spare.lt(SMALL_SPARE))
    book.notes.push(
      `Only ${l(spare)} to spare one way: a package smaller than its name says would leave you short.`,
    );
  return {
    buy: { inches: mixed(length), amount: '1', unit: 'package', text },
    fabric: mixed(along),
    spare: mixed(beyond),
    summary: `One package covers ${book.size(need.width, need.length)}${turned ? ', turned' : ''}.`,
    cuts: [book.cut(1, 'batting', need.width, need.length)],
  };
};

/** Lengths from a roll, butted where one is not wide enough. */
export const buyFromRoll = (book: Book<typeof battingFields>, plan: RollPlan, need: Size<Exact>): Bought => {
  const { n, l } = book;
  const { roll, lengths, each, direction, fabric } = plan;
  const lengthwise = direction === 'lengthwise';
  const across = lengthwise ? need.width : need.length;
  const butted = lengths > 1 ? ', butted edge to edge with no overlap' : '';
  const pieces = lengths > 1 ? `${lengths} lengths` : 'One length';

  const widthHow = `${lengths} × ${n(roll)} = ${n(roll.mul(lengths))} ≥ ${l(across)}${butted}`;
  const label = `Lengths of a roll ${l(roll)} wide`;
  book.row('lengths', label, `${lengths}`, widthHow, ['roll', lengthwise ? 'needWidth' : 'needLength']);
  const eachHow = `the batting’s ${lengthwise ? 'length' : 'width'}`;
  book.row('each', 'Each length', each, eachHow, [lengthwise ? 'needLength' : 'needWidth']);
  if (!book.values.roll?.length) book.notes.push('No package is large enough, so this is from a roll.');
  if (lengths > 2) book.notes.push(`Two lengths are not wide enough, so ${lengths} are butted.`);
  return {
    ...book.buy(fabric, `${lengths} × ${n(each)} = ${l(fabric)}`, ['lengths', 'each'], 'Batting needed'),
    summary: `${pieces} of a roll ${l(roll)} wide${butted}, for ${book.size(need.width, need.length)}.`,
    cuts: [book.cut(lengths, 'length of batting', roll, each)],
  };
};
