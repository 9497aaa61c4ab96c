import { downTo, exact, most, type Exact } from '../measure/exact.js';
import { sayings, type Message } from '../measure/message.js';
import { stepAbove, type Step } from '../measure/shop.js';
import { INCHES } from '../measure/units.js';
import { STEP, STEPS } from '../trade/conventions.js';
import { shrinkageField } from './cloth.js';
import type { Field, Label } from './field.js';
import { currencyField, moneyField, stepField } from './kinds.js';
import type { Ledger } from './ledger.js';
import { enoughFor, ofCloth, type Money, type Purchase } from './purchase.js';
import { inches, Quantity, type Stated } from './quantity.js';

/** How the cloth is washed, sold and priced. */
export const shopFields = {
  shrinkage: shrinkageField,
  increment: stepField({ initial: STEP, offered: STEPS, more: true }),
  price: moneyField(),
  currency: currencyField(),
};

export interface ShopSayings {
  /** Something said of one thing among several: `Fabric A: …`. */
  about: { what: Label; says: Message };
  onlyToSpare: { spare: Exact; next: Purchase };
  nothingToSpare: { next: Purchase };
  boughtTogether: undefined;
  /** How the amount to buy was got: the need, in the shop's unit, up to its step; `below` is the step that is not enough. */
  upToStep: { need: Quantity; below: Purchase | undefined; step: Stated; unit: Step['unit'] };
  costOf: { bought: Purchase | Message; price: Money };
}

export const sayOfShop = sayings<ShopSayings>();

/** The rows of what is bought. */
export type ShopRow = 'fabric' | 'buy' | 'spare' | 'cost';

/** A ledger of something that is bought by length. */
export type ShopLedger = Ledger<{ increment: Field<Step>; price: Field<Exact | undefined> }, ShopRow>;

/** Less than this to spare calls for a warning. Common practice, no source. */
export const SMALL_SPARE = exact(1);

/** A warning, where so little is left of so much that a crooked cut would leave the reader short. */
export const spareOf = (need: Exact, bought: Exact, step: Step): Message[] => {
  const spare = bought.sub(need);
  if (need.lte(0) || spare.gte(SMALL_SPARE)) return [];
  const next = enoughFor(stepAbove(bought, step), step);
  return [spare.gt(0) ? sayOfShop('onlyToSpare', { spare, next }) : sayOfShop('nothingToSpare', { next })];
};

/** What is bought of so much cloth, before anything is said of it. */
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

/** So much cloth as the shop cuts for this need. */
export const cutFor = (ledger: SteppedLedger, need: Quantity): Quantity =>
  need.upToLeast(ledger.values.increment.sizes.map((size, at) => ledger.entry('increment', at, size)));

/** So many inches, counted in what a price is of: yards, or metres where the shop's step is metric. */
export const countedIn = (length: Quantity, { unit }: Step): Quantity =>
  length.over(inches(INCHES[unit === 'm' ? 'm' : 'yd']));

/** Rounds cloth up to the shop's step, with its rows (need, buy, spare, cost), and warns of a small spare. */
export const buyCloth = (
  ledger: ShopLedger,
  fabric: Quantity,
  about: { how?: Quantity | Message; label?: Message | undefined; from?: readonly string[] } = {},
): Bought => {
  ledger.given('increment');
  const step = ledger.values.increment;
  const buy = enoughFor(fabric.value, step);
  if (ledger.input.shared) ledger.note(sayOfShop('boughtTogether'));
  else ledger.notes.push(...spareOf(fabric.value, buy.inches, step));
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
  if (!price) return { buy, fabric: fabric.value, spare: spare.value };
  // A price is of what the row counts in, unless that is inches.
  const amount =
    step.unit === 'in' ? countedIn(bought, step) : new Quantity(buy.amount, 'number', 'row', [], 'buy');
  costOf(ledger, amount, buy, price, ['buy', 'price']);
  return { buy, fabric: fabric.value, spare: spare.value };
};

/** Adds the cost of so much, at this price. */
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
