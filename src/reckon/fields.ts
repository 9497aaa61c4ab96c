import { exact, type Exact } from '../measure/exact.js';
import { asTyped, length, mixed, type Style } from '../measure/format.js';
import { bothSides, inUnit, parseLength, placesOf, quoted, sameUnit, splitSize } from '../measure/parse.js';
import { parseStep, type Step } from '../measure/shop.js';
import type { Units } from '../measure/units.js';
import { withoutCode } from './money.js';
import { sentence } from './sentences.js';

/** A value a person could not have meant; the message is a sentence for her. */
export class Refusal extends Error {
  constructor(
    message: string,
    readonly input = '',
  ) {
    super(message);
  }
}

/** Throws a {@link Refusal}; which input it is about may be said further up. */
export const refuse = (message: string, input?: string): never => {
  throw new Refusal(message, input);
};

/** Does this; what is refused in it goes to `otherwise`, and anything else that is thrown flies on. */
export const unlessRefused = <T, U>(work: () => T, otherwise: (refusal: Refusal) => U): T | U => {
  try {
    return work();
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return otherwise(refusal);
  }
};

interface About {
  /** A few words beside it, where nothing was reckoned. */
  hint?: string;
  /** Shown among the refinements, folded away at first. */
  more?: true;
  /** What stands there when nothing is written. */
  initial?: string | Record<Units, string>;
  optional?: true;
}

interface Plain<T> extends About {
  kind: 'length' | 'lengths' | 'size' | 'count' | 'percent' | 'money' | 'flag' | 'step' | 'text' | 'own';
  /** What a person calls it. */
  label: string;
  /** Something that could be written there, where nothing is initial. */
  example?: string;
  /** Written over several lines. */
  lines?: true;
  /** A list with a cell for each of its entries, and what one of them is called: `Border`. */
  each?: string | undefined;
  /** Reads what was written. Throws only a {@link Refusal}. */
  read(raw: unknown, style: Style): T;
  /** The value as its reader would write it. Default: as it was written. */
  write?(value: T, style: Style, raw: unknown): string;
  /** The same text with this unit at every length that names none, for where bare numbers mean another. */
  marked?(text: string, unit: Units): string;
}

interface Choice<T> extends Plain<T> {
  /** What can be chosen, each with words for it. */
  options: Record<string, string>;
}

/** One input of a calculator: what may be written there and what stands there when nothing is. */
export type Field<T = unknown> = Plain<T> | Choice<T>;

export type Fields = Record<string, Field>;

/** The values read from a calculator's fields; an optional one that was left out is undefined. */
export type Values<F extends Fields> = { [K in keyof F]: ReturnType<F[K]['read']> };

/** What stands in a field when nothing is written there. */
export const initialOf = ({ initial }: Pick<Field, 'initial'>, { units }: Style): string | undefined =>
  typeof initial === 'object' ? initial[units] : initial;

export const isBlank = (raw: unknown): boolean => raw === undefined || raw === null || raw === '';

/** What was written, as text; nothing for what nobody writes, such as an object. */
export const textOf = (raw: unknown): string => {
  const one = (part: unknown): string =>
    /^(string|bigint|boolean)$/.test(typeof part) || Number.isFinite(part) ? `${part as string}` : '';
  return Array.isArray(raw) ? raw.map(one).join(', ') : one(raw);
};

/** What works in a field, after what is wrong. */
const like = (field: Pick<Field, 'initial' | 'example'>, style: Style): string =>
  `Write it like ${initialOf(field, style) ?? field.example}.`;

/** That something has to be written here, and an example. */
export const missing = (field: Field, style: Style): string =>
  `${field.label} is missing. ${like(field, style)}`;

/** Reads one field. Throws only a {@link Refusal}. */
export const readField = <T>(field: Field<T>, raw: unknown, style: Style): T => {
  const written = raw ?? initialOf(field, style);
  if (!isBlank(written) || field.kind === 'flag') return field.read(written, style);
  return field.optional ? (undefined as T) : refuse(missing(field, style));
};

/** The same input, which may also be left out. */
export const optional = <T>(field: Field<T>, about: About = {}): Field<T | undefined> => ({
  ...field,
  ...about,
  optional: true,
});

/** Reads a length of any size and sign; a bare number is in the page's units, be it a number or text. Throws a {@link Refusal}. */
export const readLength = (raw: unknown, style: Style): Exact => {
  // What a page reckons in floating point may have a long tail: 0.1 + 0.2.
  const parsed = parseLength(Number.isFinite(raw) ? (raw as number).toFixed(6) : textOf(raw), style);
  return parsed.ok ? parsed.value : refuse(sentence(parsed.problem));
};

interface Limits {
  /** It may be 0. */
  zero?: true;
  /** Default 1000 in. */
  most?: string;
}

/** Nobody cuts anything smaller. */
const FINEST = exact(1, 64);

type Measured = Pick<Field, 'label' | 'example' | 'initial'> & Limits;

const readWithin =
  ({ zero, most = '1000 in', ...field }: Measured) =>
  (raw: unknown, style: Style): Exact => {
    const { label } = field;
    const value = readLength(raw, style);
    const limit = readLength(most, style);
    if (value.lt(0)) refuse(`${label} cannot be less than 0. Write it without the minus sign.`);
    if (!zero && value.lt(FINEST))
      refuse(
        `${label} has to be ${value.equals(0) ? 'more than 0' : 'at least 1/64 in'}. ${like(field, style)}`,
      );
    if (value.gt(limit))
      refuse(
        `${label} can be at most ${length(limit, style)} here. Is the unit right? ${like(field, style)}`,
      );
    return value;
  };

const LENGTH_EXAMPLE = '58 or 147 cm';

export const lengthField = (label: string, { zero, most, ...about }: About & Limits = {}): Field<Exact> => {
  const field = { label, example: LENGTH_EXAMPLE, ...about };
  return {
    kind: 'length',
    ...field,
    read: readWithin({ ...field, zero, most }),
    write: asTyped,
    marked: inUnit,
  };
};

/** Nobody makes a quilt longer than this; who writes so many feet may mean inches. From memory. */
const LONGEST_SIDE = 144;

/** One side of a quilt: not both of them, and no inches with the sign of feet. */
export const sideField = (label: string, about: About = {}): Field<Exact> => {
  const field = lengthField(label, about);
  return {
    ...field,
    read: (raw, style) => {
      const text = textOf(raw);
      const [side, other] = bothSides(text, style) ?? [];
      if (side && other)
        refuse(`${quoted(text)} is two sides. Write one here, like ${side}, and ${other} as the other.`);
      const feet = /^([\p{N}\s.,/]+)['‘’′]\s*$/u.exec(text)?.[1]?.trim();
      const value = feet && readLength(text, style);
      if (value && value.gt(LONGEST_SIDE))
        refuse(
          `${quoted(text)} is ${feet} feet, ${length(value, style)}. Did you mean ${feet} in? Write ${feet} in, or ${feet} ft.`,
        );
      return field.read(raw, style);
    },
  };
};

/** The same for several lengths: one unit holds for all of them. */
const allInUnit = (text: string, unit: Units): string => inUnit(text, unit, true);

export const LONGEST_LIST = 12;
const SEVERAL = 'Put commas between several, like 2, 4 1/2.';

/** What an entry of a list is called: `Border 2, width`. */
export const entryLabel = (each: string, at: number): string => `${each} ${at + 1}, width`;

/** Several lengths, with commas between; where each has a cell of its own, a place between two commas is not left out. */
export const lengthsField = (
  label: string,
  { most, each, ...about }: About & Limits & { each?: string },
): Field<Exact[]> => ({
  kind: 'lengths',
  label,
  each,
  ...about,
  read: (raw, style) => {
    // A hole in a list is read too, as nothing.
    const places = Array.isArray(raw) || typeof raw === 'number' ? [] : placesOf(textOf(raw), style.comma);
    const hasAny = places.some(Boolean);
    const parts: unknown[] = Array.isArray(raw)
      ? [...(raw as unknown[])]
      : typeof raw === 'number'
        ? [raw]
        : places
            .filter((part) => part || (each && hasAny))
            .map((part, _, all) => (part && all.at(-1) ? sameUnit(part, all.at(-1)!) : part));
    if (parts.length > LONGEST_LIST)
      refuse(`${label}: at most ${LONGEST_LIST} can be reckoned at once. ${SEVERAL}`);
    return parts.map((part, at) => {
      const field = { label: each ? entryLabel(each, at) : label, example: '2' };
      if (part === '') refuse(`${field.label} is missing. ${like(field, style)}`);
      return unlessRefused(
        () => readWithin({ ...field, most })(part, style),
        ({ message }) => refuse(`${message} ${SEVERAL}`),
      );
    });
  },
  marked: allInUnit,
  write: (parts, style) => parts.map((part) => asTyped(part, style)).join(style.comma ? '; ' : ', '),
});

/** Two sides: `60 x 80`. */
export const sizeField = (label: string, about: About): Field<[Exact, Exact]> => ({
  kind: 'size',
  label,
  ...about,
  read: (raw, style) => {
    const sides =
      splitSize(textOf(raw)) ?? refuse(`${quoted(textOf(raw))} is not a size. Write it like 60 x 80.`);
    return sides.map((side) => readWithin({ label, example: '60' })(side, style)) as [Exact, Exact];
  },
  marked: allInUnit,
  write: (sides, style) => sides.map((side) => asTyped(side, style)).join(' x '),
});

/** A number that is not a length; `without` takes a word off it. A sign stands before it or behind: 12€50 is not 1250. */
const readNumber = (
  raw: unknown,
  label: string,
  least: number,
  most: number,
  example: string,
  without = (text: string): string => text,
): Exact => {
  const text = textOf(raw);
  const bare = without(text)
    .trim()
    .replace(/^[%\p{Sc}]|[%\p{Sc}]$/gu, '')
    .trim();
  const parsed = parseLength(bare, { units: 'in', comma: /,\d{1,2}$/.test(bare) });
  // A mark of feet or inches makes it a length, also where one stands for a thousand: 1'200.50.
  if (!parsed.ok || /[^\P{L}x]|["'‘’′“”″]/iu.test(bare))
    return refuse(`${quoted(text)} is not a number. Write it like ${example}.`);
  if (parsed.value.lt(least) || parsed.value.gt(most))
    refuse(`${label} is between ${least} and ${most}. Write it like ${example}.`);
  return parsed.value;
};

export const countField = (label: string, most: number, about: About = {}): Field<number> => ({
  kind: 'count',
  label,
  example: '4',
  ...about,
  read: (raw) => {
    const value = readNumber(raw, label, 1, most, '4');
    return value.d === 1n ? value.valueOf() : refuse(`${label} is a whole number. Write it like 4.`);
  },
});

/** A share, written in percent. */
export const percentField = (label: string, about: About): Field<Exact> => ({
  kind: 'percent',
  label,
  ...about,
  read: (raw) => {
    const percent = readNumber(raw, label, 0, 50, '3');
    // Others write 3 % as 0.03: taken as it stands, it would buy too little.
    if (percent.gt(0) && percent.lt(exact(1, 2)))
      refuse(`${label}: “${textOf(raw).trim()}” would be less than 1/2 %. Write it like 3, for 3 %.`);
    return percent.div(100);
  },
  write: (share) => `${mixed(share.mul(100))} %`,
});

export const moneyField = (label: string): Field<Exact | undefined> =>
  optional({
    kind: 'money',
    label,
    more: true,
    read: (raw) => readNumber(raw, label, 0, 1e6, '12.50 or 1250', withoutCode),
  });

export const flagField = (label: string, about: About = {}): Field<boolean> => ({
  kind: 'flag',
  label,
  ...about,
  read: (raw) => raw !== undefined && raw !== null && !/^(false|no|0)$/.test(textOf(raw)),
  write: (value) => (value ? 'yes' : 'no'),
});

const oneOf = (raw: unknown, options: Record<string, string>): string => {
  const value = textOf(raw).trim().toLowerCase().replace(/\s+/g, '-');
  return Object.hasOwn(options, value)
    ? value
    : refuse(`${quoted(textOf(raw))} is not one of the choices. Write ${Object.keys(options).join(' or ')}.`);
};

/** One of several; the first stands there when nothing is written. */
export const choiceField = (label: string, options: Record<string, string>): Field<string> => ({
  kind: 'text',
  label,
  options,
  initial: Object.keys(options)[0],
  read: (raw) => oneOf(raw, options),
  write: (value) => value,
});

/** One of several for all, or more with commas between. */
export const choicesField = (label: string, options: Record<string, string>): Field<string[]> => ({
  ...choiceField(label, options),
  read: (raw) =>
    textOf(raw)
      .split(/[,;]/)
      .map((part) => oneOf(part, options)),
  write: textOf,
});

/** What a shop cuts cloth by. */
export const stepField = (label: string, about: About): Field<Step> => ({
  kind: 'step',
  label,
  ...about,
  read: (raw, style) => {
    const parsed = parseStep(textOf(raw), style);
    return parsed.ok ? parsed.value : refuse(sentence(parsed.problem));
  },
  marked: inUnit,
});

/** ISO 4217. */
export const currencyField = (label: string): Field<string | undefined> =>
  optional({
    kind: 'text',
    label,
    more: true,
    read: (raw) => {
      const text = textOf(raw).trim();
      return /^[a-z]{3}$/i.test(text)
        ? text
        : refuse(`${quoted(text)} is not a code of three letters. Write it like EUR.`);
    },
    // A price may have named it.
    write: (code: string) => code,
  });

/** A size, or the name of one that the shop sells: `18 x 20`, `fat-quarter`. */
export const sheetField = (label: string, about: About): Field<string | undefined> =>
  optional({ kind: 'text', label, ...about, read: (raw) => textOf(raw).trim(), marked: allInUnit });
