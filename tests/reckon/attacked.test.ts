import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import type { Answer, Refused } from '../../src/reckon.js';
import { reckonBacking } from '../../src/reckon.js';
import { reckonBatting } from '../../src/reckon.js';
import { reckonBinding } from '../../src/reckon.js';
import { reckonBorders } from '../../src/reckon.js';
import { reckonCutting } from '../../src/reckon.js';
import { reckonTop } from '../../src/reckon.js';

type Reckon = (input: never) => Answer | Refused;
const ALL: Record<string, Reckon> = {
  backing: reckonBacking,
  binding: reckonBinding,
  borders: reckonBorders,
  batting: reckonBatting,
  top: reckonTop,
  cutting: reckonCutting,
};
const run = (name: string, input: unknown): Answer | Refused => ALL[name]!(input as never);
const errorsOf = (name: string, input: unknown): Record<string, string> =>
  Object.fromEntries((run(name, input).errors ?? []).map(({ input, message }) => [input, message]));
const good = (name: string, input: unknown): Answer => {
  const result = run(name, input);
  if (result.errors) throw new Error(JSON.stringify(result.errors));
  return result;
};

const QUILT = { width: 58, length: 70 };

describe('what no person writes', () => {
  test.each(Object.keys(ALL))('%s takes nothing at all for no input', (name) => {
    for (const nothing of [undefined, null]) expect(run(name, nothing).errors).toBeTruthy();
  });

  test.each([
    ['backing', { width: NaN, length: 70 }, 'width'],
    ['backing', { width: Infinity, length: 70 }, 'width'],
    ['binding', { ...QUILT, perimeter: -Infinity }, 'perimeter'],
    ['borders', { ...QUILT, borders: Array<string>(2) }, 'borders'],
    ['batting', { ...QUILT, roll: Array<string>(3) }, 'roll'],
    ['batting', { width: {}, length: Symbol('length') }, 'width'],
    ['cutting', { list: 'A | square | 3 | 0' }, 'list'],
    ['borders', { ...QUILT, borders: '0.001', seam: 0 }, 'borders'],
    ['borders', { ...QUILT, borders: '1/65' }, 'borders'],
    ['top', { block: '0.001', across: 2, down: 2 }, 'block'],
    ['batting', { width: 1000, length: 1000, roll: '0.1' }, 'roll'],
  ])('in %s is refused in a sentence: %o', (name, input, at) => {
    const result = run(name, input);
    expect(errorsOf(name, input)[at]).toMatch(/^[A-Z“].*\.$/s);
    expect(JSON.stringify(result)).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });

  test('a fabric may have any name', () => {
    for (const name of ['constructor', '__proto__', 'toString'])
      expect(good('cutting', { list: `${name} | square | 3 | 4`, widths: { A: '30' } }).buy.unit).toBe('yd');
  });

  test('a flag is off for no, 0 and false, and on for anything else', () => {
    const one = (oneWay: unknown): string => good('backing', { ...QUILT, oneWay }).fabric;
    for (const off of ['no', '0', 0, 'false', false, null, undefined]) expect(one(off)).toBe(one(false));
    for (const on of ['', 'yes', true, 1]) expect(one(on)).toBe(one(true));
  });
});

describe('the example in a message works', () => {
  test.each([
    ['backing', { ...QUILT, fabricWidth: 2, seam: 1 }],
    ['backing', { ...QUILT, fabricWidth: 1, seam: 1 }],
    ['backing', { width: 2, length: 3, overage: 5 }],
    ['batting', { width: 2, length: 3, overage: 5 }],
    ['backing', { ...QUILT, fabricWidth: '1.01' }],
    ['binding', { ...QUILT, stripWidth: 3, fabricWidth: 2 }],
    ['binding', { ...QUILT, stripWidth: 30, fabricWidth: 20 }],
    ['binding', { ...QUILT, finished: 6, fabricWidth: 12 }],
    ['binding', { ...QUILT, fabricWidth: 2 }],
    ['binding', { ...QUILT, fabricWidth: 3, cut: 'bias' }],
    ['binding', { ...QUILT, fabricWidth: 3, stripWidth: 3 }],
    ['binding', { ...QUILT, join: 'straight', fabricWidth: '1/2', stripWidth: '1/2' }],
    ['binding', { ...QUILT, join: 'straight', seam: 3, fabricWidth: 6 }],
    ['batting', { ...QUILT, roll: '0.1' }],
    ['top', { block: '0.001', across: 2, down: 2 }],
    ['borders', { ...QUILT, borders: 0 }],
    ['borders', { ...QUILT, borders: '2, 4 1/2', target: '60 x 72' }],
    ['cutting', { list: 'A square 3 1/2 48' }],
    ['cutting', { list: 'A, square, 3 1/2, 48' }],
    ['cutting', { list: 'A | square | 3 | 4', currency: 'dollars' }],
    ['cutting', { list: 'A | square | 3 | 4', price: '12 ft' }],
  ])('%s %o', (name, input) => {
    for (const [at, message] of Object.entries(errorsOf(name, input))) {
      // The last thing it says to write, without what it offers in its place.
      const example = /^.*\b(?:like|Write) (.+?)(?:,? or .*)?\.$/s.exec(message)?.[1];
      expect(example, message).toBeTruthy();
      expect(errorsOf(name, { ...input, [at]: example }), `${at}: ${message}`).toEqual({});
    }
    expect(run(name, input).errors).toBeTruthy();
  });
});

describe('what is never short', () => {
  test('metres without an end are written rounded up', () => {
    // 1/3 m = 0.33333… m; the need is just that: 10 in wide and 1/3 m long, in one panel.
    const { buy } = good('backing', { width: 10, length: '1/3 m', overage: 0, increment: '1/3 m' });
    expect(buy.amount).toBe('0.3334');
    expect(exact(buy.amount).mul(5000).div(127).gte(exact(buy.inches))).toBe(true);
  });

  test.each([
    // Nominal and usable widths: common practice, no source.
    [21, 20],
    [23, 20],
    [43, 40],
    [44, 40],
    [46, 40],
    [53, 52],
    [54, 52],
    [55, 52],
    [107, 106],
    [108, 106],
    [110, 106],
  ])('cloth of %s in is said to be usable to %s in', (sold, usable) => {
    const notes = (fabricWidth: number): string => good('backing', { ...QUILT, fabricWidth }).notes.join();
    expect(notes(sold)).toContain(`usually ${usable} in without its selvages`);
    expect(notes(usable)).not.toContain('selvages');
  });

  test('cut sizes of cloth that shrinks are said to be of washed cloth', () => {
    const notes = (shrinkage: number): string => good('binding', { ...QUILT, shrinkage }).notes.join();
    expect(notes(3)).toContain('Wash the cloth before you cut it');
    expect(notes(0)).not.toContain('Wash');
  });
});
