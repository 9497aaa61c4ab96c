import type { Units } from '../../src/measure/units.js';

/** What a written number may stand for: one behind an ≈ was rounded. */
export interface Range {
  low: number;
  high: number;
}

/** By how much a rounded length may be off: half of 1/16 in, or of a millimetre. */
const OFF: Record<Units, number> = { in: 1 / 32, cm: 0.05 };
/** What a root is longer than it is, since it is never short, and what a computer's own numbers lose. */
const SLACK = 2e-5;

const WHOLE_AND_PART = String.raw`(?<whole>\d+) (?<top>\d+)/(?<bottom>\d+)`;
const NUMBER = String.raw`≈?-?(?:\d+ \d+/\d+|\d+/\d+|\d+(?:[.,]\d+)?)`;
const TOKEN = new RegExp(`\\s*(?:(${NUMBER})( %)?|(√2)|([-+−×÷√()]))`, 'uy');
const ROUNDED_UP = new RegExp(
  `, rounded up to (?:whole repeats of|the next) (${NUMBER})(?: (?:in|cm))?$`,
  'u',
);

const spread = (...corners: number[]): Range => ({ low: Math.min(...corners), high: Math.max(...corners) });

/** A written number, as a person reads it: `12 3/8`, `≈4 1/16`, `0,7`. */
export const readNumber = (text: string, units: Units): Range => {
  const isRough = text.startsWith('≈');
  const [, sign, digits = ''] = /^≈?(-?)(.*)$/u.exec(text) ?? [];
  const mixed = new RegExp(`^${WHOLE_AND_PART}$`, 'u').exec(digits)?.groups;
  const [top = NaN, bottom = 1] = digits.replace(',', '.').split('/').map(Number);
  const size = mixed ? Number(mixed['whole']) + Number(mixed['top']) / Number(mixed['bottom']) : top / bottom;
  const value = sign ? -size : size;
  const off = isRough ? OFF[units] : 0;
  return { low: value - off, high: value + off };
};

type Token = Range | string;

const tokensOf = (text: string, units: Units): Token[] => {
  const tokens: Token[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.trimEnd().length) {
    const found = TOKEN.exec(text);
    if (!found) throw new Error(`“${text}” cannot be read.`);
    const [, number, percent, rootOfTwo, sign] = found;
    if (number) {
      const { low, high } = readNumber(number, units);
      tokens.push(percent ? { low: low / 100, high: high / 100 } : { low, high });
    } else if (rootOfTwo) tokens.push({ low: Math.SQRT2, high: Math.SQRT2 });
    else if (sign) tokens.push(sign);
  }
  return tokens;
};

/** Reads by the rules of arithmetic: brackets first, then × and ÷, then + and −, from the left. */
class Reading {
  at = 0;
  constructor(readonly tokens: Token[]) {}

  #taken(...signs: string[]): string | undefined {
    const sign = this.tokens[this.at];
    if (typeof sign !== 'string' || !signs.includes(sign)) return undefined;
    this.at += 1;
    return sign;
  }

  sum(): Range {
    let all = this.#product();
    for (let sign; (sign = this.#taken('+', '−'));) {
      const { low, high } = this.#product();
      all =
        sign === '+'
          ? { low: all.low + low, high: all.high + high }
          : { low: all.low - high, high: all.high - low };
    }
    return all;
  }

  #product(): Range {
    let all = this.#part();
    for (let sign; (sign = this.#taken('×', '÷'));) {
      const { low, high } = this.#part();
      const [a, b] = sign === '×' ? [low, high] : [1 / low, 1 / high];
      all = spread(all.low * a, all.low * b, all.high * a, all.high * b);
    }
    return all;
  }

  #part(): Range {
    if (this.#taken('√')) {
      const { low, high } = this.#part();
      return { low: Math.sqrt(Math.max(0, low)), high: Math.sqrt(high) };
    }
    if (this.#taken('(')) {
      const inside = this.sum();
      if (!this.#taken(')')) throw new Error('A bracket is not closed.');
      return inside;
    }
    const number = this.tokens[this.at];
    if (typeof number !== 'object') throw new Error(`A number is missing at ${String(number)}.`);
    this.at += 1;
    return number;
  }
}

/** What a formula comes to as it is written, read without any help of the code that wrote it. */
export const readFormula = (text: string, units: Units): Range => {
  const up = ROUNDED_UP.exec(text);
  if (up) {
    const { low, high } = readFormula(text.slice(0, up.index), units);
    const step = readNumber(up[1] ?? '', units);
    const steps = { least: Math.ceil((low - SLACK) / step.high), most: Math.ceil((high + SLACK) / step.low) };
    return { low: steps.least * step.low, high: steps.most * step.high };
  }
  const reading = new Reading(tokensOf(text, units));
  const range = reading.sum();
  if (reading.at < reading.tokens.length) throw new Error(`“${text}” goes on after its end.`);
  return range;
};

/** Whether two written numbers may be one and the same. */
export const agree = (a: Range, b: Range): boolean => {
  const slack = SLACK + 1e-9 * Math.max(Math.abs(a.high), Math.abs(b.high));
  return a.low <= b.high + slack && b.low <= a.high + slack;
};

/** What is wrong with a line of the working, `58 + 2 × 4 = 66 in`: nothing where its sides agree. */
export const faultIn = (how: string, units: Units): string | undefined => {
  const at = Math.max(how.lastIndexOf(' = '), how.lastIndexOf(' ≈ '));
  try {
    const formula = readFormula(how.slice(0, at), units);
    const value = how
      .slice(at + 1)
      .replace(/^= /, '')
      .replace(/^≈ /, '≈')
      .replace(/ (in|cm)$/, '');
    const result = readFormula(value, units);
    return agree(formula, result) ? undefined : `${how}: that is ${formula.low} to ${formula.high}`;
  } catch (error) {
    return `${how}: ${(error as Error).message}`;
  }
};
