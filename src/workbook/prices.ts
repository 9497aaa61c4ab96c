import { isCurrency } from '../ledger/currency.js';
import { readField, type Field, type Label } from '../ledger/field.js';
import { moneyField } from '../ledger/kinds.js';
import { Money } from '../ledger/purchase.js';
import { refuse, unlessRefused } from '../ledger/refusal.js';
import { sayOfShop } from '../ledger/shop.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import type { Price, WorkbookFabric, WorkbookItem, WorkbookPart } from './input.js';
import { say } from './sayings.js';
import type { WorksheetLedger } from './shape.js';

/** What was written; what cannot be read is named in a note, as of this, and left out. */
export const tried = <T>(ledger: WorksheetLedger, of: Message, read: () => T): T | undefined =>
  unlessRefused(read, ({ problem }) => {
    ledger.note(sayOfShop('about', { what: of, says: problem }));
    return undefined;
  });

/** Reads what was written in a field. */
export const readWritten = <T>(
  ledger: WorksheetLedger,
  field: Field<T>,
  written: unknown,
  what: Label,
): T | undefined => readField(field, written, ledger.style, what);

const money = moneyField();

/** The currency of a price that a calculator has read. None if the author wrote something that is not a currency. */
const currencyOf = ({ currency }: Money): string | undefined =>
  currency && isCurrency(currency) ? currency.toUpperCase() : undefined;

/** The number of a price, which is in the worksheet's currency. Throws a `Refusal`. */
const readPrice = (ledger: WorksheetLedger, price: Price): Exact | undefined => {
  if (!(price instanceof Money)) {
    ledger.sameCurrency(price.written);
    return readWritten(ledger, money, price.written, say('aPrice'));
  }
  const here = ledger.currency?.toUpperCase();
  const own = currencyOf(price);
  return here && own && own !== here ? refuse(say('pricedInOther', { price, here })) : price.value;
};

/** The price, if there is one and it can be read. */
export const priceOf = (
  ledger: WorksheetLedger,
  price: Price | undefined,
  what: Message,
): Exact | undefined => price && tried(ledger, say('priceOf', { what }), () => readPrice(ledger, price));

/** All on the list that may have a price. */
interface Priced {
  fabrics: Pick<WorkbookFabric, 'price'>[];
  parts: Pick<WorkbookPart, 'price'>[];
  items: Pick<WorkbookItem, 'cost'>[];
}

/** If no currency is given, takes the one that any price names, for all of them. */
export const adoptCurrency = (ledger: WorksheetLedger, { fabrics, parts, items }: Priced): void => {
  for (const { price } of fabrics) ledger.adopt(price);
  for (const price of [...parts.map((part) => part.price), ...items.map(({ cost }) => cost)])
    if (price instanceof Money) ledger.currency ??= currencyOf(price);
    else ledger.adopt(price?.written);
};
