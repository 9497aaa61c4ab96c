import type { Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import { parseLength, quoted, sameUnit } from '../measure/parse.js';
import { readField, Refusal, textOf } from './fields.js';

/** A package of batting, as its label or a shop's list names it. */
export interface Package {
  name: string;
  width: Exact;
  length: Exact;
  price?: Exact;
}

type Written = Partial<Record<keyof Package, unknown>>;

const EXAMPLE = 'large 90 x 100 @ 29';
const MOST_PACKAGES = 50;
const LONGEST_ENTRY = 120;
const LONGEST_NAME = 60;

const refuse = (message: string): never => {
  throw new Refusal(message);
};

/** `large 90 x 100 @ 29`: the name is what stands before the first length, and may be left out. */
const partsOf = (entry: string, style: Style): Written | undefined => {
  const [size = '', price, ...more] = entry.split('@');
  const sides = /^(.*\S)\s*(?:[x×]|\bby\b)\s*(?=[.\p{N}])(.*)$/iu.exec(size.trim());
  if (!sides || more.length || price?.trim() === '') return undefined;
  const [, before, length] = sides as unknown as [string, string, string];
  const words = before.split(/\s+/);
  const widthAt = words.findIndex(
    (word, at) => /^[.\p{N}]/u.test(word) && parseLength(words.slice(at).join(' '), style).ok,
  );
  if (widthAt < 0) return undefined;
  const name = words
    .slice(0, widthAt)
    .join(' ')
    .replace(/[\s:,–—-]+$/, '');
  return { name, width: sameUnit(words.slice(widthAt).join(' '), length), length, price };
};

const readPackage = (entry: unknown, place: number, style: Style): Package => {
  const isText = typeof entry === 'string';
  const called = isText
    ? quoted(entry)
    : `Package ${place} ${quoted(textOf((entry as Written | null)?.name ?? ''))}`;
  const parts = isText
    ? entry.length > LONGEST_ENTRY
      ? undefined
      : partsOf(entry, style)
    : Object(entry) === entry
      ? (entry as Written)
      : undefined;
  if (!parts) return refuse(`${called} is not a package. Write it like ${EXAMPLE}.`);
  const read = (key: 'width' | 'length' | 'price'): Exact | undefined => {
    const label = `The ${key}`;
    try {
      const field =
        key === 'price'
          ? ({ kind: 'money', label, optional: true } as const)
          : ({ kind: 'length', label } as const);
      return readField(field, parts[key], style) as Exact | undefined;
    } catch (refusal) {
      throw refusal instanceof Refusal ? new Refusal(`${called}: ${refusal.message}`) : refusal;
    }
  };
  const [width, length, price] = [read('width')!, read('length')!, read('price')];
  return {
    name: textOf(parts.name ?? '')
      .trim()
      .slice(0, LONGEST_NAME),
    width,
    length,
    ...(price && { price }),
  };
};

/**
 * Reads a list of packages: text with semicolons between (`small 40 x 50 @ 12.50; large 90 x 100 @ 29`), or an array of
 * such texts or of objects with `name`, `width`, `length` and perhaps `price`. Throws a {@link Refusal} that names the
 * entry it cannot read.
 */
export const readPackages = (raw: unknown, style: Style): Package[] => {
  const entries: unknown[] = Array.isArray(raw)
    ? raw
    : textOf(raw)
        .split(';')
        .map((entry) => entry.trim())
        .filter(Boolean);
  if (!entries.length) refuse(`There is no package here. Write it like ${EXAMPLE}.`);
  if (entries.length > MOST_PACKAGES)
    refuse(`At most ${MOST_PACKAGES} packages can be compared at once. Write it like ${EXAMPLE}.`);
  return entries.map((entry, at) => readPackage(entry, at + 1, style));
};

/** The list as {@link readPackages} reads it again. */
export const writePackages = (raw: unknown): string => {
  if (!Array.isArray(raw)) return textOf(raw);
  const write = ({ name, width, length, price }: Written): string =>
    `${textOf(name ?? '')} ${textOf(width)} x ${textOf(length)}${price === undefined ? '' : ` @ ${textOf(price)}`}`.trim();
  return raw
    .map((entry: unknown) => (Object(entry) === entry ? write(entry as Written) : textOf(entry)))
    .join('; ');
};

/** A package, and whether it covers what is needed. */
export interface RankedPackage extends Package {
  fits: boolean;
  /** It covers it only turned. */
  turned: boolean;
}

/** Those that fit first; then by price where every one has a price, else by area. */
export const rankPackages = (packages: Package[], need: { width: Exact; length: Exact }): RankedPackage[] => {
  const priced = packages.every(({ price }) => price);
  const area = ({ width, length }: Package): Exact => width.mul(length);
  return packages
    .map((pack) => {
      const straight = pack.width.gte(need.width) && pack.length.gte(need.length);
      const turned = !straight && pack.width.gte(need.length) && pack.length.gte(need.width);
      return { ...pack, fits: straight || turned, turned };
    })
    .sort(
      (a, b) =>
        Number(b.fits) - Number(a.fits) ||
        (priced ? a.price!.compare(b.price!) : 0) ||
        area(a).compare(area(b)),
    );
};
