import { mixed, number, length, asTyped, type Style } from '../measure/format.js';
import { exact, nearestTo, ONE, ZERO, type Exact } from '../measure/exact.js';
import { toUnit, writesComma } from '../measure/units.js';
import { purchase, stepAbove, toStep, type Purchase, type Step } from '../measure/shop.js';
import { initialOf, isBlank, missing, readField, Refusal, textOf, type Fields, type Values } from './fields.js';

/**
 * What goes into a calculator: its attributes' names in camelCase, each a string as a person writes it or a number
 * (inches). `measured` holds values typed over reckoned rows, by row id.
 */
export type Input<F extends Fields = Fields> = { [K in keyof F]?: unknown } & {
  /** What a bare number is in and what the working is shown in: `in` (default) or `cm`. */
  units?: unknown;
  /** BCP 47 language; decides the decimal comma and how money is written. Default `en`. */
  lang?: unknown;
  measured?: Record<string, unknown>;
};

/** One line of the working. */
export interface Row {
  /** The input's key, or a name for the reckoned value. */
  id: string;
  label: string;
  /** As shown: `66 in`. */
  value: string;
  /** The exact inches, where the value is a length: `"66"`. */
  inches?: string;
  /** How it was got, with the numbers filled in: `58 + 2 × 4 = 66 in`. */
  how: string;
  /** The ids of the rows it was reckoned from. */
  from: string[];
  /** `given` is an input; a `measurable` row may be typed over, and is then `measured`. */
  role: 'given' | 'reckoned' | 'measurable' | 'measured';
  /** For a measured row: what was reckoned there. */
  reckoned?: string;
  /** A refinement, folded away at first. */
  more?: true;
}

/** An input that could not be used, and a sentence about it. */
export interface Problem {
  /** The input's key in camelCase, or the id of a typed-over row. */
  input: string;
  message: string;
}

/** What a calculator gives back when an input could not be used. */
export interface Refused {
  errors: Problem[];
  /** The input rows only. */
  working: Row[];
  buy?: undefined;
}

/** What every calculator gives back. */
export interface Answer {
  errors?: undefined;
  /** What to buy, rounded up to the shop's step. */
  buy: Purchase;
  /** Exact inches needed before rounding. */
  fabric: string;
  /** Exact inches bought beyond the need. */
  spare: string;
  /** What it costs, where a price was given. */
  cost?: { amount: string; text: string };
  /** One sentence under the answer. */
  summary: string;
  /** What to cut. Empty where nothing is cut. */
  cuts: Cut[];
  /** Things the reader should know about this answer. */
  notes: string[];
  working: Row[];
}

/** One line of a cut list. */
export interface Cut {
  count: number;
  /** What it is for. */
  piece: string;
  /** On the ruler's marks, exact inches. */
  width: string;
  length: string;
  /** As shown: `3 1/2 in × 66 in`. */
  text: string;
}

/** Whatever a calculator's own part returns; the book adds the rest. */
export type Own<R extends Answer> = Omit<R, 'working' | 'notes' | 'cost' | 'errors'>;

/** Less than this to spare calls for a warning. Common practice, no source. */
export const SMALL_SPARE = exact(1);

/**
 * The book a calculator writes its working into: it reads the inputs, keeps the rows in order, and fills in the numbers
 * the way the reader writes them.
 */
export class Book<F extends Fields> {
  readonly style: Style;
  readonly values: Values<F>;
  readonly errors: Problem[] = [];
  readonly rows: Row[] = [];
  readonly notes: string[] = [];
  cost: Answer['cost'];

  constructor(
    readonly fields: F,
    readonly input: Input<F>,
  ) {
    const lang = typeof input.lang === 'string' ? input.lang : 'en';
    this.style = { units: input.units === 'cm' ? 'cm' : 'in', comma: writesComma(lang) };
    if (!isBlank(input.units) && input.units !== 'cm' && input.units !== 'in')
      this.errors.push({ input: 'units', message: 'The units can be in or cm. Write units="in" or units="cm".' });
    const values: Record<string, unknown> = {};
    for (const [key, field] of Object.entries(fields)) {
      try {
        values[key] = readField(field, input[key], this.style);
      } catch (refusal) {
        if (!(refusal instanceof Refusal)) throw refusal;
        this.errors.push({ input: key, message: refusal.message });
      }
    }
    this.values = values as Values<F>;
  }

  /** A length as a bare number in the reader's units. */
  n = (value: Exact): string => number(value, this.style);
  /** A length with its unit. */
  l = (value: Exact): string => length(value, this.style);
  /** `12 × 14 in`, both sides in the reader's units. */
  size = (width: Exact, height: Exact): string => `${this.n(width)} × ${this.l(height)}`;

  /** Says that the inputs cannot go together. */
  refuse(input: keyof F & string, message: string): never {
    throw new Refusal(message, input);
  }

  /** Says of what is refused in here which input is to blame. */
  blame<T>(input: string, work: () => T): T {
    try {
      return work();
    } catch (refusal) {
      throw refusal instanceof Refusal ? new Refusal(refusal.message, input) : refusal;
    }
  }

  /** Says which of these are missing: inputs that are optional only beside another. */
  require(...keys: (keyof F & string)[]): void {
    for (const key of keys)
      if (isBlank(this.input[key])) this.errors.push({ input: key, message: missing(this.fields[key]!, this.style) });
  }

  /** Adds the rows of these inputs. */
  given(...keys: (keyof F & string)[]): void {
    for (const key of keys) if (!this.rows.some(({ id }) => id === key)) this.rows.push(this.#givenRow(key));
  }

  #givenRow(key: keyof F & string): Row {
    const field = this.fields[key]!;
    const value: unknown = this.values[key];
    const raw: unknown = this.input[key] ?? initialOf(field, this.style);
    const row: Row = { id: key, label: field.label, value: '', how: field.hint ?? '', from: [], role: 'given' };
    if (field.more) row.more = true;
    if (field.kind === 'flag') row.value = value ? 'yes' : 'no';
    else if (isBlank(raw)) row.value = '';
    else if ((field.kind === 'length' || field.kind === 'mark') && value !== undefined) {
      row.value = asTyped(value as Exact, this.style);
      row.inches = mixed(value as Exact);
      if (!row.value.endsWith(this.style.units)) row.how = this.l(value as Exact);
    } else if (field.kind === 'percent' && value !== undefined) row.value = this.percent(value as Exact);
    else if (field.kind === 'lengths' && value !== undefined)
      row.value = (value as Exact[]).map((part) => asTyped(part, this.style)).join(this.style.comma ? '; ' : ', ');
    else if (field.kind === 'size' && value !== undefined)
      row.value = (value as Exact[]).map((part) => asTyped(part, this.style)).join(' x ');
    else if (field.kind === 'choice' || field.kind === 'choices') row.value = textOf(value ?? raw);
    else row.value = field.kind === 'own' ? field.write(raw) : textOf(raw);
    return row;
  }

  /**
   * Adds a reckoned row. In `how`, `{width}` stands for that row's number, `{width unit}` for the number with its unit, and
   * an `=` at the end for the row's own value; the rows so named are what it was reckoned from, with any in `from`.
   */
  row(id: string, label: string, value: Exact | string, how: string, from: string[] = []): void {
    const isLength = typeof value !== 'string';
    const row: Row = { id, label, value: isLength ? this.l(value) : value, how: '', from: [...from], role: 'reckoned' };
    if (isLength) row.inches = mixed(value);
    row.how = how
      .replace(/\{(\w+)( unit)?\}/g, (_, named: string, unit?: string) => {
        const other = this.rows.find((one) => one.id === named)!;
        row.from.push(named);
        return !unit && other.inches ? this.n(exact(other.inches)) : other.value;
      })
      .replace(/=$/, `= ${row.value}`);
    this.rows.push(row);
  }

  /** Adds a reckoned row that a person can measure and type over; gives back what holds from here on. */
  measurable(id: string, label: string, reckoned: Exact, how: string, from?: string[]): Exact {
    this.row(id, label, reckoned, how, from);
    const row = this.rows.at(-1)!;
    row.role = 'measurable';
    const raw = this.input.measured?.[id];
    if (isBlank(raw)) return reckoned;
    const value = this.blame(id, () => readField({ kind: 'length', label }, raw, this.style) as Exact);
    Object.assign(row, { role: 'measured', value: asTyped(value, this.style), inches: mixed(value), reckoned: this.l(reckoned) });
    return value;
  }

  /**
   * Adds the cloth's usable width, and its width once washed where it shrinks; gives back the width that holds, the id of
   * its row, and what a wash leaves of any length.
   */
  cloth(): { cloth: Exact; widthId: string; kept: Exact } {
    const { fabricWidth, shrinkage } = this.values as unknown as { fabricWidth: Exact; shrinkage: Exact };
    this.given('fabricWidth');
    const kept = ONE.sub(shrinkage);
    if (shrinkage.equals(ZERO)) return { cloth: fabricWidth, widthId: 'fabricWidth', kept };
    const washed = fabricWidth.mul(kept);
    this.given('shrinkage');
    const cloth = this.measurable('washedWidth', 'Width once washed', washed, '{fabricWidth} × (1 − {shrinkage}) =');
    return { cloth, widthId: 'washedWidth', kept };
  }

  percent = (share: Exact): string => `${mixed(share.mul(100))} %`;

  /** A line of the cut list. */
  cut(count: number, piece: string, width: Exact, long: Exact): Cut {
    return { count, piece, width: mixed(width), length: mixed(long), text: this.size(width, long) };
  }

  /** An amount of cloth as a shop counts it. */
  inShopUnit(inches: Exact, { unit }: Step): string {
    const amount = toUnit(inches, unit);
    return unit === 'm' || amount.d > 64n ? `${this.#places(amount, 4)} ${unit}` : `${mixed(amount)} ${unit}`;
  }
  #places(amount: Exact, places: number): string {
    const step = exact(1, 10 ** places);
    const text = String(nearestTo(amount, step).valueOf());
    return (nearestTo(amount, step).equals(amount) ? '' : '≈') + (this.style.comma ? text.replace('.', ',') : text);
  }

  /**
   * Rounds cloth up to the shop's step, with its rows (need, buy, spare, cost), and warns of a small spare. The
   * calculator's fields hold `increment`, `price` and `currency`.
   */
  buy(fabric: Exact, how: string, from?: string[], label = 'Cloth needed'): Pick<Answer, 'buy' | 'fabric' | 'spare'> {
    const { increment } = this.values as unknown as { increment: Step };
    this.given('increment');
    const bought = toStep(fabric, increment);
    const buy = purchase(bought, increment, this.style.comma);
    const spare = bought.sub(fabric);
    this.row('fabric', label, fabric, how, from);
    this.row('buy', 'Buy', buy.text, `{fabric unit} = ${this.inShopUnit(fabric, increment)}, up to a step of {increment}`);
    this.row('spare', 'Spare', spare, `${this.n(bought)} − {fabric} =`, ['buy']);
    if (spare.lt(SMALL_SPARE))
      this.notes.push(
        `Only ${this.l(spare)} to spare: a crooked cut in the shop or a prewash could leave you short. The next step up is ${purchase(stepAbove(bought, increment), increment, this.style.comma).text}.`,
      );
    this.price(toUnit(bought, increment.unit), buy.text);
    return { buy, fabric: mixed(fabric), spare: mixed(spare) };
  }

  /** Adds the cost of so much, where a price was given. */
  price(amount: Exact, text: string, price = this.values['price'] as Exact | undefined, from = ['buy', 'price']): void {
    if (!price) return;
    const cost = nearestTo(amount.mul(price), exact(1, 100));
    this.cost = { amount: cost.valueOf().toFixed(2), text: this.money(cost) };
    this.row('cost', 'Cost', this.cost.text, `${text} × ${this.money(price)}`, from);
  }

  money(value: Exact): string {
    const currency = this.values['currency'] as string | undefined;
    const lang = typeof this.input.lang === 'string' && this.input.lang ? this.input.lang : 'en';
    try {
      return new Intl.NumberFormat(lang, currency ? { style: 'currency', currency } : { minimumFractionDigits: 2, maximumFractionDigits: 2 }).format(value.valueOf());
    } catch {
      return value.valueOf().toFixed(2);
    }
  }

  /** Runs a calculator's own part and completes its result, or gives back what was wrong. */
  finish<R extends Answer>(work: () => Own<R>): R | Refused {
    if (!this.errors.length) {
      try {
        const own = work();
        return { ...own, ...(this.cost && { cost: this.cost }), notes: this.notes, working: this.rows } as unknown as R;
      } catch (refusal) {
        if (!(refusal instanceof Refusal)) throw refusal;
        this.errors.push({ input: refusal.input, message: refusal.message });
      }
    }
    const keys = Object.keys(this.fields) as (keyof F & string)[];
    return { errors: this.errors, working: keys.map((key) => this.#givenRow(key)) };
  }
}
