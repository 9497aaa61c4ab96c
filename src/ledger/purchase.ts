import { Branded } from '../measure/brand.js';
import { exact, sum, type Exact } from '../measure/exact.js';
import { decimal } from '../measure/format.js';
import { isMessage, Message } from '../measure/message.js';
import { toStep, type Step } from '../measure/shop.js';
import { toUnit } from '../measure/units.js';

/** What an amount is counted in: a unit of length, or pieces. */
export type PurchaseUnit = Step['unit'] | 'package' | 'sheet';

/** An amount to buy, already rounded up to a step the shop cuts. */
export class Purchase extends Branded {
  override get brand(): 'purchase' {
    return 'purchase';
  }

  constructor(
    readonly inches: Exact,
    /** In its unit. */
    readonly amount: Exact,
    readonly unit: PurchaseUnit,
    /** Its name, if the amount and the unit are not enough. */
    readonly called?: Message,
  ) {
    super();
  }
}

/** Cloth of this length, which is a step of the shop already. */
export const ofCloth = (inches: Exact, { unit }: Step): Purchase =>
  new Purchase(inches, toUnit(inches, unit), unit);

/** Enough cloth for this length. */
export const enoughFor = (need: Exact, step: Step): Purchase => ofCloth(toStep(need, step), step);

/** Several lengths bought together, as one amount. */
export const allOf = (purchases: Purchase[], step: Step): Purchase =>
  ofCloth(sum(purchases.map(({ inches }) => inches)), step);

/** Whether a name says how many there are, such as `5 fat quarters`. It then has a `count`, itself or in a message inside it. */
const isCounted = ({ values }: Message): boolean =>
  Object.entries(values).some(([key, value]) => key === 'count' || (isMessage(value) && isCounted(value)));

/** The same name for a multiple of it. */
const timesMore = ({ code, values }: Message, times: number): Message => {
  const more: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(values as Record<string, unknown>)) {
    if (key === 'count' && typeof value === 'number') more[key] = value * times;
    else more[key] = isMessage(value) ? timesMore(value, times) : value;
  }
  return new Message(code, more);
};

/** A multiple of something that is bought by the piece. Undefined if its name has no `count`. */
export const manyOf = ({ inches, amount, unit, called }: Purchase, times: number): Purchase | undefined =>
  called && isCounted(called)
    ? new Purchase(inches.mul(times), amount.mul(times), unit, timesMore(called, times))
    : undefined;

/** An amount of money as it is paid, or a price. */
export class Money extends Branded {
  override get brand(): 'money' {
    return 'money';
  }

  constructor(
    readonly value: Exact,
    /** ISO 4217. If it is undefined, money is a number alone. */
    readonly currency: string | undefined,
    /** How many decimals the currency has. */
    readonly decimals: number,
  ) {
    super();
  }

  /** Its value as a decimal number: `12.50`. A price with parts of a coin keeps all its decimals. */
  get isWholeCoins(): boolean {
    return exact(this.value.valueOf().toFixed(this.decimals)).equals(this.value);
  }

  /** The same as plain data: `"12.50"`. */
  get amount(): string {
    return this.isWholeCoins ? this.value.valueOf().toFixed(this.decimals) : decimal(this.value, 6);
  }
}

/** One line of a cut list: equal pieces, in sizes on the ruler's marks. */
export class Cut extends Branded {
  override get brand(): 'cut' {
    return 'cut';
  }

  constructor(
    readonly count: number,
    readonly piece: Message,
    readonly width: Exact,
    readonly length: Exact,
  ) {
    super();
  }
}
