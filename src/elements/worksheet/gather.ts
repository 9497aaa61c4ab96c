import { PLANNING } from '../../reckon/cutting.js';
import type { WorksheetInput } from '../../reckon/worksheet.js';
import type { QuiltSheet } from '../../sheet/sheet.js';
import type { Fabrics } from './fabrics.js';
import { lettersOf, takesOf } from './part.js';
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

/** What all parts take from which fabric, what of it is bought by the piece, and every piece to cut. */
export const gather = (parts: QuiltSheet[], fabrics: Fabrics): { gathered: Gathered; pieces: Piece[] } => {
  const takes = parts.flatMap(takesOf);
  return {
    pieces: takes.flatMap(({ fabric: letter, title, cuts }) =>
      cuts.map((cut) => ({ letter, name: letter ? fabrics.nameOf(letter) : title, title, cut })),
    ),
    gathered: {
      troubles: fabrics.troubles,
      unfinished: parts.flatMap(whyNot),
      named: parts.flatMap(lettersOf),
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
