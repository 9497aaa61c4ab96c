import { downTo, exact, most, type Exact } from '../measure/exact.js';
import { sayings, type Message } from '../measure/message.js';
import { stepAbove, type Step } from '../measure/shop.js';
import { INCHES } from '../measure/units.js';
import { STEP, STEPS } from '../trade/conventions.js';
import { shrinkageField } from './cloth.js';
import type { Field, Label } from './field.js';
import { currencyField, moneyField, stepField } from './kinds.js';
import type { Ledger } from './ledger.js';
import { allOf, enoughFor, ofCloth, Purchase, type Money } from './purchase.js';
import { inches, Quantity, type Stated } from './quantity.js';

/** How the cloth is washed, sold and priced. */
export const shopFields = {
  shrinkage: shrinkageField,
  increment: stepField({ initial: STEP, followsReader: true, offered: STEPS, more: true }),
  price: moneyField(),
  currency: currencyField(),
};

export interface ShopSayings {
  /** A message about one thing of several: `Fabric A: …`. */
  about: { what: Label; says: Message };
  onlyToSpare: { spare: Exact; next: Purchase };
  nothingToSpare: { next: Purchase };
  boughtTogether: undefined;
  /** How the amount to buy was got: the need, rounded up to a step of the shop. `below` is the step before, which is not enough. */
  upToStep: { need: Quantity; below: Purchase | undefined; step: Stated; unit: Step['unit'] };
  /** Several amounts as one: several cloths, or cloth by length and sheets of each kind. */
  boughtOfAll: { buys: Purchase[] };
  eachUpToStep: { step: Stated };
  costOf: { bought: Purchase | Message; price: Money };
}

export const sayOfShop = sayings<ShopSayings>();

/** The rows of what is bought. */
export type ShopRow = 'fabric' | 'buy' | 'spare' | 'cost';

/** The ledger of a calculator that buys by length. */
export type ShopLedger = Ledger<{ increment: Field<Step>; price: Field<Exact | undefined> }, ShopRow>;

/** If less than this is left over, the reader gets a warning. Common practice, no source. */
export const SMALL_SPARE = exact(1);

/** Warns if so little is left over that one crooked cut would be too much. */
export const spareOf = (need: Exact, bought: Exact, step: Step): Message[] => {
  const spare = bought.sub(need);
  if (need.lte(0) || spare.gte(SMALL_SPARE)) return [];
  const next = enoughFor(stepAbove(bought, step), step);
  return [spare.gt(0) ? sayOfShop('onlyToSpare', { spare, next }) : sayOfShop('nothingToSpare', { next })];
};

/** How much cloth to buy for a need, without rows or warnings. */
export interface Bought {
  buy: Purchase;
  /** What is needed, before it is rounded up. */
  fabric: Exact;
  spare: Exact;
}

interface SteppedLedger {
  values: { increment: Step };
  entry(key: 'increment', at: number, value: Exact): Quantity;
}

/** The cloth that the shop cuts for this need. */
export const cutFor = (ledger: SteppedLedger, need: Quantity): Quantity =>
  need.upToLeast(ledger.values.increment.sizes.map((size, at) => ledger.entry('increment', at, size)));

/** A length, counted in what a price is for: yards, or metres if the shop's step is metric. */
export const countedIn = (length: Quantity, { unit }: Step): Quantity =>
  length.over(inches(INCHES[unit === 'm' ? 'm' : 'yd']));

/** Several amounts as one that names them all, and counts as this number. */
export const naming = (buys: Purchase[], { inches, amount, unit }: Purchase): Purchase =>
  new Purchase(inches, amount, unit, sayOfShop('boughtOfAll', { buys }));

/** How the need was got, what its row is called, and the inputs that it depends on. If it is several cloths, what is bought of each. */
interface AboutCloth {
  how?: Quantity | Message;
  label?: Message | undefined;
  from?: readonly string[];
  each?: Purchase[];
}

/** Rounds cloth up to the shop's step. Adds the rows (need, buy, spare, cost), and warns if little is left over. */
export const buyCloth = (
  ledger: ShopLedger,
  fabric: Quantity,
  { each, ...about }: AboutCloth = {},
): Bought => {
  ledger.given('increment');
  const step = ledger.values.increment;
  const buy = each ? naming(each, allOf(each, step)) : enoughFor(fabric.value, step);
  if (ledger.input.shared) {
    if (fabric.value.gt(0)) ledger.note(sayOfShop('boughtTogether'));
  } else ledger.notes.push(...spareOf(fabric.value, buy.inches, step));
  const need = ledger.row('fabric', fabric, about);
  const stated = ledger.stated('increment');
  if (each) ledger.row('buy', buy, { how: sayOfShop('eachUpToStep', { step: stated }) });
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
  if (!price) return { buy, fabric: fabric.value, spare: spare.value };
  // A price is for the unit that the row counts in, unless that is inches.
  const amount =
    step.unit === 'in' ? countedIn(bought, step) : new Quantity(buy.amount, 'number', 'row', [], 'buy');
  costOf(ledger, amount, buy, price, ['buy', 'price']);
  return { buy, fabric: fabric.value, spare: spare.value };
};

/** Adds the row of the cost, at this price. */
export const costOf = (
  ledger: ShopLedger,
  amount: Quantity,
  bought: Purchase | Message,
  price: Quantity,
  from: readonly string[],
): void => {
  const formula = amount.times(price).inCoins(ledger.coin);
  ledger.cost = ledger.priced(formula.value);
  const how = sayOfShop('costOf', { bought, price: ledger.priced(price.value) });
  ledger.row('cost', ledger.cost, { how, from, formula });
};
