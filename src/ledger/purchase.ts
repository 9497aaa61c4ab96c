import { exact, sum, type Exact } from '../measure/exact.js';
import { decimal } from '../measure/format.js';
import type { Message } from '../measure/message.js';
import { toStep, type Step } from '../measure/shop.js';
import { toUnit } from '../measure/units.js';

/** What an amount is counted in: a unit of length, or pieces. */
export type PurchaseUnit = Step['unit'] | 'package' | 'sheet';

/** An amount to buy, already rounded up to a step the shop cuts. */
export class Purchase {
  constructor(
    readonly inches: Exact,
    /** In its unit. */
    readonly amount: Exact,
    readonly unit: PurchaseUnit,
    /** What it is called, where amount and unit do not say it all. */
    readonly called?: Message,
  ) {}
}

/** Cloth of this length, which is on a step. */
export const ofCloth = (inches: Exact, { unit }: Step): Purchase =>
  new Purchase(inches, toUnit(inches, unit), unit);

/** Cloth that is enough for this length. */
export const enoughFor = (need: Exact, step: Step): Purchase => ofCloth(toStep(need, step), step);

/** Several lengths bought together, as one amount. */
export const allOf = (purchases: Purchase[], step: Step): Purchase =>
  ofCloth(sum(purchases.map(({ inches }) => inches)), step);

/** An amount of money as it is paid, or a price. */
export class Money {
  constructor(
    readonly value: Exact,
    /** ISO 4217; a bare number where it is undefined. */
    readonly currency: string | undefined,
    /** How many decimals the currency has. */
    readonly decimals: number,
  ) {}

  /** Its value as a decimal number: `12.50`; a price of less than a coin keeps what it has. */
  get isWholeCoins(): boolean {
    return exact(this.value.valueOf().toFixed(this.decimals)).equals(this.value);
  }

  /** The same as plain data: `"12.50"`. */
  get amount(): string {
    return this.isWholeCoins ? this.value.valueOf().toFixed(this.decimals) : decimal(this.value, 6);
  }
}

/** One line of a cut list: so many pieces of one size, on the ruler's marks. */
export class Cut {
  constructor(
    readonly count: number,
    readonly piece: Message,
    readonly width: Exact,
    readonly length: Exact,
  ) {}
}
