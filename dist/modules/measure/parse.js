import { exact, ZERO, nearestTo } from './exact.js';
import { sayings } from './message.js';
import { fromUnit, INCHES, toUnit } from './units.js';

const say = sayings();
const LONGEST_TEXT = 100;
const LARGEST = 1e12;
/** Carries what is wrong with a text out of the arithmetic. */
class Unreadable extends Error {
    constructor(problem) {
        super(problem.code);
        this.problem = problem;
    }
}
const stop = (problem) => {
    throw new Unreadable(problem);
};
/** Makes curly quotes, primes, fraction signs, dashes and odd spaces plain, so that each sign has one spelling. */
const plain = (text) => text
    .replace(/[\d/¼-¾⅐-⅞](?=\p{No})|[¼-¾⅐-⅞](?=\d)/gu, '$& ')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\p{Cf}/gu, ' ')
    .replace(/[‘’′]/g, "'")
    .replace(/[“”]|''/g, '"')
    .replace(/⁄/g, '/')
    .replace(/[‐-―−]/g, '-')
    .replace(/÷/g, ' / ')
    .replace(/^\s*=|\.\s*$/g, '');
const NUMBER = /^(\d+(\s+|-)\d+\s*\/\s*0*[1-9]\d*(?![\d.,])|\d+\/0*[1-9]\d*(?![\d.,])|\d*[.,]?\d+)/;
const UNIT = /^((?<in>"|in(s|ch(es)?)?)|(?<ft>'|f(oo|ee)?t)|(?<yd>y(ar)?ds?)|(?<mm>m(illi)?m(et(er|re)s?)?)|(?<cm>c(enti)?m(et(er|re)s?)?)|(?<m>m(et(er|re)s?)?))(?![a-wyz])\.?/;
/** Reads `0.3333` as 1/3 and `22.66667` as 22 2/3: they can mean nothing else, and nobody can cut the difference. */
const asThird = (value, places = '') => {
    const third = nearestTo(value, exact(1, 3));
    // The last place may be rounded, or the rest left out.
    const off = third.sub(value).mul(exact(10n ** BigInt(places.length)));
    return places.length > 3 && third.d > 1n && off.lt(1) && off.mul(-2).lt(1) ? third : value;
};
/** Most lengths need no arithmetic: `58`, `58.5`. */
const BARE = /^\d{1,6}(\.\d{1,3})?$/;
/** Reads a sum from left to right. Each method takes what its name says from the start of what is left. */
class Sum {
    #rest;
    constructor(text, bare, comma) {
        this.text = text;
        this.bare = bare;
        this.comma = comma;
        this.#rest = plain(text);
    }
    /** The whole text as inches. */
    total() {
        const [value, power] = this.#sum();
        if (this.#rest.trim())
            this.#stuck();
        return this.#inches(value, power);
    }
    #sum() {
        let [value, power] = this.#product();
        // The sign belongs to the next product: taking away is adding a number below 0.
        while (/^\s*[-+]/.test(this.#rest)) {
            const [more, its] = this.#product();
            [value, power] =
                power || its ? [this.#inches(value, power).add(this.#inches(more, its)), 1] : [value.add(more), 0];
        }
        return [value, power];
    }
    #product() {
        let [value, power] = this.#factor();
        for (let sign; (sign = this.#take(/^[*x×/]/)?.[0]);) {
            const [by, its] = this.#factor();
            if (sign !== '/')
                [value, power] = [value.mul(by), power + its];
            else if (by.n)
                [value, power] = [value.div(by), power - its];
            else
                stop(say('divideByZero'));
        }
        return [value, power];
    }
    #factor() {
        const sign = this.#take(/^[-+(]/)?.[0];
        if (!sign) {
            const value = this.#number() ?? this.#stuck();
            const its = this.#unit();
            return its ? [fromUnit(value, its).add(this.#smaller(its)), 1] : [value, 0];
        }
        const [value, power] = sign === '(' ? this.#sum() : this.#factor();
        if (sign !== '(')
            return [sign === '-' ? value.neg() : value, power];
        if (!this.#take(/^\)/))
            stop(say('openBracket'));
        const its = power ? undefined : this.#unit();
        return its ? [fromUnit(value, its), 1] : [value, power];
    }
    /** The rest of a length in smaller units, as in `4' 4"`, `1 yd 16 in`, `4 ft 6`. */
    #smaller(than) {
        const before = this.#rest;
        if (than === 'ft')
            this.#rest = before.replace(/^-(?=\S)/, '');
        const more = this.#number();
        const its = this.#unit() ?? (than === 'ft' ? 'in' : than);
        if (more && INCHES[its].lt(INCHES[than]))
            return fromUnit(more, its).add(this.#smaller(its));
        this.#rest = before;
        return ZERO;
    }
    #number() {
        const written = this.#take(NUMBER)?.[0];
        if (!written)
            return undefined;
        if (written.includes(',') && !this.comma)
            stop(say('noComma'));
        const [part = '', whole] = written
            .replace(',', '.')
            .replace(/\s*\/\s*/, '/')
            .split(/\s+|-/)
            .reverse();
        const value = exact(part);
        if (!whole)
            return asThird(value, part.split('.')[1]);
        if (value.gte(1))
            stop(say('twoReadings', { text: written }));
        return value.add(exact(whole));
    }
    #unit() {
        const names = this.#take(UNIT)?.groups;
        return names && Object.keys(names).find((name) => names[name]);
    }
    /** Takes the next part of the text, if it is of this kind. */
    #take(kind) {
        const rest = this.#rest.trimStart();
        const found = kind.exec(rest);
        if (found)
            this.#rest = rest.slice(found[0].length);
        return found;
    }
    #inches(value, power) {
        return power === 1 ? value : power ? stop(say('notPlain')) : fromUnit(value, this.bare);
    }
    #stuck() {
        if (this.#take(NUMBER))
            stop(say('twoNumbers'));
        return stop(this.#take(UNIT) ? say('unitFirst') : say('notLength', { text: this.text }));
    }
}
/**
 * Reads what a person writes for a length: `52`, `52.5`, `52 1/2`, `52-1/2`, `52½`, `52 1/2"`, `4' 4"`, `1 yd 16 in`,
 * `132 cm`, and simple arithmetic with them (`3 * 12 1/2 + 4`, a leading `=` allowed; `x` and `×` multiply too).
 *
 * If a sign could mean two things, spaces decide:
 * - a hyphen with no space on either side joins a whole number to a fraction, or feet to inches (`52-1/2` is
 *   fifty-two and a half, `4'-6"` four foot six); any other hyphen takes away (`52 - 1/2`, `8-3`);
 * - a slash with no space on either side, between whole numbers, is a fraction, and so is any slash between the last two of
 *   three (`60 1 / 2`, `60-1 / 2`); any other slash divides;
 * - a point marks decimals everywhere, a comma only where the page's language writes so; nothing marks thousands.
 *
 * The value is exact inches. Never throws: a problem is a message.
 */
const parseLength = (text, { units = 'in', comma = false, bare = units } = {}) => {
    if (BARE.test(text))
        return { ok: true, value: fromUnit(exact(text), bare) };
    try {
        if (text.length > LONGEST_TEXT)
            stop(say('tooLong'));
        const value = new Sum(text, bare, comma).total();
        if (value.n + value.d > LARGEST)
            stop(say('tooFine'));
        return { ok: true, value };
    }
    catch (stopped) {
        if (!(stopped instanceof Unreadable))
            throw stopped;
        return { ok: false, problem: stopped.problem };
    }
};
/** What can still follow an unfinished length: digits, the rest of a unit, closing brackets. */
const UNITS = [
    'inches',
    'feet',
    'foot',
    'yards',
    'centimetres',
    'centimeters',
    'millimetres',
    'metres',
    'by 60',
];
const MORE = ['2', '64', '6', '.5', ' in', ' x 60', '8 yd'];
/** Whether a text can still become something readable, as `61 1/` does when somebody types `61 1/2`. */
const isBegun = (text, reads) => {
    const [letters = ''] = /\p{L}*$/u.exec(text);
    const begun = UNITS.filter((unit) => letters && unit.startsWith(letters.toLowerCase()));
    const closed = ')'.repeat(Math.max(0, text.split('(').length - text.split(')').length));
    return (!!text.trim() &&
        !reads(text) &&
        // Nobody writes 1/02.
        !/\/\s*0$/.test(text) &&
        [
            ...begun.map((unit) => text.slice(0, -letters.length) + unit),
            ...['', ...MORE].map((more) => text + more),
            // The number above the line of a fraction.
            text.replace(/\d\s+\d+$/, '$&/64'),
        ].some((whole) => reads(whole + closed)));
};
/** If only the last of several lengths has a unit, it counts for all of them: `60` beside `80 cm` is 60 cm. */
const sameUnit = (first, second) => {
    const unit = /^[^\p{L}"'’′”″]+([\p{L}"'’′”″]+)\.?$/u.exec(`${first}0${second}`)?.[1];
    return unit ? `${first} ${unit}` : first;
};
/**
 * Adds the unit to a text, for a place where a number alone means another unit: `58 cm`, `(3 * 12 1/2) cm`. One unit counts for
 * all lengths of a list. If a text has a unit already, or no number, it stays the same.
 */
const inUnit = (text, unit, several = false) => {
    const bare = text.replace(/^\s*=/, '').trim();
    if (!/\p{N}/u.test(bare) || /[a-wyz"'’′”″]/i.test(bare.replace(/by/i, '')))
        return text;
    return `${several || /^[\p{N}\s.,/]+$/u.test(bare) ? bare : `(${bare})`} ${unit}`;
};
/** The entries of a written list, as {@link splitList} finds them. Empty ones count too, except one at the end. */
const placesOf = (text, comma = false) => {
    const parts = (comma ? text.replace(/([^\d\s;]),/g, '$1;') : text)
        .split(comma ? /;|,(?!\d)/ : /[;,]/)
        .map((part) => part.trim());
    return parts.at(-1) ? parts : parts.slice(0, -1);
};
/** Splits "60 x 80" (or × or "by") into its two sides, or gives undefined if there are not two. */
const splitSize = (text) => {
    const [first, second, ...more] = text.split(/x|×|by/i).map((side) => side.trim());
    return first && second && !more.length ? [sameUnit(first, second), second] : undefined;
};
/** Both sides of a quilt, if somebody wrote them in the place of one: `60x72`. A number below 10 multiplies: `5 x 12`. */
const bothSides = (text, reading) => {
    const sides = /[=*+()]/.test(text) ? undefined : splitSize(text);
    return sides?.every((side) => {
        const read = parseLength(side, reading);
        return read.ok && toUnit(read.value, reading.bare ?? reading.units ?? 'in').gte(10);
    })
        ? sides
        : undefined;
};

export { bothSides, inUnit, isBegun, parseLength, placesOf, sameUnit, say, splitSize };
