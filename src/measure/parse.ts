import { exact, ZERO, type Exact } from './exact.js';
import { INCHES, fromUnit, type Unit, type Units } from './units.js';

/**
 * Reads what a person writes for a length: `52`, `52.5`, `52 1/2`, `52-1/2`, `52½`, `52 1/2"`, `4' 4"`, `1 yd 16 in`,
 * `132 cm`, and simple arithmetic with them (`3 * 12 1/2 + 4`, a leading `=` allowed).
 *
 * Where a sign could mean two things, spaces decide:
 * - a hyphen with no space on either side joins a whole number to a fraction, or feet to inches (`52-1/2` is
 *   fifty-two and a half, `4'-6"` four foot six); any other hyphen takes away (`52 - 1/2`, `8-3`);
 * - a slash with no space on either side, between whole numbers, is a fraction; any other slash divides;
 * - a point marks decimals everywhere, a comma only where the page's language writes so; nothing marks thousands.
 */
export type Parsed = { ok: true; value: Exact } | { ok: false; message: string };

export interface Reading {
  /** What a bare number is in. Default `in`. */
  units?: Units;
  /** The page's language marks decimals with a comma. Default false. */
  comma?: boolean;
}

const LONGEST_TEXT = 100;
const LARGEST = exact(1_000_000_000);
const FINEST = 1_000_000_000n;

/** A sentence for the reader; it ends with something that works. */
class Problem extends Error {}
const stop = (what: string, example = '52 1/2'): never => {
  throw new Problem(`${what} Write it like ${example}.`);
};
export const quoted = (text: string): string => `“${text.length > 24 ? `${text.slice(0, 24)}…` : text}”`;

const UNIT_WORDS: [RegExp, Unit][] = [
  [/^(in|ins|inch|inches)$/, 'in'],
  [/^(ft|foot|feet)$/, 'ft'],
  [/^(yd|yds|yard|yards)$/, 'yd'],
  [/^(mm|millimet(er|re)s?)$/, 'mm'],
  [/^(cm|centimet(er|re)s?)$/, 'cm'],
  [/^(m|met(er|re)s?)$/, 'm'],
];

/** One spelling for each sign: curly marks, primes, typographic fractions and minus signs become plain ones. */
const plain = (text: string): string =>
  text
    .replace(/(\d)(?=[¼-¾⅐-⅞↉])/g, '$1 ')
    .normalize('NFKC')
    .replace(/[⁄∕]/g, '/')
    .replace(/[“”„″]|''|’’|′′/g, '"')
    .replace(/[‘’′´`]/g, "'")
    .replace(/[−–‐‑]/g, '-')
    .replace(/[×·✕]/g, '*')
    .replace(/÷/g, ' / ')
    .trim()
    .replace(/^=\s*/, '');

type Token =
  | { is: 'number'; value: Exact }
  | { is: 'unit'; unit: Unit }
  | { is: 'joint' }
  | { is: '+' | '-' | '*' | '/' | '(' | ')' };

const MIXED = /(\d+)(?:\s+|-)(\d+)\/(\d+)(?![\d.,])/y;
const FRACTION = /(\d+)\/(\d+)(?![\d.,])/y;
const DECIMAL = /\d*[.,]?\d+|\d+[.,]/y;
const WORD = /\p{L}+\.?/uy;
const MARK = /["']/y;
const JOINT = /(?<=')-(?=\d)/y;
const SIGN = /[+\-*/()]/y;
const GAP = /\s+/y;

const fraction = (top: string, bottom: string): Exact => {
  if (/^0+$/.test(bottom)) stop('A fraction cannot have 0 under its line.', '1/2');
  if (bottom.length > 6 || top.length > 9) stop('That fraction is finer than anybody can measure.');
  return exact(BigInt(top), BigInt(bottom));
};

const decimal = (text: string, comma: boolean): Exact => {
  if (text.includes(',') && !comma) stop('Here a comma does not mark decimals.', '52.5 or 52 1/2');
  const [whole = '', places = ''] = text.split(/[.,]/);
  if (whole.length > 9) stop('That number is too large to be a length.');
  if (places.length > 6) stop('That number has more decimal places than anybody can measure.', '52.5');
  return exact(`${whole || '0'}.${places || '0'}`);
};

const tokens = (text: string, comma: boolean): Token[] => {
  const found: Token[] = [];
  let at = 0;
  const match = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const hit = pattern.exec(text);
    if (hit) at = pattern.lastIndex;
    return hit;
  };
  while (at < text.length) {
    let hit: RegExpExecArray | null;
    if (match(GAP)) continue;
    if ((hit = match(MIXED))) {
      const part = fraction(hit[2]!, hit[3]!);
      if (part.gte(1))
        stop(`${quoted(hit[0])} can be read two ways, because ${hit[2]}/${hit[3]} is not less than one.`);
      found.push({ is: 'number', value: decimal(hit[1]!, comma).add(part) });
    } else if ((hit = match(FRACTION))) found.push({ is: 'number', value: fraction(hit[1]!, hit[2]!) });
    else if ((hit = match(DECIMAL))) found.push({ is: 'number', value: decimal(hit[0], comma) });
    else if (match(JOINT)) found.push({ is: 'joint' });
    else if ((hit = match(MARK))) found.push({ is: 'unit', unit: hit[0] === '"' ? 'in' : 'ft' });
    else if ((hit = match(WORD))) {
      const word = hit[0].toLowerCase().replace(/\.$/, '');
      const unit = UNIT_WORDS.find(([pattern]) => pattern.test(word))?.[1];
      if (unit) found.push({ is: 'unit', unit });
      else if (word === 'x') found.push({ is: '*' });
      else stop(`${quoted(hit[0])} is not a length or a unit.`, '52 1/2, 52 in or 132 cm');
    } else if ((hit = match(SIGN))) found.push({ is: hit[0] as '+' });
    else stop(`${quoted(text.slice(at))} is not part of a length.`, '52 1/2, 52 in or 132 cm');
  }
  return found;
};

/** A number on the way through the arithmetic: a length in inches, or bare, to be read in the element's units. */
interface Term {
  value: Exact;
  bare: boolean;
}

const bounded = (value: Exact): Exact => {
  if (value.abs().gt(LARGEST)) stop('That is too large to be a length.');
  if (value.d > FINEST) stop('That is finer than anybody can measure.');
  return value;
};

class Arithmetic {
  #at = 0;
  constructor(
    readonly tokens: Token[],
    readonly units: Units,
  ) {}

  whole(): Exact {
    const term = this.#sum();
    const left = this.#next();
    if (left?.is === ')') stop('There is a closing bracket without an opening one.', '2 * (12 + 4)');
    if (left?.is === 'unit') stop('There is a unit without a number before it.', '52 in');
    if (left) stop('Two numbers stand side by side with nothing between them.', '52 1/2 or 12 + 4');
    return this.#inches(term);
  }

  #next = (): Token | undefined => this.tokens[this.#at];
  #take(...signs: string[]): Token | undefined {
    const token = this.#next();
    if (!token || !signs.includes(token.is)) return undefined;
    this.#at += 1;
    return token;
  }
  #inches = (term: Term): Exact => bounded(term.bare ? fromUnit(term.value, this.units) : term.value);

  #sum(): Term {
    let left = this.#product();
    for (let sign; (sign = this.#take('+', '-')); ) {
      const right = this.#product();
      const add = (a: Exact, b: Exact): Exact => bounded(sign!.is === '+' ? a.add(b) : a.sub(b));
      left =
        left.bare && right.bare
          ? { value: add(left.value, right.value), bare: true }
          : { value: add(this.#inches(left), this.#inches(right)), bare: false };
    }
    return left;
  }

  #product(): Term {
    let left = this.#factor();
    for (let sign; (sign = this.#take('*', '/')); ) {
      const right = this.#factor();
      if (sign.is === '*') {
        if (!left.bare && !right.bare) stop('A length times a length is an area.', '3 * 12 in');
        left = { value: bounded(left.value.mul(right.value)), bare: left.bare && right.bare };
      } else {
        if (right.value.equals(ZERO)) stop('Nothing can be divided by 0.', '60 / 2');
        if (left.bare && !right.bare) stop('A plain number cannot be divided by a length.', '60 in / 2');
        left = { value: bounded(left.value.div(right.value)), bare: left.bare || !right.bare };
      }
    }
    return left;
  }

  #factor(): Term {
    const sign = this.#take('-', '+');
    if (sign) {
      const term = this.#factor();
      return sign.is === '-' ? { ...term, value: term.value.neg() } : term;
    }
    if (this.#take('(')) {
      const term = this.#sum();
      if (!this.#take(')')) stop('A bracket is opened and not closed.', '2 * (12 + 4)');
      return term;
    }
    return this.#measure();
  }

  /** A number with its unit, and smaller units of the same kind after it: `4' 4"`, `1 yd 16 in`, `4 ft 6`. */
  #measure(): Term {
    const number = this.#take('number');
    if (number?.is !== 'number') return stop('There is a number missing.', '52 1/2 or 12 + 4');
    let unit = this.#unit();
    if (!unit) return { value: number.value, bare: true };
    let value = fromUnit(number.value, unit);
    for (;;) {
      this.#take('joint');
      const more = this.#take('number');
      if (more?.is !== 'number') return { value: bounded(value), bare: false };
      const smaller: Unit | undefined = this.#unit() ?? (unit === 'ft' ? 'in' : undefined);
      if (!smaller || INCHES[smaller].gte(INCHES[unit]) || smaller.endsWith('m') !== unit.endsWith('m'))
        return stop('Two lengths stand side by side.', '4 ft 6 in, or with a + between them');
      value = value.add(fromUnit(more.value, smaller));
      unit = smaller;
    }
  }

  #unit(): Unit | undefined {
    const token = this.#take('unit');
    return token?.is === 'unit' ? token.unit : undefined;
  }
}

/** Reads a length; see the rules above. The value is exact inches. Never throws: a problem is a sentence. */
export const parseLength = (text: string, { units = 'in', comma = false }: Reading = {}): Parsed => {
  try {
    if (text.length > LONGEST_TEXT) stop('That is too long to be a length.');
    const line = plain(text);
    if (!line) stop('There is nothing here yet.');
    return { ok: true, value: new Arithmetic(tokens(line, comma), units).whole() };
  } catch (problem) {
    if (problem instanceof Problem) return { ok: false, message: problem.message };
    throw problem;
  }
};

/**
 * Splits a written list. A semicolon or a comma separates, except a comma between digits where the page's language
 * marks decimals with it ("2, 4,5" is two and four and a half there).
 */
export const splitList = (text: string, comma = false): string[] =>
  text
    .split(comma ? /;|,(?!\d)|(?<!\d),/ : /[;,]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');

/** A unit that stands once, behind the second of two sides, holds for both: `60` beside `80 cm` is 60 cm. */
export const sameUnit = (first: string, second: string): string => {
  const [unit, ...more] = second.match(/\p{L}+\.?|["'”″’′]+/gu) ?? [];
  return unit && !more.length && second.endsWith(unit) && !/[\p{L}"'”″’′]/u.test(first) ? `${first} ${unit}` : first;
};

/** Splits "60 x 80" (or × or "by") into its two sides; undefined when there are not two. */
export const splitSize = (text: string): [string, string] | undefined => {
  const [first, second, ...more] = text.split(/\s*(?:[x×]|by)\s*/i).map((side) => side.trim());
  return first && second && !more.length ? [sameUnit(first, second), second] : undefined;
};
