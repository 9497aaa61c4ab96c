import { exact, isExact, type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import { Message, sayings } from '../measure/message.js';
import { decimalsOfCurrency } from '../measure/money.js';
import { toCoin } from '../measure/shop.js';
import { unitsOr, writesComma } from '../measure/units.js';
import { currencyIn, isIn } from './currency.js';
import {
  initialOf,
  isBlank,
  missing,
  standing,
  readField,
  say as sayOfInput,
  textOf,
  type Field,
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
 * What goes into a calculator: the names of its attributes in camelCase. A value is a number, or a string as people write it. A
 * length without a unit is in `units`, as a string or as a number. `measured` has the values that a reader typed over reckoned
 * rows, by row id.
 */
export type Input<F extends Fields = Fields> = { [K in keyof F]?: unknown } & {
  /** The unit of a number alone, and of the working: `in` (default) or `cm`. */
  units?: unknown;
  /** The unit of the working, if that is not `units`: `in` or `cm`. */
  shown?: unknown;
  /** Usable widths of the cloths that it uses, in order, if they are not all `fabricWidth`. */
  fabricWidths?: unknown;
  /** It is a part of a quilt, and the shopping list adds up the cloth of all parts before it rounds. Default false. */
  shared?: unknown;
  /** It is cut from several fabrics, so nothing of it is planned as if all came from one cloth. Default false. */
  apart?: unknown;
  /** BCP 47 language of the words, of the decimal comma and of money. Default `en`. */
  lang?: unknown;
  measured?: Record<string, unknown> | undefined;
};

/** The inputs that are numbers, each as its row. */
export type Quantities<F extends Fields> = {
  [K in keyof F]: [Values<F>[K]] extends [Exact | number]
    ? Quantity
    : [Values<F>[K]] extends [Exact | number | undefined]
      ? Quantity | undefined
      : undefined;
};

/** The result of a sum, or why there is none. */
export interface Reckoning<Own extends object = object> {
  /** Empty if all is well. */
  issues: Issue[];
  /** The calculator's own result, or undefined if there are issues. */
  own: Own | undefined;
  /** In the order of the sum. If there are issues, only those of the inputs. */
  rows: Row[];
  /** What the reader should know about this answer. */
  notes: Message[];
  cost: Money | undefined;
  /** The price of a yard or a metre, if somebody gave it. */
  price: Money | undefined;
  /** How numbers are shown, and in which language. */
  style: Style;
  lang: string;
}

export interface MeasuredSayings {
  measuredLess: { what: Label; measured: Exact; reckoned: Exact };
}
const say = sayings<MeasuredSayings>();

/**
 * More about a row: how it was got, if its value does not say it; its name, if its id does not say it; further rows that it comes
 * from; its value as a formula, if it is not a quantity.
 */
interface About {
  how?: Quantity | Message;
  label?: Message | undefined;
  from?: readonly string[];
  formula?: Quantity;
}

const KINDS = { length: 'length', percent: 'percent', count: 'count', money: 'money' } as const;

/**
 * A calculator writes its working into a ledger. The ledger reads the inputs and keeps the rows in order. It gives each number back
 * together with its row, so that the next sum knows where the number came from. `F` are the inputs, `R` the ids of the other
 * rows.
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
  /** The currency of the prices: the one that was given, or that the first price names. */
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
    const all = Object.entries<Field>(fields);
    for (const [key, field] of all)
      this.#collect(() => (values[key] = readField(field, input[key], this.style, key)), key);
    this.values = values as Values<F>;
    for (const [key, { kind }] of all) inputs[key] = this.#quantity(key, kind, values[key]);
    this.inputs = inputs as Quantities<F>;
    this.currency = textOf(values['currency']) || undefined;
    for (const [key, { kind }] of all)
      if (kind === 'money')
        this.#collect(() => {
          this.adopt(input[key]);
          this.sameCurrency(input[key]);
        }, key);
  }

  #quantity(key: string, kind: Field['kind'], value: unknown): Quantity | undefined {
    if (!(kind in KINDS)) return undefined;
    const number = typeof value === 'number' ? exact(value) : value;
    return isExact(number)
      ? new Quantity(number, KINDS[kind as keyof typeof KINDS], 'row', [], key)
      : undefined;
  }

  /** One entry of an input that holds several lengths. */
  entry(key: keyof F & string, at: number, value: Exact): Quantity {
    return new Quantity(value, 'length', 'row', [], key, at);
  }

  /** If no currency is given, takes the first one that these prices name. */
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

  /** Runs this. Keeps a refusal as an issue, of this input if the refusal names none. */
  #collect(work: () => void, input = ''): void {
    unlessRefused(work, (refusal) => this.issue(refusal.problem, refusal.input || input));
  }

  issue({ code, values }: Message, input: string): void {
    this.issues.push({ input, code, values });
  }

  /** Refuses inputs that do not go together. */
  refuse(input: (keyof F & string) | R, problem: Message): never {
    return refuse(problem, input);
  }

  /** Runs this. If it is refused, says which input causes it, and for which piece. */
  blame<T>(input: (keyof F & string) | R, work: () => T, of = (problem: Message): Message => problem): T {
    return unlessRefused(work, ({ problem }: Refusal) => refuse(of(problem), input));
  }

  /** Says which of these are missing. They are optional only if another input is given. */
  require(...keys: (keyof F & string)[]): void {
    for (const key of keys)
      if (isBlank(this.input[key])) this.issue(missing(fieldOf(this.fields, key), this.style, key), key);
  }

  /** The row of an input that is optional only if another is given, and that is needed here. */
  needed<K extends keyof F & string>(key: K): NonNullable<Quantities<F>[K]> {
    return this.inputs[key] ?? refuse(missing(fieldOf(this.fields, key), this.style, key), key);
  }

  note(message: Message): void {
    this.notes.push(message);
  }

  /** Adds the rows of these inputs, or of all that have none yet. */
  given(...keys: (keyof F & string)[]): void {
    for (const key of keys.length ? keys : Object.keys(this.fields))
      if (!this.rows.some(({ id }) => id === key)) this.rows.push(this.#givenRow(key));
  }

  #givenRow(key: keyof F & string): GivenRow {
    const field = fieldOf(this.fields, key);
    const values: Record<string, unknown> = this.values;
    return {
      role: 'given',
      id: key,
      // A price may have named the currency.
      value: key === 'currency' ? this.currency : values[key],
      written: this.input[key] ?? initialOf(field, this.style),
    };
  }

  /** The text in an input's row, for a sentence. */
  stated(key: keyof F & string): Stated {
    const { value, written } = this.#givenRow(key);
    return new Stated(key, standing(fieldOf(this.fields, key), value, written, this.style));
  }

  /**
   * Adds a reckoned row, and gives its number back as that row. The formula of the number says how it was got, unless `how` says
   * more.
   */
  row<V extends RowValue>(
    id: R,
    value: V,
    { how = value instanceof Quantity ? value : NOTHING, label, from = [], formula }: About = {},
  ): V extends Quantity ? Quantity : V {
    this.rows.push(new ReckonedRow(id, value, how, label, from, formula));
    return (value instanceof Quantity ? value.inRow(id) : value) as V extends Quantity ? Quantity : V;
  }

  /** Adds a reckoned row that a reader can measure and type over. Gives back the number to go on with. */
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
    // The reader may have measured it before something else changed.
    if (value.lt(reckoned.value.mul(NEARLY)))
      this.note(say('measuredLess', { what, measured: value, reckoned: reckoned.value }));
    return row.value.inRow(id);
  }

  #coin: number | undefined;

  /** How many decimals the currency has. A price without a currency has cents. */
  get #decimals(): number {
    const { currency } = this;
    return (this.#coin ??= currency ? decimalsOfCurrency(currency) : 2);
  }

  /** The smallest coin. */
  get coin(): Exact {
    return exact(1, 10 ** this.#decimals);
  }

  /** Money that can be paid: rounded to the cent, the yen, the fils. */
  paid(value: Exact): Money {
    return this.priced(toCoin(value, this.#decimals));
  }

  /** A price, which may be finer than a coin. */
  priced(value: Exact): Money {
    return new Money(value, this.currency, this.#decimals);
  }

  /** Runs the calculator's own part and completes its result, or gives back what is wrong. */
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

/** If a measure is less than this share of the reckoned value, it may be a mistake. */
const NEARLY = exact(19, 20);
const NOTHING = new Message('', {});

/** An input of these. The type of its name says that it is there. */
const fieldOf = <F extends Fields, K extends keyof F>(fields: F, key: K): F[K] => fields[key];
