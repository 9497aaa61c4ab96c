import type { Listing } from '../ledger/listing.js';
import { byWeek } from './pool.js';
import { namedOf } from './shopping.js';
import { say } from './sayings.js';
import type { SheetsOfPart, ShoppingItem, WorksheetAnswer } from './shape.js';

/** A part's share of the sheets of one fabric. */
interface Share extends SheetsOfPart {
  of: ShoppingItem;
}

/**
 * What each part cuts from which sheets, and how many of them it opens: week by week, and in a week in the order of the parts.
 * Undefined if no fabric in sheets is for several parts.
 */
export const weekByWeek = ({ items }: Pick<WorksheetAnswer, 'items'>): Listing | undefined => {
  const inSheets = items.filter(({ weeks }) => weeks);
  if (!inSheets.some(({ parts = [] }) => parts.length > 1)) return undefined;
  const shares = inSheets.flatMap((of) => (of.weeks ?? []).map((share): Share => ({ ...share, of })));
  const kinds = new Set(inSheets.map(({ used }) => used.sheet?.kind ?? 'sheet'));
  const [kind = 'sheet'] = kinds;
  return {
    caption: say('sheetsByWeek', {
      kind: kinds.size > 1 ? 'sheet' : kind,
      hasWeeks: shares.some(({ week }) => week !== undefined),
    }),
    toCut: true,
    head: [say('forHead'), say('fabricHead'), say('piecesHead'), say('numbersHead'), say('newHead')],
    rows: shares
      .sort(byWeek)
      .map(({ part, of, pieces, from, opened }) => [
        part,
        namedOf({ letter: of.fabric, name: of.name }),
        say('piecesOfPart', { pieces }),
        from.length ? say('sheetNumbers', { numbers: from }) : undefined,
        opened,
      ]),
  };
};
