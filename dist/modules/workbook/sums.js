import { Message } from '../measure/message.js';
import { sum } from '../measure/exact.js';
import { total, Quantity } from '../ledger/quantity.js';
import { priceOf } from './prices.js';
import { say } from './sayings.js';

const wordsOf = (buy) => buy instanceof Message ? buy : say('toBuy', { buy, width: undefined });
/** What is bought by the piece, and what it costs. */
const countItems = (ledger, items, declared) => items.map(({ title, fabric, buy, price: ofOne, cost }) => {
    const text = wordsOf(buy);
    const price = priceOf(ledger, cost, text);
    const paid = price && ledger.paid(price);
    const name = declared.find(({ letter }) => letter === fabric)?.name ?? '';
    const used = { buy: buy instanceof Message ? undefined : buy };
    return {
        item: {
            title,
            fabric,
            name,
            text,
            price: paid && ofOne && ledger.priced(ofOne.value),
            cost: paid,
            used,
        },
        called: fabric ? say('itemOf', { item: text, letter: fabric }) : text,
        paid,
    };
});
const allOf = (costs) => costs.flatMap((cost) => cost ?? []);
/** The total, with its rows and a list of what has no price. */
const totals = (ledger, lines, items, isUnfinished) => {
    const { kits } = ledger.values;
    const counted = [...lines, ...items];
    const things = counted.filter(({ paid }) => !paid).map(({ called }) => called);
    if (things.length === counted.length)
        return { kits: kits ? { count: kits } : undefined, soFar: isUnfinished || undefined };
    if (things.length)
        ledger.note(say('leavesOut', { things }));
    const costs = allOf(counted.map(({ paid }) => paid));
    const soFar = isUnfinished || things.length > 0;
    const total$1 = ledger.row('total', ledger.paid(sum(costs.map(({ value }) => value))), {
        label: say('totalRow', { isKit: !!kits, soFar }),
        how: say('sumOf', { costs }),
        formula: total([
            ...lines.flatMap(({ costs }) => costs ?? []),
            ...allOf(items.map(({ paid }) => paid)).map(({ value }) => new Quantity(value, 'money')),
        ]),
    });
    const sums = { total: total$1, soFar: soFar || undefined };
    if (!kits)
        return sums;
    return { ...sums, kits: { count: kits, each: total$1, cost: kitsCost(ledger, kits, lines, items, soFar) } };
};
/** What all kits cost in whole bolts, with the row. Undefined if a bolt is too short for some cloth. */
const kitsCost = (ledger, kits, lines, items, soFar) => {
    // If a bolt is too short for some cloth, that cloth has no number of bolts.
    if (!lines.every(({ line: { bolts, buy } }) => bolts ?? buy.inches.equals(0)))
        return undefined;
    const ofBolts = sum(allOf(lines.map(({ boltCost }) => boltCost)).map(({ value }) => value));
    const ofItems = sum(allOf(items.map(({ paid }) => paid)).map(({ value }) => value));
    const whole = ledger.paid(ofBolts.add(ofItems.mul(kits)));
    const each = ledger.paid(whole.value.div(kits));
    return ledger.row('kitCost', whole, {
        label: say('kitsRow', { kits, soFar }),
        how: say('wholeBolts', { hasItems: items.length > 0, each }),
        from: ['kits', 'bolt'],
    });
};

export { countItems, totals };
