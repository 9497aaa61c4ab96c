import { isBlank, readField, textOf, type Field } from '../../ledger/field.js';
import { moneyField } from '../../ledger/kinds.js';
import { lengthField, ownLength } from '../../ledger/lengths.js';
import type { Size } from '../../ledger/quilt.js';
import { refuse, unlessRefused } from '../../ledger/refusal.js';
import type { Exact } from '../../measure/exact.js';
import { ownUnits, type Style } from '../../measure/format.js';
import { sayings, type Message } from '../../measure/message.js';
import { inUnit, parseLength, splitSize } from '../../measure/parse.js';
import type { Units } from '../../measure/units.js';
import { PACKAGES, type UsualPackage } from '../../trade/batting.js';

export interface PackageSayings {
  /** The name of a usual size. */
  usualPackage: { size: UsualPackage };
  packageWidth: undefined;
  packageLength: undefined;
  packagePrice: undefined;
  notPackage: { text: string };
  /** Something is wrong with one package of a list. */
  inPackage: { text: string; problem: Message };
  packageCount: { most: number };
}

const say = sayings<PackageSayings>();

/** A package of batting, as its label or a shop's list names it. */
export interface Package extends Size {
  /** The shop's own name for it, or the name of a usual size. */
  name: string | Message;
  /** Its name is that of the size for a crib. */
  isForCrib: boolean;
  price?: Exact | undefined;
  /** The price as somebody wrote it, with its currency. */
  priced?: string | undefined;
}

const CRIB: UsualPackage = 'crib';

/** The sizes that most shops have, where people measure in these units. */
export const usualPackages = (style: Style): Package[] =>
  PACKAGES[ownUnits(style)].map(({ name, width, length }) => ({
    name: say('usualPackage', { size: name }),
    isForCrib: name === CRIB,
    width: ownLength(width),
    length: ownLength(length),
  }));

const MOST_PACKAGES = 50;
const LONGEST_ENTRY = 120;

interface Parts {
  name: string;
  size: string;
  sides: [string, string];
}

/** The words of an entry before its size, and the size. Undefined if there is no size. */
const partsOf = (before: string, style: Style): Parts | undefined => {
  const words = before.trim().split(/\s+/);
  for (let at = 0; at < words.length; at += 1) {
    const size = words.slice(at).join(' ');
    const sides = splitSize(size);
    if (sides?.every((side) => parseLength(side, style).ok))
      return { name: words.slice(0, at).join(' '), size, sides };
  }
  return undefined;
};

/** Reads `large 90 x 100 @ 29`. The name before the size may be left out. */
const readPackage = (entry: string, style: Style): Package => {
  const [before = '', price, ...more] = entry.split('@');
  const parts = entry.length > LONGEST_ENTRY ? undefined : partsOf(before, style);
  if (!parts || more.length || price?.trim() === '') return refuse(say('notPackage', { text: entry }));
  const name = parts.name.replace(/[\s:,–—-]+$/, '');
  const [width, length] = parts.sides;
  const side = lengthField();
  return unlessRefused(
    () => ({
      name,
      isForCrib: name === CRIB,
      width: side.read(width, style, say('packageWidth')),
      length: side.read(length, style, say('packageLength')),
      price: readField(moneyField(), price, style, say('packagePrice')),
      priced: price?.trim(),
    }),
    ({ problem }) => refuse(say('inPackage', { text: entry, problem })),
  );
};

/** A list as text, as {@link readPackages} reads it. */
const writePackages = (raw: unknown): string => {
  const write = (entry: unknown): string => {
    if (Object(entry) !== entry) return textOf(entry);
    const { name, width, length, price } = entry as Record<string, unknown>;
    // Without the colon, a name that ends in a number would run into the width.
    return `${name ? `${textOf(name)}: ` : ''}${textOf(width)} x ${textOf(length)}${isBlank(price) ? '' : ` @ ${textOf(price)}`}`;
  };
  return Array.isArray(raw) ? raw.map(write).join('; ') : textOf(raw);
};

/**
 * Reads a list of packages: text with semicolons between (`small 40 x 50 @ 12.50; large 90 x 100 @ 29`), or an array of
 * such texts or of objects with `name`, `width`, `length` and perhaps `price`. Throws a `Refusal` that names the
 * entry it cannot read.
 */
const readPackages = (raw: unknown, style: Style): Package[] => {
  const entries = writePackages(raw)
    .split(';')
    .map((entry) => entry.trim())
    .filter(Boolean);
  if (!entries.length || entries.length > MOST_PACKAGES) refuse(say('packageCount', { most: MOST_PACKAGES }));
  return entries.map((entry) => readPackage(entry, style));
};

/** Adds this unit to every size in the list that has none. */
const packagesInUnit = (list: string, unit: Units): string =>
  list
    .split(';')
    .map((entry) => {
      const [before = '', ...price] = entry.split('@');
      const parts = before.length > LONGEST_ENTRY ? undefined : partsOf(before, { units: unit, comma: true });
      if (!parts) return entry.trim();
      const { name, size } = parts;
      return [[name, inUnit(size, unit, true)].filter(Boolean).join(' '), ...price].join(' @');
    })
    .join('; ');

/** A shop's own list. */
export const packagesField: Field<Package[]> = {
  kind: 'own',
  more: true,
  read: readPackages,
  write: (_packages, _style, raw) => writePackages(raw),
  marked: packagesInUnit,
};
