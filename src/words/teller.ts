import type { Field, Label } from '../ledger/field.js';
import { ownLength } from '../ledger/lengths.js';
import { Entry, type ListCell } from '../ledger/listing.js';
import type { Caption } from '../ledger/picture.js';
import { Money, Purchase } from '../ledger/purchase.js';
import { type Quantity, type Stated } from '../ledger/quantity.js';
import type { Size } from '../ledger/quilt.js';
import type { RowValue } from '../ledger/row.js';
import { exact, isExact, upTo, type Exact } from '../measure/exact.js';
import { ownUnits, asTyped, decimal, length, mixed, number, type Style } from '../measure/format.js';
import { Message } from '../measure/message.js';
import { moneyIn } from '../measure/money.js';
import type { Units } from '../measure/units.js';
import { formulaOf, type Rounding } from './formula.js';

/** A few words beside an input; where they name a size, they may be others for each units. */
export type Hint = string | Record<Units, string>;

/** The words of one calculator with those that all share, looked up by key or code. */
export interface Vocabulary {
  /** Their language. */
  lang: string;
  title: string;
  labels: Record<string, string>;
  hints: Record<string, Hint>;
  lockedHints: Record<string, string>;
  options: Record<string, Record<string, Hint>>;
  entries: Record<string, (number: number) => string>;
  entryNames: Record<string, (number: number) => string>;
  sentences: Record<string, string | ((values: never, t: Teller) => string)>;
  /** The words of the calculators in a worksheet, by name. The worksheet needs them to say what its parts say. */
  others?: Record<string, Vocabulary>;
}

/** A word in its plural forms, as `Intl.PluralRules` names them. `other` counts for forms that are missing. */
export type Forms = Partial<Record<Intl.LDMLPluralRule, string>> & { other: string };

const exactOf = (value: Exact | Quantity): Exact => (isExact(value) ? value : value.value);

/** Plural rules by language: a browser takes long to find them. */
const rules = new Map<string, Intl.PluralRules>();
const rulesOf = (lang: string): Intl.PluralRules => {
  let found = rules.get(lang);
  if (!found) rules.set(lang, (found = new Intl.PluralRules(lang)));
  return found;
};

/** Metres are shown to this part of a metre, which is less than anybody can cut. */
const FINEST_METRE = exact(1, 10_000);

/** Makes sentences of messages, in one language, with lengths in the reader's units. */
export class Teller {
  constructor(
    readonly words: Vocabulary,
    readonly style: Style,
    /** The page's language, which decides how money is written. */
    readonly lang: string,
  ) {}

  /** The usual length, or an example, in the reader's units: `40 in`, `105 cm`. */
  usual(texts: Record<Units, string>): string {
    return length(ownLength(texts[this.style.units]), this.style);
  }

  /** An example that differs with the reader's units. */
  forUnits(texts: Record<Units, string>): string {
    return texts[this.style.units];
  }

  /** The few words beside an input. */
  hint(id: string): string {
    return this.#inUnits(this.words.hints[id] ?? '');
  }

  #inUnits(hint: Hint): string {
    return typeof hint === 'string' ? hint : hint[ownUnits(this.style)];
  }

  /** A length as a number in the reader's units, without the unit. Any other quantity as it is written. */
  n(value: Exact | Quantity): string {
    if (isExact(value)) return number(value, this.style);
    const { kind } = value;
    if (kind === 'length') return number(value.value, this.style);
    if (kind === 'percent') return `${mixed(value.value.mul(100))} %`;
    return kind === 'money' ? this.amount(value.value, undefined) : mixed(value.value);
  }

  /** A length with its unit. Any other quantity as it is written. */
  l(value: Exact | Quantity): string {
    return isExact(value) || value.kind === 'length' ? length(exactOf(value), this.style) : this.n(value);
  }

  /** `12 × 14 in`, both sides in the reader's units. */
  size({ width, length }: Size): string {
    return `${this.n(width)} × ${this.l(length)}`;
  }

  /** A formula with its numbers filled in. */
  formula(quantity: Quantity): string {
    return formulaOf(quantity, this);
  }

  /** The same with its value, unless the formula is only a number: `2 × 40 − 2 × 1/2 = 79`. */
  reckoned(quantity: Quantity): string {
    const number = this.n(quantity);
    const formula = this.formula(quantity);
    return formula === number ? number : equals(formula, number);
  }

  /** The same with a unit: `2 × 40 − 2 × 1/2 = 79 in`. */
  reckonedLength(quantity: Quantity): string {
    return equals(this.formula(quantity), this.l(quantity));
  }

  /** A formula that is rounded up: to whole steps, or to a mark of the ruler. */
  rounded(how: Rounding, formula: string, step: Quantity): string {
    return this.sentence(how === 'mark' ? 'roundedToMark' : 'roundedUp', { formula, step });
  }

  /** A sentence from its message. */
  say({ code, values }: Message | { code: string; values: object }): string {
    return this.sentence(code, values);
  }

  private sentence(code: string, values: object): string {
    const sentence = this.words.sentences[code] ?? '';
    return typeof sentence === 'string' ? sentence : sentence(values as never, this);
  }

  label(what: Label): string {
    return typeof what === 'string' ? (this.words.labels[what] ?? what) : this.say(what);
  }

  /** The name of an entry of a list. */
  entry(of: string, number: number): string {
    return this.words.entries[of]?.(number) ?? this.label(of);
  }

  /** The same in short, for the button that takes it away. */
  entryName(of: string, number: number): string {
    return this.words.entryNames[of]?.(number) ?? this.entry(of, number);
  }

  /** The text that somebody typed, in a sentence. */
  quote(text: string): string {
    return this.sentence('quoted', { text: text.replace(/^(.{24}).+/su, '$1…') });
  }

  /** A number of things, in the right plural form: `2 joins`. */
  many(count: number, forms: Forms): string {
    return `${count} ${this.form(count, forms)}`;
  }

  form(count: number, forms: Forms): string {
    return forms[rulesOf(this.words.lang).select(count)] ?? forms.other;
  }

  /** The same in the words of another calculator: a worksheet says what its parts say. */
  as(calculator: string): Teller {
    const words = this.words.others?.[calculator];
    return words ? new Teller(words, this.style, this.lang) : this;
  }

  /** The unit of an amount, without the number: `yd`, `fat quarters`. */
  unitOf({ called, unit }: Purchase): string {
    return called ? new UnitTeller(this.words, this.style, this.lang).say(called) : unit;
  }

  /** What is bought. */
  bought({ called, amount, unit }: Purchase): string {
    return called ? this.say(called) : `${this.shopAmount(amount, unit, this.style.comma)} ${unit}`;
  }

  /** An amount in the shop's unit. Metres with endless decimals are rounded up, so that the text never says less than the need. */
  shopAmount(amount: Exact, unit: string, comma = false): string {
    return unit === 'm' ? decimal(upTo(amount, FINEST_METRE), 4, comma) : mixed(amount);
  }

  money({ value, currency }: Money): string {
    return this.amount(value, currency);
  }

  private amount(value: Exact, currency: string | undefined): string {
    return moneyIn(this.lang, value.valueOf(), currency);
  }

  /** What a row holds. */
  value(value: RowValue): string {
    if (value instanceof Purchase) return this.bought(value);
    if (value instanceof Money) return this.money(value);
    return value instanceof Message ? this.say(value) : this.l(value);
  }

  /** A cell of a list. */
  cell(cell: ListCell): string {
    if (cell === undefined) return '';
    if (typeof cell !== 'object') return `${cell}`;
    if (cell instanceof Entry) return cell.text;
    return isExact(cell) ? this.l(cell) : this.value(cell);
  }

  /** Words or a length in a drawing. */
  caption(caption: Caption): string {
    return isExact(caption) ? this.l(caption) : this.say(caption);
  }

  /** A choice of an input in words; the choice itself if it has none. */
  chosen(of: Label, code: string): string {
    const words = typeof of === 'string' ? this.words.options[of] : undefined;
    // What somebody wrote may be the name of something that every object has.
    return this.#inUnits((words && Object.hasOwn(words, code) ? words[code] : undefined) ?? code);
  }

  /** The text in an input's row: in words, where its author writes codes. */
  standing(id: string, { kind, options, offered }: Field, text: string): string {
    if (kind === 'flag') return this.sentence(text, {});
    return options || offered
      ? text
          .split(', ')
          .map((code) => this.chosen(id, code))
          .join(', ')
      : text;
  }

  /** The text of an input, in a sentence. */
  stated({ text }: Stated): string {
    return text;
  }

  /** A length as the reader would type it. */
  typed(value: Exact): string {
    return asTyped(value, this.style);
  }
}

/** A name without its number: `fat quarters`. */
class UnitTeller extends Teller {
  override many(count: number, forms: Forms): string {
    return this.form(count, forms);
  }

  override bought(purchase: Purchase): string {
    return this.unitOf(purchase);
  }

  override as(calculator: string): Teller {
    return new UnitTeller(super.as(calculator).words, this.style, this.lang);
  }
}

/** `58 + 2 × 4 = 66 in`. A rounded value has its own sign in place of the equals sign. */
export const equals = (formula: string, value: string): string =>
  value.startsWith('≈') ? `${formula} ≈ ${value.slice(1)}` : `${formula} = ${value}`;
