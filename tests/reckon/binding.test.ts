import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact, type Exact } from '../../src/measure/exact.js';
import { bindingFields } from '../../src/calculators/binding/shape.js';
import { reckonBinding, type BindingInput } from '../../src/reckon.js';
import { HOSTILE, inputsOf } from './hostile.js';
import { answersOf, errorsOf, row } from './asked.js';

const good = answersOf(reckonBinding);

const errorOf = errorsOf(reckonBinding);

/** Defaults that are round in each unit, written out where units are compared. */
const WRITTEN = { allowance: '10 in', fabricWidth: '40 in' };

const quilt = { width: 58, length: 70 };

describe('the length', () => {
  // geometry: 2 × (58 + 70) + 10
  test('is the way round and the allowance', () => {
    const result = good(quilt);
    expect(result.length).toBe('266');
    expect(row(result, 'around')).toMatchObject({
      value: '256 in',
      how: '2 × (58 + 70) = 256 in',
      from: ['width', 'length'],
      role: 'measurable',
    });
    expect(row(result, 'need')).toMatchObject({ value: '266 in', how: '256 + 10 = 266 in' });
  });

  test('may do without an allowance', () => expect(good({ ...quilt, allowance: 0 }).length).toBe('256'));

  test('a typed perimeter takes the place of width and length', () => {
    // geometry: as long as it was measured, and 10 in for corners and closing (common practice, no source)
    const result = good({ perimeter: '300 in', allowance: '0' });
    expect(result.length).toBe('300');
    expect(result.notes.join()).toContain('bias');
    expect(good({ perimeter: '300', cut: 'bias' }).notes.join()).not.toContain('curved');
    expect(good({ ...quilt, perimeter: '300' }).length).toBe('310');
  });

  test('the way round can be measured and typed over', () => {
    // geometry: 257 1/2 + 10
    const result = good({ ...quilt, measured: { around: '257 1/2' } });
    expect(result.length).toBe('267 1/2');
    expect(row(result, 'around')).toMatchObject({
      role: 'measured',
      value: '257 1/2 in',
      reckoned: '256 in',
    });
    expect(reckonBinding({ ...quilt, measured: { around: 'abc' } }).errors?.[0]?.input).toBe('around');
  });

  test('neither size nor perimeter: each is asked for', () => {
    expect(reckonBinding({}).errors).toEqual([
      { input: 'width', message: 'Quilt width is missing. Write it like 58 or 147 cm.' },
      { input: 'length', message: 'Quilt length is missing. Write it like 58 or 147 cm.' },
    ]);
    expect(errorOf({ width: 58 })[0]).toBe('length');
  });
});

/** How far the edge of a strip travels, layer by layer, round the edge of a quilt: x inwards is negative, z is up. */
const walk = (corners: [x: number, z: number][]): number =>
  corners.slice(1).reduce((all, [x, z], at) => all + Math.hypot(x - corners[at]![0], z - corners[at]![1]), 0);

const doubleFold = (b: number, t: number): number => {
  // from the raw edges, which lie on the quilt's edge, in to the seam, back over the edge, and to the stitching behind
  const layer = walk([
    [0, t],
    [-b, t],
    [0, t],
    [0, 0],
    [-b, 0],
  ]);
  return 2 * layer;
};

const singleFold = (b: number, t: number): number =>
  // the same once, and then the edge that is turned under, back to the quilt's edge
  walk([
    [0, t],
    [-b, t],
    [0, t],
    [0, 0],
    [-b, 0],
    [0, 0],
  ]);

describe('the strip', () => {
  test('2 1/2 in where nothing is written (common practice, no source)', () => {
    expect(good(quilt).stripWidth).toBe('2 1/2');
    expect(row(good(quilt), 'strip').how).toBe('the usual width');
  });

  // 3/8 in double-fold: the usual 2 1/2 in cut (common practice, no source)
  test.each([
    ['double', '3/8', '1/8', '2 1/2', '6 × 3/8 + 2 × 1/8 = 2 1/2 in'],
    ['double', '1/4', '1/8', '1 3/4', '6 × 1/4 + 2 × 1/8 = 1 3/4 in'],
    ['single', '3/8', '1/8', '1 5/8', '4 × 3/8 + 1 × 1/8 = 1 5/8 in'],
    ['single', '3/8', '0', '1 1/2', '4 × 3/8 + 1 × 0 = 1 1/2 in'],
    ['double', '0.3', '1/8', '2 1/8', '6 × 3/10 + 2 × 1/8 ≈ 2 1/16 in, cut 2 1/8 in'],
  ])('%s fold, %s in finished, %s in thick: %s in', (fold, finished, thickness, strip, how) => {
    const result = good({ ...quilt, fold, finished, thickness });
    expect(result.stripWidth).toBe(strip);
    expect(row(result, 'strip')).toMatchObject({ how, from: ['fold', 'mark', 'finished', 'thickness'] });
  });

  test('goes round a quilt 1/8 in thick where nothing is written, as the usual strip does', () => {
    // 3/8 in double-fold from 2 1/2 in (common practice, no source): 2 1/2 − 6 × 3/8 is twice the thickness.
    const result = good({ ...quilt, finished: '3/8' });
    expect(result.stripWidth).toBe('2 1/2');
    expect(row(result, 'thickness').inches).toBe('1/8');
  });

  test('is as wide as the folded strip needs to go round the edge, up to the next mark', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 64 }),
        fc.integer({ min: 0, max: 32 }),
        fc.constantFrom('double', 'single'),
        (finished, thickness, fold) => {
          const { stripWidth } = good({
            ...quilt,
            fold,
            finished: finished / 64,
            thickness: thickness / 64,
            mark: '1/16',
          });
          const way = (fold === 'double' ? doubleFold : singleFold)(finished / 64, thickness / 64);
          expect(exact(stripWidth).valueOf()).toBe(Math.ceil(way * 16) / 16);
        },
      ),
    );
  });

  test('a strip width wins over a finished width, and says so', () => {
    const result = good({ ...quilt, stripWidth: '2 1/4', finished: '3/8' });
    expect(result.stripWidth).toBe('2 1/4');
    expect(result.notes).toContain('The strip width is used, not the finished width.');
  });

  // The next mark is what is really cut off the cloth, so that it is not short. Worked by hand: 2 3/8 = 2.375, 2 5/8 = 2.625,
  // 5 cm = 1.9685… in, 5.08 cm = 2 in exactly.
  test.each([
    [
      { stripWidth: '2.3' },
      '2 3/8',
      '“2.3” is between two marks of the ruler, so cut the strips 2 3/8 in wide.',
    ],
    [
      { stripWidth: 2.3 },
      '2 3/8',
      '“2.3” is between two marks of the ruler, so cut the strips 2 3/8 in wide.',
    ],
    [
      { stripWidth: '2.505' },
      '2 5/8',
      '“2.505” is between two marks of the ruler, so cut the strips 2 5/8 in wide.',
    ],
    [
      { stripWidth: '2.3', cut: 'bias' },
      '2 3/8',
      '“2.3” is between two marks of the ruler, so cut the strips 2 3/8 in wide.',
    ],
    [{ stripWidth: '5 cm' }, '2', '“5 cm” is between two marks of the ruler, so cut the strips 2 in wide.'],
    [{ stripWidth: '2.3', mark: '0.1' }, '2 3/10', undefined],
    [{ stripWidth: '5.08 cm' }, '2', undefined],
    [{}, '2 1/2', undefined],
  ])(
    'a strip width that was given, as in %j, is cut on a mark, and a sentence says where it is not',
    (given, cut, note) => {
      const result = good({ ...quilt, ...given });
      expect(result.stripWidth).toBe(cut);
      expect(result.notes.find((one) => one.includes('marks'))).toBe(note);
    },
  );

  test('a finished width too small for any mark still has a strip', () => {
    expect(good({ ...quilt, finished: '1/64', thickness: 0 }).stripWidth).toBe('1/8');
  });
});

type Point = [number, number];

/**
 * Two strips sewn at 45°, with coordinates: one along x, the other laid across its end at right angles, both ends flush.
 * The seam is the diagonal of the square where they overlap; opening the second strip mirrors it over the seam. Gives how
 * far the joined strip reaches.
 */
const joinAt45 = (first: number, second: number, width: number): number => {
  // the second strip hangs down from the overlap [first − width, first] × [0, width]
  const laid: Point[] = [
    [first - width, width],
    [first, width],
    [first, width - second],
    [first - width, width - second],
  ];
  // the seam runs from (first − width, width) to (first, 0): x + y = first
  const opened = laid.map(([x, y]): Point => [first - y, first - x]);
  expect(opened.every(([, y]) => y > -1e-9 && y < width + 1e-9)).toBe(true);
  return Math.max(...opened.map(([x]) => x));
};

describe('joins', () => {
  test('at 45° a join uses the strip’s width: two strips laid out', () => {
    // 75 in are more than one strip of 40 and less than two
    for (const width of [1.5, 2.25, 2.5]) {
      const { strips, yields } = good({ perimeter: 75, allowance: 0, stripWidth: width });
      expect(strips).toBe(2);
      expect(exact(yields).valueOf()).toBe(joinAt45(40, 40, width));
    }
  });

  test('straight, a join uses two seams', () => {
    // geometry: 7 × 40 − 6 × 1/2 = 277 ≥ 266; 6 × 40 − 5 × 2 1/2 is too short, and 7 × 40 − 6 × 2 1/2 = 265 as well
    expect(good({ ...quilt, join: 'straight' })).toMatchObject({
      strips: 7,
      yields: '277',
      fabric: '17 1/2',
    });
    expect(good(quilt)).toMatchObject({ strips: 8, yields: '302 1/2', fabric: '20' });
    expect(row(good({ ...quilt, join: 'straight', seam: '3/8' }), 'loss')).toMatchObject({
      value: '3/4 in',
      how: '2 × 3/8 = 3/4 in',
      from: ['join', 'seam'],
    });
  });

  test('one strip has none', () => {
    // geometry: 30 + 10 in are one strip of cloth 40 in wide
    const result = good({ perimeter: 30, stripWidth: 2 });
    expect(result).toMatchObject({
      strips: 1,
      yields: '40',
      fabric: '2',
      summary: expect.stringMatching(/^One strip 2 in wide for 40 in/) as string,
    });
  });
});

describe('cloth', () => {
  test('the rows fill in the numbers, and say where they came from', () => {
    const result = good({ ...quilt, stripWidth: '2 1/4', price: '12', currency: 'USD' });
    // geometry: 7 × 40 − 6 × 2 1/4 = 266 1/2, and 7 × 2 1/4 = 15 3/4
    expect(row(result, 'strips')).toMatchObject({
      value: '7',
      how: '7 × 40 − 6 × 2 1/4 = 266 1/2 ≥ 266 in',
      from: ['fabricWidth', 'loss', 'need'],
    });
    expect(row(result, 'fabric')).toMatchObject({
      inches: '15 3/4',
      how: '7 × 2 1/4 = 15 3/4 in',
      from: ['strips', 'stripWidth'],
    });
    expect(result.buy).toEqual({ inches: '18', amount: '1/2', unit: 'yd', text: '1/2 yd' });
    expect(result.spare).toBe('2 1/4');
    expect(result.cost).toEqual({ amount: '6.00', text: '$6.00' });
    expect(result.cuts).toEqual([
      { count: 7, piece: 'binding strip', width: '2 1/4', length: '40', text: '2 1/4 × 40 in' },
    ]);
    expect(result.summary).toBe('7 strips 2 1/4 in wide, joined at 45°, for 266 in of double-fold binding.');
  });

  test('every row comes from rows that are there', () => {
    for (const input of [
      quilt,
      { ...quilt, join: 'straight', finished: '1/2', shrinkage: 3 },
      { ...quilt, cut: 'bias', shrinkage: 3, price: 4 },
      { ...quilt, cut: 'bias', stripWidth: 3, fabricWidth: 20 },
      { perimeter: 100, stripWidth: 19 },
    ]) {
      const { working } = good(input);
      const ids = working.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      for (const { id, from } of working)
        for (const source of from) expect(ids, `${id} from ${source}`).toContain(source);
    }
  });

  test('shrinkage narrows the cloth and takes more of it', () => {
    // geometry: 40 × 0.97 = 38.8; 7 × 38.8 − 6 × 2 = 259.6 < 266 ≤ 8 × 38.8 − 7 × 2 = 296.4; 8 × 2 ÷ 0.97 = 1600/97
    const result = good({ ...quilt, stripWidth: 2, shrinkage: 3 });
    expect(row(result, 'washedWidth').inches).toBe('38 4/5');
    expect(result).toMatchObject({ strips: 8, yields: '296 2/5', fabric: '16 48/97' });
    expect(result.cuts[0]!.length).toBe('38 4/5');
    // measured after the wash, it is taken as it is
    expect(good({ ...quilt, stripWidth: 2, shrinkage: 3, measured: { washedWidth: 40 } }).strips).toBe(7);
  });
});

describe('fat quarters', () => {
  test('strips along the 20 in side, as many as 18 in give', () => {
    // geometry: 15 × 20 − 14 × 2 1/2 = 265 < 266 ≤ 16 × 20 − 15 × 2 1/2 = 282 1/2; ⌊18 ÷ 2 1/2⌋ = 7, ⌈16 ÷ 7⌉ = 3
    const result = good(quilt);
    expect(result.fatQuarters).toEqual({ strips: 16, count: 3 });
    expect(row(result, 'fatStrips')).toMatchObject({
      value: '16',
      how: '16 × 20 − 15 × 2 1/2 = 282 1/2 ≥ 266 in',
    });
    expect(row(result, 'fatQuarters')).toMatchObject({ value: '3', how: '18 ÷ 2 1/2: 7 from each' });
  });

  test('not where the strip does not fit', () => {
    const result = good({ ...quilt, stripWidth: 19 });
    expect(result.fatQuarters).toBeUndefined();
    expect(row(result, 'fatQuarters').value).toBe('not possible');
    expect(good({ ...quilt, cut: 'bias', stripWidth: 13 }).fatQuarters).toBeUndefined();
  });

  test('for bias, a square of each', () => {
    // geometry: a tube of 18 in gives ⌊17 1/2 ÷ √2 ÷ 2⌋ = 6 rounds of 17 1/2 × √2 = 24.75 in, 148.5 in in all; two of
    // them, joined, are enough for 266 in
    expect(good({ ...quilt, cut: 'bias', stripWidth: 2 }).fatQuarters).toEqual({ strips: 2, count: 2 });
  });
});

describe('bias', () => {
  test('a square whose whole rounds reach; the side by area is shown beside it', () => {
    const result = good({ perimeter: 250, allowance: 0, stripWidth: 2, cut: 'bias' });
    // 8 × 23 1/2 × √2 = 265.87 (tests/planner/bias.test.ts sews the tube)
    expect(result).toMatchObject({
      square: '24',
      squares: 1,
      rounds: 8,
      strips: 1,
      byArea: '23',
      yields: '265 3/4',
      fabric: '24',
    });
    expect(row(result, 'byArea').how).toContain('√(250 × 2) + 2 × 1/4');
    expect(row(result, 'rounds').how).toBe('(24 − 2 × 1/4) ÷ √2 ≈ 16 5/8 in across: 8 × 2 fit');
    expect(result.cuts).toEqual([
      { count: 1, piece: 'square for continuous bias', width: '24', length: '24', text: '24 × 24 in' },
    ]);
  });

  test('in metric the side is a whole centimetre', () => {
    const { square } = good({
      perimeter: '635 cm',
      allowance: 0,
      stripWidth: '5 cm',
      cut: 'bias',
      units: 'cm',
    });
    expect(exact(square!).mul(127).div(50).d).toBe(1n);
  });

  test('wider than the cloth: equal squares, one under the other', () => {
    const result = good({ ...quilt, perimeter: 1000, stripWidth: '2 1/2', cut: 'bias', fabricWidth: 40 });
    // geometry: 40 in gives ⌊39 1/2 ÷ √2 ÷ 2 1/2⌋ = 11 rounds of 55.86 in, 614.5 in; two of them less a join reach 1010
    expect(result).toMatchObject({ squares: 2, strips: 2 });
    expect(exact(result.fabric).valueOf()).toBe(exact(result.square!).mul(2).valueOf());
    expect(row(result, 'square').label).toBe('Each of 2 squares');
    // Bias is joined at 45°, whatever is chosen for strips cut straight.
    const straight = good({ perimeter: 1000, stripWidth: '2 1/2', cut: 'bias', join: 'straight' });
    expect(straight).toMatchObject({ square: result.square, yields: result.yields });
    expect(row(straight, 'loss').value).toBe('2 1/2 in');
  });

  test('what the squares give is rounded down to a mark, but never below what is needed', () => {
    // geometry: a square of 24 in gives 8 × 23 1/2 × √2 = 265.87 in, and the mark below 265.8 would be 265 3/4
    const result = good({ perimeter: '265.8', allowance: 0, stripWidth: 2, cut: 'bias' });
    expect(result).toMatchObject({ square: '24', yields: '265 4/5' });
  });
});

describe('what cannot be', () => {
  test.each<[string, BindingInput, string, RegExp]>([
    [
      'a strip wider than the cloth',
      { ...quilt, stripWidth: 41 },
      'stripWidth',
      /41 in wide is wider than the cloth, 40 in/,
    ],
    [
      'a finished width that needs such a strip',
      { ...quilt, finished: 5, fabricWidth: 20 },
      'finished',
      /wider than the cloth/,
    ],
    [
      'cloth narrower than the usual strip',
      { ...quilt, fabricWidth: 2 },
      'fabricWidth',
      /wider than the cloth/,
    ],
    ['a join that eats the cloth', { ...quilt, stripWidth: 5, fabricWidth: 5 }, 'join', /Write straight\./],
    [
      'two seams that eat the cloth',
      { ...quilt, join: 'straight', seam: 3, fabricWidth: 6 },
      'seam',
      /smaller seam/,
    ],
    [
      'cloth without room for a bias strip',
      { ...quilt, cut: 'bias', stripWidth: 8, fabricWidth: 10 },
      'stripWidth',
      /No square/,
    ],
    ['a finished width of a foot', { ...quilt, finished: 12 }, 'finished', /at most 6 in/],
    ['no strip width', { ...quilt, stripWidth: 0 }, 'stripWidth', /more than 0/],
    ['a quilt of three miles', { ...quilt, width: '190080' }, 'width', /at most 1000 in/],
    ['shrinkage of all', { ...quilt, shrinkage: '100 %' }, 'shrinkage', /between 0 and 50/],
    ['an unknown cut', { ...quilt, cut: 'sideways' }, 'cut', /straight or bias/],
    [
      'a choice that is a word of the language',
      { ...quilt, fold: 'constructor' },
      'fold',
      /double or single/,
    ],
    ['an unknown join', { ...quilt, join: 'glue' }, 'join', /diagonal or straight/],
  ])('%s', (_, input, key, words) => {
    const [at, message] = errorOf(input);
    expect(at).toBe(key);
    expect(message).toMatch(words);
    expect(reckonBinding(input)).not.toHaveProperty('buy');
  });

  const keys = inputsOf(bindingFields);
  test.each(keys)('whatever is written as %s gives a sentence or an answer', (key) => {
    for (const base of [
      quilt,
      { ...quilt, cut: 'bias', finished: '3/8' },
      { perimeter: 200, join: 'straight' },
    ])
      for (const value of HOSTILE) {
        const result = reckonBinding({ ...base, [key]: value });
        if (result.errors)
          for (const { message } of result.errors) expect(message).toMatch(/^[\p{Lu}“].*[.?]$/su);
        else {
          // what was typed is shown again as it was
          const working = result.working.filter(({ id }) => id !== key);
          expect(JSON.stringify({ ...result, working })).not.toMatch(/NaN|Infinity|undefined|\[object/);
        }
      }
  });

  test('nothing typed over a row throws either', () => {
    for (const value of HOSTILE) {
      const measured = { around: value, washedWidth: value };
      expect(() => reckonBinding({ ...quilt, shrinkage: 3, measured })).not.toThrow();
    }
  });
});

/** Anything a reader could sensibly ask for, in eighths of an inch. */
const sensible = fc.record({
  width: fc.integer({ min: 40, max: 1000 }),
  length: fc.integer({ min: 40, max: 1000 }),
  allowance: fc.integer({ min: 0, max: 200 }),
  strip: fc.integer({ min: 6, max: 64 }),
  fabricWidth: fc.integer({ min: 160, max: 900 }),
  seam: fc.integer({ min: 1, max: 8 }),
  shrinkage: fc.integer({ min: 0, max: 12 }),
  join: fc.constantFrom('diagonal', 'straight'),
  increment: fc.constantFrom('1/8 yd', '1/4 yd', 'thirds', '10 cm', '25 cm', '50 cm'),
});

const STEPS: Record<string, number[]> = {
  '1/8 yd': [4.5],
  '1/4 yd': [9],
  thirds: [4.5, 12],
  '10 cm': [10 / 2.54],
  '25 cm': [25 / 2.54],
  '50 cm': [50 / 2.54],
};

/** Strips cut across a length of washed cloth, one after another. */
const stripsFrom = (bought: Exact, strip: Exact, kept: Exact): number => {
  let strips = 0;
  for (let left = bought.mul(kept); left.gte(strip); left = left.sub(strip)) strips += 1;
  return strips;
};

/** What so many strips reach, sewn end to end one at a time. */
const sewn = (strips: number, long: Exact, loss: Exact): Exact => {
  let reach = long;
  for (let at = 1; at < strips; at += 1) reach = reach.sub(loss).add(long);
  return strips ? reach : exact(0);
};

describe('the cloth bought', () => {
  test('always yields the binding, straight; one shop step less never does', () => {
    fc.assert(
      fc.property(
        sensible,
        ({ width, length, allowance, strip, fabricWidth, seam, shrinkage, join, increment }) => {
          const result = good({
            width: width / 8,
            length: length / 8,
            allowance: allowance / 8,
            stripWidth: strip / 8,
            fabricWidth: fabricWidth / 8,
            seam: seam / 8,
            shrinkage,
            join,
            increment,
          });
          const kept = exact(100 - shrinkage, 100);
          const need = exact(2 * (width + length) + allowance, 8);
          const long = exact(fabricWidth, 8).mul(kept);
          const loss = join === 'diagonal' ? exact(strip, 8) : exact(2 * seam, 8);
          const reach = (bought: Exact): Exact => sewn(stripsFrom(bought, exact(strip, 8), kept), long, loss);
          const bought = exact(result.buy.inches);
          expect(result.length).toBe(need.toFraction(true));
          expect(reach(bought).gte(need)).toBe(true);
          const before = Math.max(
            ...STEPS[increment]!.map((step) => (Math.ceil(bought.valueOf() / step - 1e-6) - 1) * step),
          );
          expect(reach(exact(Math.round(before * 1e9)).div(1e9)).lt(need)).toBe(true);
          expect(exact(result.spare).add(exact(result.fabric)).equals(bought)).toBe(true);

          const { strips, count } = result.fatQuarters!;
          const each = stripsFrom(exact(18), exact(strip, 8), kept);
          expect(each * count).toBeGreaterThanOrEqual(strips);
          expect(sewn(each * count, exact(20).mul(kept), loss).gte(need)).toBe(true);
          expect(sewn(each * (count - 1), exact(20).mul(kept), loss).lt(need)).toBe(true);
        },
      ),
      { numRuns: 500 },
    );
  });

  test('always holds the squares, on the bias; one shop step less never does', () => {
    fc.assert(
      fc.property(sensible, ({ width, length, strip, fabricWidth, seam, shrinkage, increment }) => {
        const result = good({
          width: width / 8,
          length: length / 8,
          stripWidth: strip / 8,
          fabricWidth: fabricWidth / 8,
          seam: seam / 8,
          shrinkage,
          increment,
          cut: 'bias',
        });
        const kept = (100 - shrinkage) / 100;
        const [side, squares] = [exact(result.square!).valueOf(), result.squares!];
        const washed = (fabricWidth / 8) * kept;
        /** Squares that lie in so much washed cloth, in rows. */
        const hold = (bought: number): number =>
          Math.floor((bought * kept) / side + 1e-9) * Math.floor(washed / side + 1e-9);
        const bought = exact(result.buy.inches).valueOf();
        expect(hold(bought)).toBeGreaterThanOrEqual(squares);
        const before = Math.max(
          ...STEPS[increment]!.map((step) => (Math.ceil(bought / step - 1e-6) - 1) * step),
        );
        expect(hold(before)).toBeLessThan(squares);

        // the tube's geometry: tests/planner/bias.test.ts
        const sewnSide = side - seam / 4;
        const rounds = Math.floor(sewnSide / Math.SQRT2 / (strip / 8) + 1e-12);
        const reach = squares * rounds * sewnSide * Math.SQRT2 - ((squares - 1) * strip) / 8;
        const need = (width + length) / 4 + 10;
        expect(rounds).toBe(result.rounds);
        expect(reach).toBeGreaterThanOrEqual(need - 1e-9);
        expect(exact(result.yields).valueOf()).toBeLessThanOrEqual(reach + 1e-9);
        expect(exact(result.yields).valueOf()).toBeGreaterThanOrEqual(need);
        expect(exact(result.square!).gte(exact(result.byArea!)) || squares > 1).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test('is the same for the same lengths in centimetres', () => {
    fc.assert(
      fc.property(
        sensible,
        fc.constantFrom('straight', 'bias'),
        ({ width, length, strip, join, seam, shrinkage }, cut) => {
          const shared = { join, cut, shrinkage, increment: '1/8 yd', mark: '1/8 in', ...WRITTEN };
          const cm = (eighths: number): string => `${(eighths * 2540) / 8 / 1000} cm`;
          const given = { width, length, stripWidth: strip, seam };
          const map = (write: (eighths: number) => unknown): BindingInput =>
            Object.fromEntries(Object.entries(given).map(([key, value]) => [key, write(value)]));
          const inInches = good({ ...shared, ...map((eighths) => `${eighths}/8`) });
          const inMetric = good({ ...shared, ...map(cm) });
          const { working: _, ...rest } = inInches;
          expect(inMetric).toMatchObject(rest);
          // a page in centimetres shows other units and nothing else, but for fat quarters, which are of other sizes there, and for bias, whose squares are whole centimetres
          if (cut === 'straight') {
            const { buy, fabric, yields } = inInches;
            const bare = map((eighths) => cm(eighths).replace(' cm', ''));
            expect(good({ ...shared, ...bare, units: 'cm' })).toMatchObject({
              buy,
              fabric,
              yields,
            });
          }
        },
      ),
    );
  });
});

test('cloth a little more than a step is not shown as if the step were enough', () => {
  // Geometry: 10 strips of 9.71 cm are 97.1 cm, and ÷ 97 % a little more than 100.1 cm.
  const { working } = good({
    units: 'cm',
    // A language with decimal commas, and no words here.
    lang: 'nl',
    width: '215',
    length: '215',
    stripWidth: '9,71',
    mark: '0,971',
    shrinkage: '3 %',
  });
  expect(row({ working }, 'strips').value).toBe('10');
  expect(row({ working }, 'buy').how).toBe('≈100,1 cm, more than 1 m, rounded up to the next 10 cm');
});
