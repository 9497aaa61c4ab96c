import { canBeCut } from '../planner/check.js';
import { least, most, ONE, sum, type Exact } from '../measure/exact.js';
import { inLengths, toStep } from '../measure/shop.js';
import { PLANNING, type Planner } from './planning.js';
import { laidOut } from './strips.js';
import type { Part } from './worksheet-parts.js';
import type { WorksheetBook } from './worksheet.js';

/** What is cut from one continuous length of cloth, and the cloth it takes before rounding. */
export interface Length {
  parts: Part[];
  need: Exact;
}

const needOf = (lengths: Length[]): Exact => sum(lengths.map(({ need }) => need));

/** The lengths to buy for what has to lie in one length each. */
const lengthsOf = ({ values: { increment } }: WorksheetBook, lengths: Length[]): Length[] =>
  inLengths(
    lengths.map(({ need }) => need),
    increment,
  ).map((places) => {
    const of = places.map((at) => lengths[at]!);
    return { parts: of.flatMap(({ parts }) => parts), need: needOf(of) };
  });

/**
 * Several parts of one cloth, in the lengths to buy: all that can be laid out together is, where that takes less than one
 * after the other, and where one is cut as it lies it still takes no more than its pieces need.
 */
export const planTogether = (
  book: WorksheetBook,
  parts: Part[],
  plan: Planner,
  called: string,
): { lengths: Length[]; laid?: ReturnType<typeof laidOut> } => {
  const apart = lengthsOf(
    book,
    parts.map((part) => ({ parts: [part], need: part.need })),
  );
  const cut = parts.filter(({ pieces }) => pieces.length);
  if (parts.length < 2 || !cut.length) return { lengths: apart };
  const pieces = cut.flatMap(({ pieces }) => pieces);
  const cloth = { width: least(...cut.map(({ width }) => width)) };
  const planned = plan(pieces, cloth);
  if (typeof planned === 'number')
    book.notes.push(`${called}: ${PLANNING.toLowerCase()}, to see whether its parts fit together on less.`);
  if (typeof planned === 'number' || !planned.ok || !canBeCut(pieces, cloth, planned))
    return { lengths: apart };

  const need = planned.length.mul(most(ONE, ...cut.map(({ washed }) => washed)));
  const others = parts.filter(({ pieces }) => !pieces.length);
  const lengths = lengthsOf(book, [
    { parts: cut, need },
    ...others.map((part) => ({ parts: [part], need: part.need })),
  ]);
  const bought = (lengths: Length[]): Exact =>
    sum(lengths.map(({ need }) => toStep(need, book.values.increment)));
  const less = bought(apart).compare(bought(lengths)) || needOf(apart).compare(needOf(lengths));
  if (less <= 0) return { lengths: apart };
  const names = cut.flatMap(({ names }) => names);
  return { lengths, laid: laidOut(planned, cloth, names) };
};
