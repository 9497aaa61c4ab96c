import { exact, most, downTo } from '../measure/exact.js';
import { sayings } from '../measure/message.js';
import { stepAbove } from '../measure/shop.js';
import { INCHES } from '../measure/units.js';
import { STEPS, STEP } from '../trade/conventions.js';
import { shrinkageField } from './cloth.js';
import { currencyField, moneyField, stepField } from './kinds.js';
import { enoughFor, ofCloth } from './purchase.js';
import { Quantity, inches } from './quantity.js';

/** How the cloth is washed, sold and priced. */
const shopFields = {
    shrinkage: shrinkageField,
    increment: stepField({ initial: STEP, offered: STEPS, more: true }),
    price: moneyField(),
    currency: currencyField(),
};
const sayOfShop = sayings();
/** Less than this to spare calls for a warning. Common practice, no source. */
const SMALL_SPARE = exact(1);
/** A warning, where so little is left of so much that a crooked cut would leave the reader short. */
const spareOf = (need, bought, step) => {
    const spare = bought.sub(need);
    if (need.lte(0) || spare.gte(SMALL_SPARE))
        return [];
    const next = enoughFor(stepAbove(bought, step), step);
    return [spare.gt(0) ? sayOfShop('onlyToSpare', { spare, next }) : sayOfShop('nothingToSpare', { next })];
};
/** So much cloth as the shop cuts for this need. */
const cutFor = (ledger, need) => need.upToLeast(ledger.values.increment.sizes.map((size, at) => ledger.entry('increment', at, size)));
/** So many inches, counted in what a price is of: yards, or metres where the shop's step is metric. */
const countedIn = (length, { unit }) => length.over(inches(INCHES[unit === 'm' ? 'm' : 'yd']));
/** Rounds cloth up to the shop's step, with its rows (need, buy, spare, cost), and warns of a small spare. */
const buyCloth = (ledger, fabric, about = {}) => {
    ledger.given('increment');
    const step = ledger.values.increment;
    const buy = enoughFor(fabric.value, step);
    if (ledger.input.shared)
        ledger.note(sayOfShop('boughtTogether'));
    else
        ledger.notes.push(...spareOf(fabric.value, buy.inches, step));
    const need = ledger.row('fabric', fabric, about);
    const less = most(...step.sizes.map((size) => downTo(fabric.value, size)));
    const below = less.lt(fabric.value) ? ofCloth(less, step) : undefined;
    ledger.row('buy', buy, {
        how: sayOfShop('upToStep', { need, below, step: ledger.stated('increment'), unit: step.unit }),
        formula: cutFor(ledger, need),
    });
    const bought = new Quantity(buy.inches, 'length', 'row', [], 'buy');
    const spare = bought.minus(need);
    ledger.row('spare', spare);
    const { price } = ledger.inputs;
    if (!price)
        return { buy, fabric: fabric.value, spare: spare.value };
    // A price is of what the row counts in, unless that is inches.
    const amount = step.unit === 'in' ? countedIn(bought, step) : new Quantity(buy.amount, 'number', 'row', [], 'buy');
    costOf(ledger, amount, buy, price, ['buy', 'price']);
    return { buy, fabric: fabric.value, spare: spare.value };
};
/** Adds the cost of so much, at this price. */
const costOf = (ledger, amount, bought, price, from) => {
    const formula = amount.times(price).inCoins(ledger.coin);
    ledger.cost = ledger.priced(formula.value);
    const how = sayOfShop('costOf', { bought, price: ledger.priced(price.value) });
    ledger.row('cost', ledger.cost, { how, from, formula });
};

export { SMALL_SPARE, buyCloth, costOf, countedIn, cutFor, sayOfShop, shopFields, spareOf };
