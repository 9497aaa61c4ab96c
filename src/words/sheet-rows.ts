import { standing, type Fields } from '../ledger/field.js';
import type { Quantity } from '../ledger/quantity.js';
import type { GivenRow, ReckonedRow, Row } from '../ledger/row.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { INCHES, type Unit } from '../measure/units.js';
import { sayInFace } from './face-sayings.js';
import { formulaOf, type Numerals } from './formula.js';
import { Formulas, placeKey, type Places } from './sheet-formula.js';
import { saying } from './sheet-words.js';
import { sayInSpreadsheet } from './spreadsheet-sayings.js';
import { equals, type Teller } from './teller.js';

// This code is loaded late. In some builds it is a file of its own, with its own copies of the classes. So it never asks for the
// class of a value, only for what the value has.

/** A cell: words, a number, or a formula with its value now. */
export type SheetCell =
  string | undefined | { value: number | string; formula?: string | undefined; format?: string | undefined };

/** A row of the sheet: a row of the reckoning, or one entry of it. */
export interface SheetRow {
  id: string;
  entry: number;
  label: string;
  /** Whether it is an input. */
  isGiven: boolean;
  /** Inches in one unit of what is bought. */
  per?: Exact | undefined;
  /** Written at the end, when the place of every row is known. */
  cells: () => SheetCell[];
}

/** The number of digits that floating point holds. */
const DIGITS = 15;
const numberOf = (value: Exact): number => Number(value.valueOf().toPrecision(DIGITS));

/** A length as a number in the reader's units. */
export const lengthIn = (length: Exact, { style }: Teller): number =>
  Number((length.valueOf() / INCHES[style.units].valueOf()).toPrecision(DIGITS - 1));

const PERCENT = '0.0%';
const moneyFormat = (decimals: number): string => (decimals ? `0.${'0'.repeat(decimals)}` : '0');

/** Puts the rows of a reckoning into cells. */
export class SheetRows {
  readonly formulas: Formulas;
  /** Formulas in words, which stay true after a change: `[Quilt width] + 2 × [Overage]`. */
  readonly #inWords: Numerals;

  constructor(
    readonly t: Teller,
    places: Places,
  ) {
    this.formulas = new Formulas(places, t.style.units);
    this.#inWords = numeralsOf(places, t);
  }

  of(row: Row, fields: Fields): SheetRow[] {
    return row.role === 'given' ? this.#given(row, fields) : [this.#reckoned(row)];
  }

  /** The rows of an input: one for each entry of a list, so that formulas can use each. None if nobody gave it. */
  #given({ id, value, written }: GivenRow, fields: Fields): SheetRow[] {
    const { t } = this;
    const field = fields[id];
    const text = field ? standing(field, value, written, t.style) : '';
    if (!field || value === undefined || !text) return [];
    const hint = t.hint(id);
    const row = (cell: SheetCell, unit = '', how = hint, entry = 0, label = t.label(id)): SheetRow => ({
      id,
      entry,
      label,
      isGiven: true,
      cells: () => [label, cell, unit, how],
    });
    const numbered = (number: number): string =>
      field.each
        ? t.entry(id, number)
        : saying(t)(sayInSpreadsheet('numberedRow', { label: t.label(id), number }));
    const lengths = (all: Exact[], how: string, isList: boolean): SheetRow[] =>
      all.map((length, at) => {
        const label = isList ? numbered(at + 1) : t.label(id);
        return row({ value: lengthIn(length, t) }, t.style.units, how, at, label);
      });
    switch (field.kind) {
      case 'length':
        return lengths([value as Exact], hint, false);
      case 'lengths':
      case 'size':
        return lengths(value as Exact[], hint, true);
      case 'step': {
        const { sizes } = value as { sizes: Exact[] };
        return lengths(sizes, text, sizes.length > 1);
      }
      case 'count':
        return [row({ value: value as number })];
      case 'percent':
        return [row({ value: numberOf(value as Exact), format: PERCENT })];
      case 'money':
        return [row({ value: numberOf(value as Exact) })];
      case 'flag':
      case 'choice':
      case 'choices':
      case 'text':
      case 'own':
        return [row(t.standing(id, field, text))];
    }
  }

  #reckoned(row: ReckonedRow): SheetRow {
    const { id, value } = row;
    const label = this.t.label(row.label ?? id);
    const per = 'unit' in value && value.unit in INCHES ? INCHES[value.unit as Unit] : undefined;
    const cells = (): SheetCell[] => [label, ...this.#valueCells(row, per), ...this.#howCells(row)];
    return { id, entry: 0, label, isGiven: false, per, cells };
  }

  /** Its value and its unit. */
  #valueCells({ value, formula: other }: ReckonedRow, per: Exact | undefined): [SheetCell, string] {
    const { t } = this;
    const quantity = 'operation' in value ? value : other;
    const formula = quantity && this.formulas.of(quantity, per);
    if ('operation' in value)
      return value.kind === 'length'
        ? [{ value: lengthIn(value.value, t), formula }, t.style.units]
        : [{ value: numberOf(value.value), formula }, ''];
    if ('unit' in value) return [{ value: numberOf(value.amount), formula }, t.unitOf(value)];
    if ('decimals' in value) {
      const format = moneyFormat(value.decimals);
      return [{ value: numberOf(value.value), formula, format }, value.currency ?? ''];
    }
    // If words have a number in them, the cell holds that number: formulas use it.
    return [other ? { value: numberOf(other.value), formula } : t.say(value), ''];
  }

  /** How it was got: a formula in words and the working of the page, or the reason if it was found by a search. */
  #howCells(row: ReckonedRow): SheetCell[] {
    const { t } = this;
    const { value, how, reckoned } = row;
    const onPage = 'code' in how ? t.say(how) : equals(t.formula(how), t.value(reckoned ?? value));
    if (row.role === 'measured') return [saying(t)(sayInFace('measured')), onPage];
    const quantity = 'operation' in value ? value : row.formula;
    if (quantity && this.formulas.of(quantity)) return [formulaOf(quantity, this.#inWords), onPage];
    const isNumber = 'code' in value && row.formula;
    return [this.#checked(how, isNumber ? `${t.say(value)}: ${onPage}` : onPage)];
  }

  /** Why this number was found. After a change that makes it too small, the cell says so. */
  #checked(how: Quantity | Message, reason: string): SheetCell {
    const checks = checksIn(how).map(({ reach, need }) => this.formulas.reaches(reach, need));
    if (!checks.length) return reason;
    const tooLittle = saying(this.t)(sayInSpreadsheet('tooLittleNow'));
    const isEnough = checks.length > 1 ? `AND(${checks.join(',')})` : checks.join('');
    return { value: reason, formula: `IF(${isEnough},${inFormula(reason)},${inFormula(tooLittle)})` };
  }
}

/** Rows by what they are called, and other numbers as they are. */
const numeralsOf = (places: Places, t: Teller): Numerals => {
  const say = saying(t);
  const numerals: Numerals = {
    n: (quantity) => {
      const { operation, row, entry, parts } = quantity;
      const place = operation === 'row' && places.get(placeKey(row, entry));
      if (place) return `[${place.label}]`;
      return operation === 'result' && parts[0] ? `(${formulaOf(parts[0], numerals)})` : t.n(quantity);
    },
    rounded: (how, formula, step) =>
      say(
        how === 'coin'
          ? sayInSpreadsheet('toCoin', { formula })
          : sayInSpreadsheet('toNextStep', { formula, step: numerals.n(step) }),
      ),
  };
  return numerals;
};

const isQuantity = (value: unknown): value is Quantity =>
  typeof value === 'object' && !!value && 'operation' in value;

/** Every check in a reason: a reach that is at least the need. If a strip makes up the rest, there is no check. */
const checksIn = (value: unknown): { reach: Quantity; need: Quantity }[] => {
  if (Array.isArray(value)) return value.flatMap(checksIn);
  if (typeof value !== 'object' || !value || !('code' in value && 'values' in value)) return [];
  const values = value.values as Record<string, unknown>;
  const { reach, need, isShort } = values;
  if (isQuantity(reach) && isQuantity(need)) return isShort ? [] : [{ reach, need }];
  return Object.values(values).flatMap(checksIn);
};

/** Spreadsheet programs allow no longer text in a formula. */
const LONGEST_TEXT = 250;

const inFormula = (text: string): string =>
  (text.match(new RegExp(`[^]{1,${LONGEST_TEXT}}`, 'gu')) ?? [''])
    .map((part) => `"${part.replaceAll('"', '""')}"`)
    .join('&');
