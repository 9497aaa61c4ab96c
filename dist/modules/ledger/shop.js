import { exact, most, downTo } from '../measure/exact.js';
import { sayings } from '../measure/message.js';
import { stepAbove } from '../measure/shop.js';
import { INCHES } from '../measure/units.js';
import { STEPS, STEP } from '../trade/conventions.js';
import { shrinkageField } from './cloth.js';
import { currencyField, moneyField, stepField } from './kinds.js';
import { allOf, enoughFor, ofCloth, Purchase } from './purchase.js';
import { Quantity, inches } from './quantity.js';

/** How the cloth is washed, sold and priced. */
const shopFields = {
    shrinkage: shrinkageField,
    increment: stepField({ initial: STEP, followsReader: true, offered: STEPS, more: true }),
    price: moneyField(),
    currency: currencyField(),
};
const sayOfShop = sayings();
/** If less than this is left over, the reader gets a warning. Common practice, no source. */
const SMALL_SPARE = exact(1);
/** Warns if so little is left over that one crooked cut would be too much. */
const spareOf = (need, bought, step) => {
    const spare = bought.sub(need);
    if (need.lte(0) || spare.gte(SMALL_SPARE))
        return [];
    const next = enoughFor(stepAbove(bought, step), step);
    return [spare.gt(0) ? sayOfShop('onlyToSpare', { spare, next }) : sayOfShop('nothingToSpare', { next })];
};
/** The cloth that the shop cuts for this need. */
const cutFor = (ledger, need) => need.upToLeast(ledger.values.increment.sizes.map((size, at) => ledger.entry('increment', at, size)));
/** A length, counted in what a price is for: yards, or metres if the shop's step is metric. */
const countedIn = (length, { unit }) => length.over(inches(INCHES[unit === 'm' ? 'm' : 'yd']));
/** Several amounts as one that names them all, and counts as this number. */
const naming = (buys, { inches, amount, unit }) => new Purchase(inches, amount, unit, sayOfShop('boughtOfAll', { buys }));
/** Rounds cloth up to the shop's step. Adds the rows (need, buy, spare, cost), and warns if little is left over. */
const buyCloth = (ledger, fabric, { each, ...about } = {}) => {
    ledger.given('increment');
    const step = ledger.values.increment;
    const buy = each ? naming(each, allOf(each, step)) : enoughFor(fabric.value, step);
    if (ledger.input.shared) {
        if (fabric.value.gt(0))
            ledger.note(sayOfShop('boughtTogether'));
    }
    else
        ledger.notes.push(...spareOf(fabric.value, buy.inches, step));
    const need = ledger.row('fabric', fabric, about);
    const stated = ledger.stated('increment');
    if (each)
        ledger.row('buy', buy, { how: sayOfShop('eachUpToStep', { step: stated }) });
    else {
        const less = most(...step.sizes.map((size) => downTo(fabric.value, size)));
        const below = less.lt(fabric.value) ? ofCloth(less, step) : undefined;
        ledger.row('buy', buy, {
            how: sayOfShop('upToStep', { need, below, step: stated, unit: step.unit }),
            formula: cutFor(ledger, need),
        });
    }
    const bought = new Quantity(buy.inches, 'length', 'row', [], 'buy');
    const spare = bought.minus(need);
    ledger.row('spare', spare);
    const { price } = ledger.inputs;
    if (!price)
        return { buy, fabric: fabric.value, spare: spare.value };
    // A price is for the unit that the row counts in, unless that is inches.
    const amount = step.unit === 'in' ? countedIn(bought, step) : new Quantity(buy.amount, 'number', 'row', [], 'buy');
    costOf(ledger, amount, buy, price, ['buy', 'price']);
    return { buy, fabric: fabric.value, spare: spare.value };
};
/** Adds the row of the cost, at this price. */
const costOf = (ledger, amount, bought, price, from) => {
    const formula = amount.times(price).inCoins(ledger.coin);
    ledger.cost = ledger.priced(formula.value);
    const how = sayOfShop('costOf', { bought, price: ledger.priced(price.value) });
    ledger.row('cost', ledger.cost, { how, from, formula });
};

export { SMALL_SPARE, buyCloth, costOf, countedIn, cutFor, naming, sayOfShop, shopFields, spareOf };
