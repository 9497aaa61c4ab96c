import type { Field, Fields } from '../../src/ledger/field.js';
import type { Units } from '../../src/measure/units.js';

export type Roll = (sides: number) => number;
type Input = Record<string, unknown>;

/** Between which inches a length is thrown, and how many parts an inch has. */
const LENGTHS: Record<string, [least: number, most: number]> = {
  width: [14, 116],
  length: [14, 130],
  overage: [0, 6],
  fabricWidth: [30, 110],
  seam: [1 / 8, 3 / 4],
  repeat: [0, 30],
  perimeter: [60, 500],
  allowance: [0, 14],
  stripWidth: [1, 4],
  finished: [1 / 8, 1],
  thickness: [0, 1 / 2],
  mark: [1 / 16, 1 / 4],
  drop: [0, 24],
  tuck: [0, 20],
  block: [4, 18],
  sashing: [0, 3],
  ruler: [12, 24],
  borders: [1, 7],
  roll: [36, 124],
  target: [120, 160],
  mat: [18, 36],
};

/** Makes inputs as a person may write them, the same ones in every run. */
export class Inputs {
  constructor(
    readonly roll: Roll,
    readonly units: Units,
  ) {}

  one<T>(...list: T[]): T {
    return list[this.roll(list.length)]!;
  }

  /** In one of the ways in which lengths are written. */
  length(key: string, unit = this.units): string {
    const [least, most] = LENGTHS[key] ?? [1, 12];
    const parts = this.one(1, 2, 4, 8, 16, 3);
    const whole = Math.max(Math.ceil(least * parts), 1);
    const count = least === 0 && !this.roll(5) ? 0 : whole + this.roll(Math.max(1, most * parts - whole));
    const inches = `${Math.floor(count / parts)} ${count % parts}/${parts}`.replace(/ 0\/\d+$/, '');
    const here = unit === 'in' ? inches : `${inches} in`;
    const cm = (count / parts) * 2.54;
    const metric = `${cm.toFixed(cm < 3 ? 2 : this.roll(2))} cm`;
    return this.one(here, here, metric, unit === 'cm' ? metric.replace(' cm', '') : here);
  }

  #several(most: number, make: () => string, between = ', '): string {
    return Array.from({ length: 1 + this.roll(most) }, make).join(between);
  }

  #cutList(): string {
    const line = (): string => {
      const [shape, size] = this.one(
        ['square', `${this.length('block', 'cm')}`],
        ['rail', `${this.length('borders', 'cm')} x ${this.length('block', 'cm')}`],
        ['half-square triangles', `${this.length('borders', 'cm')} finished`],
      );
      return `${this.one('A', 'A', 'B')} | ${shape} | ${size} | ${1 + this.roll(24)}`;
    };
    return this.#several(3, line, '\n');
  }

  /** Something that may stand in such a field. */
  #value(key: string, { kind, options = [] }: Field): unknown {
    switch (kind) {
      case 'length':
        return this.length(key);
      case 'lengths':
        return this.#several(3, () => this.length(key, 'cm'));
      case 'size':
        return `${this.length(key, 'cm')} x ${this.length(key, 'cm')}`;
      case 'count':
        return 1 + this.roll(7);
      case 'percent':
        return this.one('0', '3', '4.5', '7 %', '1/2');
      case 'money':
        return this.one('12.50', '8', '9.99 EUR');
      case 'flag':
        return !this.roll(2);
      case 'choice':
        return this.one(...options);
      case 'choices':
        return this.#several(3, () => this.one(...options));
      case 'step':
        return this.one('1/8 yd', '1/4 yd', 'thirds', '10 cm', '1 in', '1/2 m');
      case 'text':
        return key === 'sheet' ? this.one('fat-quarter', '18 x 70 in', '') : '';
      case 'own':
        return key === 'list'
          ? this.#cutList()
          : `small ${this.length('length', 'cm')} x ${this.length('width', 'cm')}; large 130 in x 140 in @ 29`;
    }
  }

  /** An input for a calculator with these fields; what is needed is there, and of the rest so much that all comes up. */
  of(fields: Fields): Input {
    const input: Input = { units: this.units };
    for (const [key, field] of Object.entries(fields)) {
      const isNeeded =
        /^(width|length|borders|list)$/.test(key) || (!field.optional && field.initial === undefined);
      if (isNeeded || !this.roll(field.optional ? 6 : 3)) input[key] = this.#value(key, field);
    }
    if (!this.roll(4)) input['shown'] = this.one('in', 'cm');
    if (!this.roll(6)) input['lang'] = 'de';
    return input;
  }
}
