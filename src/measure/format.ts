import { exact, nearestTo, type Exact } from './exact.js';
import { toUnit, type Units } from './units.js';

/** How lengths are shown: in which units, and whether the language marks decimals with a comma. */
export interface Style {
  units: Units;
  comma?: boolean;
  /** The unit of a number alone, if that differs from the unit shown. */
  bare?: Units | undefined;
}

/** The units that a page is written in, also while a reader sees others: its defaults are round in these. */
export const ownUnits = ({ units, bare = units }: Style): Units => bare;

/** A mixed number as people write it: `121 1/2`. Exact; {@link parseLength} reads it back to the same value. */
export const mixed = ({ s, n, d }: Exact): string => {
  const sign = s < 0n ? '-' : '';
  if (d === 1n) return `${sign}${n}`;
  const whole = n / d;
  return `${sign}${whole ? `${whole} ` : ''}${n % d}/${d}`;
};

/**
 * For a page: keeps a mixed number and its unit on one line, with the × after it or the ≥ before it. Otherwise "1 1/8 yd" could
 * read as 1/8 yd. A size of whole numbers stays together too, "81 × 96 in". Other sizes may be longer than a line.
 * A number goes with the word that it counts up: "border 2". A size as people type it stays together: "12 x 40".
 */
export const unbroken = (text: string): string =>
  text
    .replace(
      /(\d|[≥≤<]) (?=\d|%|(?:in|cm|m|yd|[Ff]at)\b)|(×) (?=\d+(?: [a-z(]|,(?!\d)|\)))|(\p{L}) (?=\d+(?:[,;:](?!\d)|$))| (?=×|x \d)|(x) (?=\d)/gu,
      '$1$2$3$4\u00a0',
    )
    .replace(/([.,]\d+\u00a0×)\u00a0/g, '$1 ');

/** The same for a size in its own column, which is wide enough for all of it. */
export const unbrokenSize = (size: string): string => size.replace('× ', '×\u00a0');

/** A decimal number, rounded to at most this many places, without zeros at the end. */
export const decimal = (value: Exact, places: number, comma = false): string => {
  const text = String(nearestTo(value, exact(1, 10 ** places)).valueOf());
  return comma ? text.replace('.', ',') : text;
};

/** How many of the finest parts shown make one inch, and one centimetre. */
const FINE_INCHES = 64n;
const FINE_CMS = 1000n;
const SHOWN_INCH = exact(1, 16);

/**
 * A length in the style's units, without the unit: `52 1/2`, `133.35`. It is exact if a person can read it (64ths and thirds of
 * an inch, thousandths of a centimetre). Otherwise it is rounded to the nearest 1/16 in or millimetre, with ≈ before it.
 */
export const number = (inches: Exact, { units, comma }: Style): string => {
  if (units === 'in') {
    const readable = FINE_INCHES % inches.d === 0n || inches.d <= 12n;
    return readable ? mixed(inches) : `≈${mixed(nearestTo(inches, SHOWN_INCH))}`;
  }
  const cm = toUnit(inches, 'cm');
  return FINE_CMS % cm.d === 0n ? decimal(cm, 3, comma) : `≈${decimal(cm, 1, comma)}`;
};

/** A length with its unit: `52 1/2 in`, `133.35 cm`. */
export const length = (inches: Exact, style: Style): string => `${number(inches, style)} ${style.units}`;

/**
 * A length as the reader would type it: in the style's units if that is exact. If not, in the other system's units if that is
 * exact (150 cm on a page in inches). If neither is, it is rounded like {@link length}.
 */
export const asTyped = (inches: Exact, style: Style): string => {
  const own = length(inches, style);
  if (!own.startsWith('≈')) return own;
  const other = length(inches, { ...style, units: style.units === 'in' ? 'cm' : 'in' });
  return other.startsWith('≈') ? own : other;
};
