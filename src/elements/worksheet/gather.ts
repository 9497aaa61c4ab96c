import { PLANNING } from '../../reckon/planning.js';
import type { PartInput, WorksheetInput } from '../../reckon/worksheet.js';
import { letterOf } from '../../reckon/worksheet-parts.js';
import type { QuiltSheet } from '../../face/sheet.js';
import type { Fabrics } from './fabrics.js';
import { takesOf } from './part.js';
import type { Piece } from './shopping.js';

export type Gathered = Pick<
  WorksheetInput,
  'fabrics' | 'parts' | 'items' | 'troubles' | 'unfinished' | 'named'
>;

const whyNot = ({ result: { errors }, calculator: { title } }: QuiltSheet): string[] =>
  errors
    ? [
        `${title} is not on the list yet: ${errors[0]!.message.startsWith(PLANNING) ? 'it is still being planned' : 'it has something to mend'}.`,
      ]
    : [];

/** That a name with a space was read as several letters, where one of them stands for no fabric: one may be meant. */
const splitName = (
  part: QuiltSheet,
  letters: string[],
  takes: PartInput[],
  { nameOf }: Fabrics,
): string[] => {
  const written = letterOf(part.fabric);
  const isKnown = (letter: string): boolean =>
    nameOf(letter) !== undefined || takes.some(({ fabric }) => fabric === letter);
  return part.result.errors || !/\s/.test(written) || written.includes(',') || letters.every(isKnown)
    ? []
    : [
        `${part.calculator.title}: fabric="${written}" is read as ${letters.length} fabrics, ${letters.join(' and ')}. To name one so, declare it: <quilt-fabric letter="${written}">.`,
      ];
};

/** What all parts take from which fabric, what of it is bought by the piece, and every piece to cut. */
export const gather = (parts: QuiltSheet[], fabrics: Fabrics): { gathered: Gathered; pieces: Piece[] } => {
  const taken = parts.map((part) => {
    const letters = fabrics.lettersOf(part);
    const takes = takesOf(part, letters);
    return { letters, takes, troubles: splitName(part, letters, takes, fabrics) };
  });
  const takes = taken.flatMap((part) => part.takes);
  return {
    pieces: takes.flatMap(({ fabric: letter, title, cuts }) =>
      cuts.map((cut) => ({ letter, name: letter ? (fabrics.nameOf(letter) ?? '') : title, title, cut })),
    ),
    gathered: {
      troubles: [...fabrics.troubles, ...taken.flatMap(({ troubles }) => troubles)],
      unfinished: parts.flatMap(whyNot),
      named: taken.flatMap(({ letters }) => letters),
      fabrics: fabrics.declared.map(({ letter = '', name, price, fabricWidth }) => ({
        letter,
        name,
        price,
        fabricWidth,
      })),
      parts: takes
        .filter(({ item, need }) => item === undefined && need !== '0')
        .map(({ cuts: _, ...take }) => take),
      items: takes.flatMap(({ title, fabric, item, cost }) =>
        item === undefined ? [] : { title, fabric, text: item, cost },
      ),
    },
  };
};
