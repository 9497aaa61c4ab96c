import { standing, type Field, type Fields, type InputSayings } from '../ledger/field.js';
import type { Reckoning } from '../ledger/ledger.js';
import { Cut, Money, Purchase } from '../ledger/purchase.js';
import { Quantity } from '../ledger/quantity.js';
import type { Issue } from '../ledger/refusal.js';
import type { GivenRow, ReckonedRow, Row } from '../ledger/row.js';
import { isExact, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { Message } from '../measure/message.js';
import { equals, type Teller } from './teller.js';

/** One line of the working. */
export interface WorkingRow {
  /** The input's key, or a name for the reckoned value. */
  id: string;
  label: string;
  /** As shown: `66 in`, `across the cloth`. */
  value: string;
  /** A choice or a tick as an author writes it: `across`, `yes`. */
  code?: string | undefined;
  /** The exact inches, if the value is a length: `"66"`. */
  inches?: string | undefined;
  /** How it was got, with the numbers filled in: `58 + 2 × 4 = 66 in`. */
  how: string;
  /** The ids of the rows it was reckoned from. */
  from: string[];
  /** `given`: an input. `measurable`: the reader may type over it. `measured`: the reader did. */
  role: 'given' | 'reckoned' | 'measurable' | 'measured';
  /** For a measured row: the reckoned value. */
  reckoned?: string | undefined;
  /** One of the further settings, folded away at first. */
  more?: true | undefined;
}

/** An amount to buy, already rounded up to a step the shop cuts. */
export interface WrittenPurchase {
  /** Exact inches, as a mixed number: `"135"`. */
  inches: string;
  /** In the shop's unit, as a mixed number of yards or decimal metres: `"3 3/4"`. */
  amount: string;
  /** `yd`, `m` or `in`; a package of batting is `package`. */
  unit: string;
  /** For people: `"3 3/4 yd"`. */
  text: string;
}

/** An amount of money: a decimal number, and as people write it. */
export interface WrittenMoney {
  amount: string;
  text: string;
}

/** One line of a cut list. */
export interface WrittenCut {
  count: number;
  /** What it is for. */
  piece: string;
  /** On the ruler's marks, exact inches. */
  width: string;
  length: string;
  /** As shown: `3 1/2 × 66 in`. */
  text: string;
}

/** A value in a result: plain JSON, with lengths as exact inches and messages as sentences. */
export type Written<T> = T extends Exact | Message | Quantity
  ? string
  : T extends Purchase
    ? WrittenPurchase
    : T extends Money
      ? WrittenMoney
      : T extends Cut
        ? WrittenCut
        : T extends readonly (infer One)[]
          ? Written<One>[]
          : T extends object
            ? { [K in keyof T as K extends 'used' ? never : K]: Written<T[K]> }
            : T;

/** What a calculator gives: its answer, and how it was got. */
export type Result<Own extends object> = Written<Own> & {
  errors?: undefined;
  /** What it costs, if there is a price. */
  cost?: WrittenMoney | undefined;
  /** Things the reader should know about this answer. */
  notes: string[];
  working: WorkingRow[];
};

/** An input that could not be used, and a sentence about it. */
export interface Problem {
  /** The key of the input in camelCase, or the id of a row that the reader typed over. */
  input: string;
  message: string;
}

/** What a calculator gives back when an input could not be used. */
export interface Refused {
  errors: Problem[];
  /** The input rows only. */
  working: WorkingRow[];
  buy?: undefined;
}

/** Makes plain data: every exact number is a mixed number, every message a sentence. Undefined values and `used` are left out. */
const written = (value: unknown, t: Teller): unknown => {
  if (typeof value !== 'object' || !value) return value;
  if (isExact(value)) return mixed(value);
  if (value instanceof Message) return t.say(value);
  if (value instanceof Quantity) return mixed(value.value);
  if (value instanceof Purchase) {
    const { inches, amount, unit } = value;
    return { inches: mixed(inches), amount: t.shopAmount(amount, unit), unit, text: t.bought(value) };
  }
  if (value instanceof Money) return { amount: value.amount, text: t.money(value) };
  if (value instanceof Cut) {
    const { count, piece, width, length } = value;
    return { count, piece: t.say(piece), width: mixed(width), length: mixed(length), text: t.size(value) };
  }
  if (Array.isArray(value)) return value.map((one) => written(one, t));
  const plain: Record<string, unknown> = {};
  for (const [key, part] of Object.entries(value))
    if (part !== undefined && key !== 'used') plain[key] = written(part, t);
  return plain;
};

const givenRow = (row: GivenRow, field: Field | undefined, t: Teller): WorkingRow => {
  const { id, value } = row;
  const text = field ? standing(field, value, row.written, t.style) : '';
  const shown: WorkingRow = {
    id,
    label: t.label(id),
    value: field ? t.standing(id, field, text) : text,
    how: t.hint(id),
    from: [],
    role: 'given',
  };
  if (field?.more) shown.more = true;
  // A step is its own code, unless it is no length.
  if (field?.options || field?.kind === 'flag' || shown.value !== text) shown.code = text;
  if (field?.kind === 'length' && isExact(value)) {
    shown.inches = mixed(value);
    if (!text.endsWith(t.style.units)) shown.how = t.l(value);
  }
  return shown;
};

const howOf = ({ how, value, reckoned }: ReckonedRow, t: Teller): string =>
  how instanceof Message ? t.say(how) : equals(t.formula(how), t.value(reckoned ?? value));

const reckonedRow = (row: ReckonedRow, t: Teller): WorkingRow => {
  const { id, label, value, role, reckoned, from } = row;
  const isLength = value instanceof Quantity && value.kind === 'length';
  const shown: WorkingRow = {
    id,
    label: t.label(label ?? id),
    value: reckoned && isLength ? t.typed(value.value) : t.value(value),
    how: howOf(row, t),
    from,
    role,
  };
  if (isLength) shown.inches = mixed(value.value);
  if (reckoned) shown.reckoned = t.value(reckoned);
  return shown;
};

/** A row in words. */
export const toldRow = (row: Row, fields: Fields, t: Teller): WorkingRow =>
  row.role === 'given' ? givenRow(row, fields[row.id], t) : reckonedRow(row, t);

/** The same for an author, who writes choices as codes. */
const toAuthor = (issue: Issue): Pick<Issue, 'code' | 'values'> =>
  issue.code === ('notChoice' satisfies keyof InputSayings)
    ? { ...issue, code: 'notCode' satisfies keyof InputSayings }
    : issue;

/** Properties that are made when somebody first reads them. So reading only the amount makes no sentences. */
const late = <T extends object>(makers: { [K in keyof T]: () => T[K] }): T => {
  const made = {};
  for (const key of Object.keys(makers) as (keyof T)[])
    Object.defineProperty(made, key, {
      enumerable: true,
      configurable: true,
      get: () => {
        const value = makers[key]();
        Object.defineProperty(made, key, { value, enumerable: true, configurable: true, writable: true });
        return value;
      },
    });
  return made as T;
};

/** The result as plain data in words. Each part is made when somebody first reads it. */
export const told = <Own extends object>(
  { issues, own, rows, notes, cost }: Reckoning<Own>,
  fields: Fields,
  t: Teller,
): Result<Own> | Refused => {
  const working = (): WorkingRow[] => rows.map((row) => toldRow(row, fields, t));
  if (!own)
    return late<Refused>({
      errors: () => issues.map((issue) => ({ input: issue.input, message: t.say(toAuthor(issue)) })),
      working,
    });
  const makers: Record<string, () => unknown> = {};
  for (const [key, part] of Object.entries(own))
    if (part !== undefined && key !== 'used') makers[key] = () => written(part, t);
  if (cost) makers['cost'] = () => written(cost, t);
  makers['notes'] = () => notes.map((note) => t.say(note));
  makers['working'] = working;
  return late(makers) as Result<Own>;
};
