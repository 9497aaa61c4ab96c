import { enoughFor, allOf, Purchase } from '../ledger/purchase.js';
import { spareOf, sayOfShop } from '../ledger/shop.js';
import { sum } from '../measure/exact.js';
import { titlesOf } from './parts.js';
import { say } from './sayings.js';

/** The lengths to buy of one cloth, rounded up. Each warns if little is left over. */
const buyLengths = (ledger, lengths, cloth) => {
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
const noteLengths = (ledger, cloth, lengths) => {
    const one = enoughFor(sum(lengths.map(({ need }) => need)), ledger.values.increment);
    const each = lengths.map(({ parts, buy }) => ({ buy, titles: titlesOf(parts) }));
    ledger.note(say('twoLengths', { cloth, lengths: each, one }));
};

export { buyLengths, noteLengths };
