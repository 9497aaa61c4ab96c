import { allOf, enoughFor, Purchase } from '../ledger/purchase.js';
import { sayOfShop, spareOf } from '../ledger/shop.js';
import { sum } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { titlesOf } from './parts.js';
import { say } from './sayings.js';
import type { WorksheetLedger } from './shape.js';
import type { Length } from './together.js';

/** A length, and what is bought for it. */
export interface BoughtLength extends Length {
  buy: Purchase;
}

/** What to buy of one cloth, and in how many lengths. */
export interface BoughtLengths {
  buy: Purchase;
  lengths: BoughtLength[];
}

/** The lengths to buy of one cloth, rounded up. Each warns if little is left over. */
export const buyLengths = (ledger: WorksheetLedger, lengths: Length[], cloth: Message): BoughtLengths => {
  const { increment } = ledger.values;
  const isOne = lengths.length === 1;
  const bought = lengths.map((length) => {
    const buy = enoughFor(length.need, increment);
    const what = isOne ? cloth : say('lengthFor', { cloth, titles: titlesOf(length.parts) });
    if (!ledger.input.shared)
      for (const says of spareOf(length.need, buy.inches, increment))
        ledger.note(sayOfShop('about', { what, says }));
    return { ...length, buy };
  });
  const buys = bought.map(({ buy }) => buy);
  const all = allOf(buys, increment);
  const buy = isOne ? all : new Purchase(all.inches, all.amount, all.unit, say('allOf', { buys }));
  return { buy, lengths: bought };
};

/** Says what each of the two lengths is for, and how long one length for all would be. */
export const noteLengths = (
  ledger: WorksheetLedger,
  cloth: Message,
  lengths: BoughtLengths['lengths'],
): void => {
  const one = enoughFor(sum(lengths.map(({ need }) => need)), ledger.values.increment);
  const each = lengths.map(({ parts, buy }) => ({ buy, titles: titlesOf(parts) }));
  ledger.note(say('twoLengths', { cloth, lengths: each, one }));
};
