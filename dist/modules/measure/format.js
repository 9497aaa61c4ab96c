import { exact, nearestTo } from './exact.js';
import { toUnit } from './units.js';

/** A mixed number as people write it: `121 1/2`. Exact; {@link parseLength} reads it back to the same value. */
const mixed = ({ s, n, d }) => {
    const sign = s < 0n ? '-' : '';
    if (d === 1n)
        return `${sign}${n}`;
    const whole = n / d;
    return `${sign}${whole ? `${whole} ` : ''}${n % d}/${d}`;
};
/**
 * For a page: a mixed number with its unit, with the × after it or the ≥ before it, stays on one line; "1 1/8 yd" may not
 * read as 1/8 yd. A size of whole numbers does too, "81 × 96 in"; others may be longer than a line.
 */
const unbroken = (text) => text.replace(/(\d|[≥≤<]) (?=\d|%|(?:in|cm|m|yd)\b)|(×) (?=[\d.]+(?: [a-z(]|[,)]))| (?=×)/g, '$1$2\u00a0');
/** The same for a size in a column of its own, which holds all of it. */
const unbrokenSize = (size) => size.replace('× ', '×\u00a0');
/** A decimal number, rounded to at most so many places; no noughts at its end. */
const decimal = (value, places, comma = false) => {
    const text = String(nearestTo(value, exact(1, 10 ** places)).valueOf());
    return comma ? text.replace('.', ',') : text;
};
/** The finest parts of an inch and of a centimetre that are shown: so many in one. */
const FINE_INCHES = 64n;
const FINE_CMS = 1000n;
const SHOWN_INCH = exact(1, 16);
/**
 * A length in the style's units without the unit: `52 1/2`, `133.35`. Shown exactly where a person could read it
 * (64ths and thirds of an inch, thousandths of a centimetre); otherwise to the nearest 1/16 in or millimetre, behind an ≈.
 */
const number = (inches, { units, comma }) => {
    if (units === 'in') {
        const readable = FINE_INCHES % inches.d === 0n || inches.d <= 12n;
        return readable ? mixed(inches) : `≈${mixed(nearestTo(inches, SHOWN_INCH))}`;
    }
    const cm = toUnit(inches, 'cm');
    return FINE_CMS % cm.d === 0n ? decimal(cm, 3, comma) : `≈${decimal(cm, 1, comma)}`;
};
/** A length with its unit: `52 1/2 in`, `133.35 cm`. */
const length = (inches, style) => `${number(inches, style)} ${style.units}`;
/**
 * A length as the reader would type it again: in the style's units where that is exact, else in the other system's
 * where that is (150 cm on a page in inches), else rounded as {@link length} does.
 */
const asTyped = (inches, style) => {
    const own = length(inches, style);
    if (!own.startsWith('≈'))
        return own;
    const other = length(inches, { ...style, units: style.units === 'in' ? 'cm' : 'in' });
    return other.startsWith('≈') ? own : other;
};

export { asTyped, decimal, length, mixed, number, unbroken, unbrokenSize };
