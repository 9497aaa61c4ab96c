import { exact, ZERO, type Exact } from '../measure/exact.js';
import { length, type Style } from '../measure/format.js';
import { parseLength, quoted, splitList, splitSize } from '../measure/parse.js';
import { parseStep, type Step } from '../measure/shop.js';

interface Base {
  /** What a person calls it. */
  label: string;
  /** A few words beside it, where nothing was reckoned. */
  hint?: string;
  /** Shown among the refinements, folded away at first. */
  more?: true;
}

/** One input of a calculator: what may be written there and what stands there when nothing is. */
export type Field = Base &
  (
    | { kind: 'length'; initial?: string; optional?: true; zero?: true; most?: string }
    | { kind: 'lengths'; optional?: true; most?: string }
    | { kind: 'size'; initial?: string; optional?: true }
    | { kind: 'count'; initial?: string; optional?: true; least?: number; most: number }
    | { kind: 'percent'; initial: string }
    | { kind: 'money'; optional: true }
    | { kind: 'choice'; initial: string; options: Record<string, string> }
    | { kind: 'choices'; initial: string; options: Record<string, string> }
    | { kind: 'flag' }
    | { kind: 'step'; initial: { in: string; cm: string } }
    | { kind: 'mark'; initial: { in: string; cm: string } }
    | { kind: 'text'; optional: true; pattern?: RegExp; example?: string }
    | { kind: 'own'; optional?: true; lines?: true; read: (raw: unknown, style: Style) => unknown; write: (raw: unknown) => string }
  );

export type Fields = Record<string, Field>;

type ValueOf<F extends Field> = F['kind'] extends 'length' | 'percent' | 'money' | 'mark'
  ? Exact
  : F['kind'] extends 'lengths'
    ? Exact[]
    : F['kind'] extends 'size'
      ? [Exact, Exact]
      : F['kind'] extends 'count'
        ? number
        : F['kind'] extends 'choices'
          ? string[]
          : F['kind'] extends 'flag'
            ? boolean
            : F['kind'] extends 'step'
              ? Step
              : F extends { read: (raw: unknown, style: Style) => infer Own }
                ? Own
                : string;

/** The values read from a calculator's fields; an optional one that was left out is undefined. */
export type Values<F extends Fields> = {
  [K in keyof F]: F[K] extends { optional: true } ? ValueOf<F[K]> | undefined : ValueOf<F[K]>;
};

/** A value a person could not have meant; the message is a sentence for her. */
export class Refusal extends Error {
  constructor(
    message: string,
    readonly input = '',
  ) {
    super(message);
  }
}

const refuse = (message: string): never => {
  throw new Refusal(message);
};

/** What stands in a field when nothing is written there. */
export const initialOf = (field: Field, style: Style): string | undefined =>
  'initial' in field
    ? typeof field.initial === 'object'
      ? field.initial[style.units]
      : field.initial
    : undefined;

export const isBlank = (raw: unknown): boolean => raw === undefined || raw === null || raw === '';

/** What was written, as text; nothing for what nobody writes, such as an object. */
export const textOf = (raw: unknown): string => {
  const one = (part: unknown): string =>
    typeof part === 'string' ? part : ['number', 'bigint', 'boolean'].includes(typeof part) ? `${part as number}` : '';
  return Array.isArray(raw) ? raw.map(one).join(', ') : one(raw);
};

const LONGEST = '1000 in';
const LONGEST_LIST = 12;

/** Reads a length of any size and sign. Throws a {@link Refusal}. */
export const lengthOf = (raw: unknown, style: Style): Exact => {
  if (typeof raw === 'number') {
    if (!Number.isFinite(raw) || Math.abs(raw) > 1e9) refuse('That is not a length. Write it like 52 1/2.');
    return exact(Math.round(raw * 1e6)).div(1e6);
  }
  const parsed = parseLength(textOf(raw), style);
  return parsed.ok ? parsed.value : refuse(parsed.message);
};

const inRange = (
  value: Exact,
  { label, zero, most = LONGEST }: { label: string; zero?: true; most?: string },
  style: Style,
): Exact => {
  if (value.lt(ZERO)) refuse(`${label} cannot be less than 0. Write it without the minus sign.`);
  if (value.equals(ZERO) && !zero) refuse(`${label} has to be more than 0.`);
  const limit = lengthOf(most, style);
  if (value.gt(limit)) refuse(`${label} can be at most ${length(limit, style)} here. Is the unit right?`);
  return value;
};

const plainNumber = (raw: unknown, example: string): Exact => {
  const text = textOf(raw);
  const parsed = parseLength(text.replace(/%|[\p{Sc}]/gu, ''), { units: 'in', comma: /,\d{1,2}$/.test(text) });
  return parsed.ok ? parsed.value : refuse(`${quoted(text)} is not a number. Write it like ${example}.`);
};

const oneOf = (raw: unknown, options: Record<string, string>): string => {
  const value = textOf(raw).trim().toLowerCase();
  return Object.hasOwn(options, value)
    ? value
    : refuse(`${quoted(textOf(raw))} is not one of the choices. Write ${Object.keys(options).join(' or ')}.`);
};

/** That something has to be written here, and an example. */
export const missing = (field: Field, style: Style): string => {
  const example = initialOf(field, style) ?? { length: '58 or 147 cm', count: '4' }[field.kind as string];
  return `${field.label} is missing.${example ? ` Write it like ${example}.` : ''}`;
};

/** Reads one field. Throws only a {@link Refusal}. */
export const readField = (field: Field, raw: unknown, style: Style): unknown => {
  if (field.kind === 'flag') return !(raw === undefined || raw === null || raw === false || raw === 'false');
  if (raw === undefined || raw === null) raw = initialOf(field, style);
  if (isBlank(raw)) {
    if ('optional' in field && field.optional) return undefined;
    return refuse(missing(field, style));
  }
  switch (field.kind) {
    case 'length':
      return inRange(lengthOf(raw, style), field, style);
    case 'lengths': {
      const parts = Array.isArray(raw) ? raw : typeof raw === 'number' ? [raw] : splitList(textOf(raw), style.comma);
      if (parts.length > LONGEST_LIST) refuse(`${field.label}: at most ${LONGEST_LIST} can be reckoned at once.`);
      return parts.map((part) => inRange(lengthOf(part, style), field, style));
    }
    case 'size': {
      const sides = splitSize(textOf(raw)) ?? refuse(`${quoted(textOf(raw))} is not a size. Write it like 60 x 80.`);
      return sides.map((side) => inRange(lengthOf(side, style), field, style));
    }
    case 'count': {
      const value = plainNumber(raw, '4');
      if (value.d !== 1n) refuse(`${field.label} is a whole number. Write it like 4.`);
      const { least = 1, most } = field;
      if (value.lt(least) || value.gt(most)) refuse(`${field.label} is between ${least} and ${most}.`);
      return Number(value.valueOf());
    }
    case 'percent': {
      const value = plainNumber(raw, '3');
      if (value.lt(0) || value.gt(50)) refuse(`${field.label} is between 0 and 50 %. Cotton cloth shrinks about 3 %.`);
      return value.div(100);
    }
    case 'money': {
      const value = plainNumber(raw, '12.50');
      if (value.lt(0) || value.gt(1e6)) refuse(`${field.label} is between 0 and 1000000. Write it like 12.50.`);
      return value;
    }
    case 'choice':
      return oneOf(raw, field.options);
    case 'choices':
      return textOf(raw)
        .split(/[,;]/)
        .map((part) => oneOf(part, field.options));
    case 'step': {
      const parsed = parseStep(textOf(raw), style);
      return parsed.ok ? parsed.value : refuse(parsed.message);
    }
    case 'mark': {
      const value = lengthOf(raw, style);
      if (value.lt(exact(1, 64)) || value.gt(1)) refuse('A ruler’s marks are between 1/64 in and 1 in apart. Write it like 1/8 in or 1 mm.');
      return value;
    }
    case 'text': {
      const text = textOf(raw).trim();
      if (field.pattern && !field.pattern.test(text))
        refuse(`${quoted(text)} does not fit here. Write it like ${field.example}.`);
      return text;
    }
    case 'own':
      return field.read(raw, style);
  }
};
