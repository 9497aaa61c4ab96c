import { exact, isExact, type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import { Message, sayings } from '../measure/message.js';
import { toCoin } from '../measure/shop.js';
import { numbersIn, unitsOr, writesComma } from '../measure/units.js';
import { currencyIn, isIn } from './currency.js';
import {
  initialOf,
  isBlank,
  missing,
  standing,
  readField,
  say as sayOfInput,
  textOf,
  type Fields,
  type Label,
  type Values,
} from './field.js';
import { lengthField } from './lengths.js';
import { Money } from './purchase.js';
import { Quantity, Stated } from './quantity.js';
import { refuse, unlessRefused, type Issue, type Refusal } from './refusal.js';
import { ReckonedRow, type GivenRow, type Row, type RowValue } from './row.js';

/**
 * What goes into a calculator: its attributes' names in camelCase, each a string as a person writes it or a number; a length
 * without a unit is in `units`, be it a string or a number. `measured` holds values typed over reckoned rows, by row id.
 */
export type Input<F extends Fields = Fields> = { [K in keyof F]?: unknown } & {
  /** What a bare number is in and what the working is shown in: `in` (default) or `cm`. */
  units?: unknown;
  /** What the working is shown in, where that is not `units`: `in` or `cm`. */
  shown?: unknown;
  /** Usable widths of the cloth that its parts are cut from, one for each in turn, where they are not all `fabricWidth`. */
  fabricWidths?: unknown;
  /** It is one of several parts whose cloth is added up by fabric before it is bought. Default false. */
  shared?: unknown;
  /** BCP 47 language of the words; decides the decimal comma and how money is written too. Default `en`. */
  lang?: unknown;
  measured?: Record<string, unknown> | undefined;
};

/** The inputs that can be reckoned with, each as the row that it stands in. */
export type Quantities<F extends Fields> = {
  [K in keyof F]: [Values<F>[K]] extends [Exact | number]
    ? Quantity
    : [Values<F>[K]] extends [Exact | number | undefined]
      ? Quantity | undefined
      : undefined;
};

/** What was reckoned, or why it could not be. */
export interface Reckoning<Own extends object = object> {
  /** Empty where all is well. */
  issues: Issue[];
  /** The calculator's own result; undefined where there are issues. */
  own: Own | undefined;
  /** In the order of the sum; the inputs' alone where there are issues. */
  rows: Row[];
  /** What the reader should know about this answer. */
  notes: Message[];
  cost: Money | undefined;
  /** What a yard or a metre costs, where that was given. */
  price: Money | undefined;
  /** How numbers are shown, and the language that was asked for. */
  style: Style;
  lang: string;
}

export interface MeasuredSayings {
  measuredLess: { what: Label; measured: Exact; reckoned: Exact };
}
const say = sayings<MeasuredSayings>();

/**
 * How a row was got, where its own value does not say it; what it is called, where its id does not; further rows it is from;
 * its value as a formula, where that is no quantity.
 */
interface About {
  how?: Quantity | Message;
  label?: Message | undefined;
  from?: readonly string[];
  formula?: Quantity;
}

const KINDS = { length: 'length', percent: 'percent', count: 'count', money: 'money' } as const;

/**
 * The ledger a calculator writes its working into: it reads the inputs, keeps the rows in order, and gives every number back
 * with the row it stands in, so that what is reckoned with it knows where it came from. `F` are its inputs, `R` the ids of
 * its other rows.
 */
export class Ledger<F extends Fields = Fields, R extends string = string> {
  readonly input: Input<F>;
  readonly style: Style;
  readonly lang: string;
  readonly values: Values<F>;
  readonly inputs: Quantities<F>;
  readonly issues: Issue[] = [];
  readonly rows: Row[] = [];
  readonly notes: Message[] = [];
  cost: Money | undefined;
  /** What prices are in: as given, or as the first price names it. */
  currency: string | undefined;

  constructor(
    readonly fields: F,
    given: Input<F> | null,
  ) {
    const input: Input<F> = given ?? {};
    this.input = input;
    this.lang = textOf(input.lang) || 'en';
    const bare = unitsOr(input.units, 'in');
    this.style = { units: unitsOr(input.shown, bare), comma: writesComma(this.lang), bare };
    if (!isBlank(input.units) && input.units !== bare)
      this.issues.push({ input: 'units', ...sayOfInput('notUnits') });
    const values: Record<string, unknown> = {};
    const inputs: Record<string, unknown> = {};
    for (const key of Object.keys(fields))
      this.#collect(() => (values[key] = readField(fields[key]!, input[key], this.style, key)), key);
    this.values = values as Values<F>;
    for (const key of Object.keys(fields)) inputs[key] = this.#quantity(key, values[key]);
    this.inputs = inputs as Quantities<F>;
    this.currency = textOf(values['currency']) || undefined;
    for (const key of Object.keys(fields))
      if (fields[key]!.kind === 'money')
        this.#collect(() => {
          this.adopt(input[key]);
          this.sameCurrency(input[key]);
        }, key);
  }

  #quantity(key: string, value: unknown): Quantity | undefined {
    const { kind } = this.fields[key]!;
    if (!(kind in KINDS)) return undefined;
    const number = typeof value === 'number' ? exact(value) : value;
    return isExact(number)
      ? new Quantity(number, KINDS[kind as keyof typeof KINDS], 'row', [], key)
      : undefined;
  }

  /** An entry of an input that holds several lengths, as its row. */
  entry(key: keyof F & string, at: number, value: Exact): Quantity {
    return new Quantity(value, 'length', 'row', [], key, at);
  }

  /** Where no currency is given, the first that one of these prices names holds. */
  adopt(...prices: unknown[]): void {
    for (const price of prices) this.currency ??= currencyIn(textOf(price), this.lang);
  }

  /** Refuses a price that names another currency. */
  sameCurrency(price: unknown): void {
    const { currency } = this;
    const text = textOf(price);
    if (!currency || isIn(text, currency, this.lang)) return;
    const named = currencyIn(text, this.lang) ?? '';
    refuse(sayOfInput('otherCurrency', { text: text.trim(), named, here: currency.toUpperCase() }));
  }

  /** Does this; what is refused in it is kept as an issue, of that input where the refusal names none. */
  #collect(work: () => void, input = ''): void {
    unlessRefused(work, (refusal) => this.issue(refusal.problem, refusal.input || input));
  }

  issue({ code, values }: Message, input: string): void {
    this.issues.push({ input, code, values });
  }

  /** Says that the inputs cannot go together. */
  refuse(input: (keyof F & string) | R, problem: Message): never {
    return refuse(problem, input);
  }

  /** Says of what is refused in here which input is to blame, and of what. */
  blame<T>(input: (keyof F & string) | R, work: () => T, of = (problem: Message): Message => problem): T {
    return unlessRefused(work, ({ problem }: Refusal) => refuse(of(problem), input));
  }

  /** Says which of these are missing: inputs that are optional only beside another. */
  require(...keys: (keyof F & string)[]): void {
    for (const key of keys)
      if (isBlank(this.input[key])) this.issue(missing(this.fields[key]!, this.style, key), key);
  }

  /** An input that is optional only beside another, and has to be here: its row. */
  needed<K extends keyof F & string>(key: K): NonNullable<Quantities<F>[K]> {
    return this.inputs[key] ?? refuse(missing(this.fields[key]!, this.style, key), key);
  }

  note(message: Message): void {
    this.notes.push(message);
  }

  /** Adds the rows of these inputs, or of all that have none yet. */
  given(...keys: (keyof F & string)[]): void {
    for (const key of keys.length ? keys : Object.keys(this.fields))
      if (!this.rows.some(({ id }) => id === key)) this.rows.push(this.#givenRow(key));
  }

  #givenRow(key: string): GivenRow {
    const field = this.fields[key]!;
    const values: Record<string, unknown> = this.values;
    return {
      role: 'given',
      id: key,
      // A price may have named it.
      value: key === 'currency' ? this.currency : values[key],
      written: this.input[key] ?? initialOf(field, this.style),
    };
  }

  /** What stands in an input's row, for a sentence. */
  stated(key: keyof F & string): Stated {
    const { value, written } = this.#givenRow(key);
    return new Stated(key, standing(this.fields[key]!, value, written, this.style));
  }

  /**
   * Adds a reckoned row and gives its number back as the row it stands in. Its own formula is how it was got, unless `how`
   * says more.
   */
  row<V extends RowValue>(
    id: R,
    value: V,
    { how = value instanceof Quantity ? value : NOTHING, label, from = [], formula }: About = {},
  ): V extends Quantity ? Quantity : V {
    this.rows.push(new ReckonedRow(id, value, how, label, from, formula));
    return (value instanceof Quantity ? value.inRow(id) : value) as V extends Quantity ? Quantity : V;
  }

  /** Adds a reckoned row that a person can measure and type over; gives back what holds from here on. */
  measurable(id: R, reckoned: Quantity, { how = reckoned, label, from = [] }: About = {}): Quantity {
    const row = new ReckonedRow(id, reckoned, how, label, from);
    row.role = 'measurable';
    this.rows.push(row);
    const raw = this.input.measured?.[id];
    if (isBlank(raw)) return reckoned.inRow(id);
    const what = label ?? id;
    const value = this.blame(id, () => lengthField().read(raw, this.style, what));
    row.role = 'measured';
    row.reckoned = reckoned;
    row.value = new Quantity(value, 'length');
    // It may have been measured before something else changed.
    if (value.lt(reckoned.value.mul(NEARLY)))
      this.note(say('measuredLess', { what, measured: value, reckoned: reckoned.value }));
    return row.value.inRow(id);
  }

  #coin: number | undefined;

  /** How many decimals the currency has; a bare price has cents. */
  get #decimals(): number {
    const { currency } = this;
    return (this.#coin ??= currency
      ? (numbersIn('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2)
      : 2);
  }

  /** The smallest coin. */
  get coin(): Exact {
    return exact(1, 10 ** this.#decimals);
  }

  /** So much money as can be paid: to the cent, the yen, the fils. */
  paid(value: Exact): Money {
    return this.priced(toCoin(value, this.#decimals));
  }

  /** A price, which may be finer than a coin. */
  priced(value: Exact): Money {
    return new Money(value, this.currency, this.#decimals);
  }

  /** Runs a calculator's own part and completes its result, or gives back what was wrong. */
  finish<Own extends object>(work: () => Own): Reckoning<Own> {
    let own: Own | undefined;
    if (!this.issues.length) this.#collect(() => (own = work()));
    const { issues, notes, cost, style, lang } = this;
    const rows = own ? this.rows : Object.keys(this.fields).map((key) => this.#givenRow(key));
    const values: Record<string, unknown> = this.values;
    const price = isExact(values['price']) ? this.priced(values['price']) : undefined;
    return { issues, own, rows, notes, cost, price, style, lang };
  }
}

/** Measured at less than this of what is reckoned, it may be a slip. */
const NEARLY = exact(19, 20);
const NOTHING = new Message('', {});
