import type { ListCell, Listing } from '../ledger/listing.js';
import { shortFirst } from '../ledger/quilt.js';
import type { Style } from '../measure/format.js';
import type { Message } from '../measure/message.js';
import { isSame } from './flow.js';
import type { PieceOfPart } from './gather.js';
import { leastLeftover } from './leftovers.js';
import { say } from './sayings.js';
import type { Leftover, WorksheetAnswer } from './shape.js';
import { byLetter, namedOf } from './shopping.js';

/** What one line of the list leaves. */
interface LeavingLine {
  letter: string;
  name: string;
  title: Message | undefined;
  leftovers: Leftover[];
}

const leavingLines = ({ fabrics, items }: Pick<WorksheetAnswer, 'fabrics' | 'items'>): LeavingLine[] =>
  [
    ...fabrics.map(({ letter, name, parts: [first], leftovers }) => ({
      letter,
      name,
      title: first?.title,
      leftovers,
    })),
    ...items.flatMap(({ fabric: letter, name, title, leftovers }) =>
      leftovers ? [{ letter, name, title, leftovers }] : [],
    ),
  ].sort(byLetter);

/** Whether cloth is bought of which something may be left. */
export const mayLeave = ({ fabrics, items }: Pick<WorksheetAnswer, 'fabrics' | 'items'>): boolean =>
  !!fabrics[0] || items.some(({ sheets }) => sheets);

const captionFor = (style: Style): Message => say('leftoversFrom', { least: leastLeftover(style) });

/** What is left over of each fabric. */
export const leftoverList = (answer: WorksheetAnswer, style: Style): Listing => ({
  caption: captionFor(style),
  head: [say('fabricHead'), say('leftoversHead')],
  rows: leavingLines(answer).map((line) => [
    line.letter ? namedOf(line) : line.title,
    say('leaves', {
      pieces: line.leftovers.map((leftover) => ({ count: leftover.count, ...shortFirst(leftover) })),
    }),
  ]),
});

/** The same for a spreadsheet, a row for each size. */
export const leftoverCells = (answer: WorksheetAnswer, style: Style): ListCell[][] =>
  mayLeave(answer)
    ? [
        [captionFor(style)],
        [say('fabricHead'), say('nameHead'), say('countHead'), say('widthInHead'), say('lengthInHead')],
        ...leavingLines(answer).flatMap(({ letter, name, title, leftovers }) =>
          leftovers.map(({ count, width, length }): ListCell[] => [
            letter || title,
            name,
            count,
            width,
            length,
          ]),
        ),
        [],
      ]
    : [];

/** The cut list as it is really cut: pieces that come from what others leave may have other sizes, and another fabric. */
export const asCut = (
  pieces: PieceOfPart[],
  { fromLeftovers = [] }: Pick<WorksheetAnswer, 'fromLeftovers'>,
): PieceOfPart[] => {
  const rest = [...pieces];
  for (const { used } of fromLeftovers)
    for (const { width, length, count } of used.part.pieces) {
      const at = rest.findIndex(
        ({ letter, title, cut }) =>
          letter === used.part.fabric &&
          isSame([title, cut.width, cut.length, cut.count], [used.part.title, width, length, count]),
      );
      if (at >= 0) rest.splice(at, 1);
    }
  return [
    ...rest,
    ...fromLeftovers.flatMap(({ title, fabric: letter, name, cuts }) =>
      cuts.map((cut): PieceOfPart => ({ letter, name: letter ? name : title, title, cut })),
    ),
  ];
};
