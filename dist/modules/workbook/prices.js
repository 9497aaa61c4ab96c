import { isCurrency } from '../ledger/currency.js';
import { readField } from '../ledger/field.js';
import { moneyField } from '../ledger/kinds.js';
import { Money } from '../ledger/purchase.js';
import { unlessRefused, refuse } from '../ledger/refusal.js';
import { sayOfShop } from '../ledger/shop.js';
import { say } from './sayings.js';

/** What was written; what cannot be read is named in a note, as of this, and left out. */
const tried = (ledger, of, read) => unlessRefused(read, ({ problem }) => {
    ledger.note(sayOfShop('about', { what: of, says: problem }));
    return undefined;
});
/** Reads what was written in a field. */
const readWritten = (ledger, field, written, what) => readField(field, written, ledger.style, what);
const money = moneyField();
/** The currency of a price that a calculator has read. None if the author wrote something that is not a currency. */
const currencyOf = ({ currency }) => currency && isCurrency(currency) ? currency.toUpperCase() : undefined;
/** The number of a price, which is in the worksheet's currency. Throws a `Refusal`. */
const readPrice = (ledger, price) => {
    if (!(price instanceof Money)) {
        ledger.sameCurrency(price.written);
        return readWritten(ledger, money, price.written, say('aPrice'));
    }
    const here = ledger.currency?.toUpperCase();
    const own = currencyOf(price);
    return here && own && own !== here ? refuse(say('pricedInOther', { price, here })) : price.value;
};
/** The price, if there is one and it can be read. */
const priceOf = (ledger, price, what) => price && tried(ledger, say('priceOf', { what }), () => readPrice(ledger, price));
/** If no currency is given, takes the one that any price names, for all of them. */
const adoptCurrency = (ledger, { fabrics, parts, items }) => {
    for (const { price } of fabrics)
        ledger.adopt(price);
    for (const price of [...parts.map((part) => part.price), ...items.map(({ cost }) => cost)])
        if (price instanceof Money)
            ledger.currency ??= currencyOf(price);
        else
            ledger.adopt(price?.written);
};

export { adoptCurrency, priceOf, readWritten, tried };
