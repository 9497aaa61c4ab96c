import type { RollPlan } from '../planner/rolls.js';
import { least, ONE, type Exact } from '../measure/exact.js';
import type { battingFields, BattingResult } from './batting.js';
import type { Own } from './answer.js';
import { SMALL_SPARE, type Book } from './book.js';
import type { RankedPackage } from './packages.js';
import { MOST_JOINED, NEED_ROWS, facing, type Size } from './shared.js';

type Bought = Pick<Own<BattingResult>, 'buy' | 'fabric' | 'spare' | 'summary' | 'cuts'>;

/** One package: what it leaves over both ways, and its price where the list gives one. */
export const buyPackage = (
  book: Book<typeof battingFields>,
  pack: RankedPackage,
  need: Size<Exact>,
): Bought => {
  const { n, l } = book;
  const { name, width, length, turned, price } = pack;
  const one = `1 ${name ? `${name} ` : ''}package`;
  const text = `${one}, ${book.size(width, length)}`;
  const [across, along] = facing(need, turned);
  const [acrossRow, alongRow] = facing(NEED_ROWS, turned);
  const [beside, beyond] = [width.sub(across), length.sub(along)];

  const best = price ? 'cheapest' : 'smallest';
  book.row(
    'buy',
    'Buy',
    text,
    `the ${best} that fits: ${n(width)} ≥ {${acrossRow}} and ${n(length)} ≥ {${alongRow} unit}`,
    ['packages'],
  );
  book.row(
    'spare',
    'Spare',
    `${l(beside)} and ${l(beyond)}`,
    `${n(width)} − {${acrossRow}} and ${n(length)} − {${alongRow}}`,
    ['buy'],
  );
  if (price) book.price(ONE, one, price, ['buy', 'packages']);
  book.notes.push('Read the label before buying: makers’ sizes differ by a few inches.');
  const spare = least(beside, beyond);
  if (spare.lt(SMALL_SPARE))
    book.notes.push(
      `Only ${l(spare)} to spare one way: a package smaller than its name says would leave you short.`,
    );
  return {
    buy: { inches: length, amount: '1', unit: 'package', text },
    fabric: along,
    spare: beyond,
    summary: `One package covers ${book.size(need.width, need.length)}${turned ? ', turned' : ''}.`,
    cuts: [book.cut(1, 'batting', need.width, need.length)],
  };
};

/** Lengths from a roll, butted where one is not wide enough. */
export const buyFromRoll = (book: Book<typeof battingFields>, plan: RollPlan, need: Size<Exact>): Bought => {
  const { n, l } = book;
  const { roll, lengths, each, direction, fabric } = plan;
  const lengthwise = direction === 'lengthwise';
  const [acrossRow, alongRow] = facing(NEED_ROWS, !lengthwise);
  if (lengths > MOST_JOINED)
    book.refuse('roll', `A roll ${l(roll)} wide takes ${lengths} lengths. Write a wider one, like 90 in.`);
  const butted = lengths > 1 ? ', butted edge to edge with no overlap' : '';

  const reach = `${lengths} × ${n(roll)} = ${n(roll.mul(lengths))} ≥ {${acrossRow} unit}${butted}`;
  book.row('lengths', `Lengths of a roll ${l(roll)} wide`, lengths, reach, ['roll']);
  book.row('each', 'Each length', each, `the batting’s ${lengthwise ? 'length' : 'width'}`, [alongRow]);
  if (!book.values.roll?.length) book.notes.push('No package is large enough, so this is from a roll.');
  if (lengths > 2) book.notes.push(`Two lengths are not wide enough, so ${lengths} are butted.`);
  const bought = book.buy(fabric, '{lengths} × {each} =', [], 'Batting needed');
  return {
    ...bought,
    // So much of a narrower roll would be short.
    buy: { ...bought.buy, text: `${bought.buy.text}, ${l(roll)} wide` },
    summary: `${lengths > 1 ? `${lengths} lengths` : 'One length'} of a roll ${l(roll)} wide${butted}, for ${book.size(need.width, need.length)}.`,
    cuts: [book.cut(lengths, 'length of batting', roll, each)],
  };
};
