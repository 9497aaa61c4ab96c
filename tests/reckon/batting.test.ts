import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { battingFields } from '../../src/calculators/batting/shape.js';
import { reckonBatting, type BattingInput } from '../../src/reckon.js';
import { PACKAGES } from '../../src/trade/batting.js';
import { HOSTILE, inputsOf } from './hostile.js';
import { answersOf, errorsOf, inches, row } from './asked.js';

const good = answersOf(reckonBatting);

const errorOf = errorsOf(reckonBatting);

const quilt = { width: 58, length: 70 };
const shop = 'small 40 x 50 @ 12.50; medium 70 x 80 @ 31; large 90 x 100 @ 29';

describe('the need', () => {
  // geometry: 58 + 2 × 4 and 70 + 2 × 4
  test('is the quilt and the overage on each side', () => {
    const result = good(quilt);
    expect(result).toMatchObject({
      need: { width: '66', length: '78' },
      quilt: { width: '58', length: '70' },
      washed: { width: '58', length: '70' },
    });
    expect(row(result, 'needWidth')).toMatchObject({ how: '58 + 2 × 4 = 66 in', from: ['width', 'overage'] });
    expect(good({ ...quilt, overage: 0 }).need).toEqual({ width: '58', length: '70' });
  });

  test('size and bed both missing: each side is asked for', () => {
    expect(reckonBatting({}).errors).toEqual([
      { input: 'width', message: 'Quilt width is missing. Write it like 58 or 147 cm.' },
      { input: 'length', message: 'Quilt length is missing. Write it like 58 or 147 cm.' },
    ]);
  });

  test('once washed, the quilt is about its size × (1 − s)', () => {
    const result = good({ ...quilt, shrinkage: '5 %' });
    // geometry: 58 × 0.95 and 70 × 0.95; the batting is bought before the wash
    expect(result).toMatchObject({
      washed: { width: '55 1/10', length: '66 1/2' },
      need: { width: '66', length: '78' },
    });
    expect(row(result, 'washed').how).toBe('58 and 70, each × (1 − 5 %)');
  });
});

describe('a quilt for a bed', () => {
  test('hangs down the sides and the foot, and is tucked under the pillows', () => {
    // geometry: 60 + 2 × 14 by 80 + 14 + 10
    const result = good({ bed: 'queen', drop: 14, tuck: 10 });
    expect(result.quilt).toEqual({ width: '88', length: '104' });
    expect(row(result, 'mattress').value).toBe('60 × 80 in');
    expect(row(result, 'bedWidth')).toMatchObject({ how: '60 + 2 × 14 = 88 in', from: ['mattress', 'drop'] });
    expect(row(result, 'bedLength')).toMatchObject({
      how: '80 + 14 + 10 = 104 in',
      from: ['mattress', 'drop', 'tuck'],
      role: 'measurable',
    });
    // a drop of 12 in: common practice, no source
    expect(good({ bed: 'queen' }).quilt).toEqual({ width: '84', length: '92' });
  });

  test('is as it was measured, where that is typed over', () => {
    // geometry: 65 + 2 × 4 and 88 1/2 + 2 × 4
    const result = good({ bed: 'twin', measured: { bedWidth: '65', bedLength: '88 1/2' } });
    expect(result).toMatchObject({
      quilt: { width: '65', length: '88 1/2' },
      need: { width: '73', length: '96 1/2' },
    });
  });

  test('wins over a width and length, and says so', () => {
    // geometry: 39 + 2 × 12 and 75 + 12; 39 × 75 in is a twin ("Mattresses", sizes.com)
    expect(good({ ...quilt, bed: 'twin' })).toMatchObject({ quilt: { width: '63', length: '87' } });
    expect(good({ ...quilt, bed: 'twin' }).notes.join()).toContain('do not use');
    expect(good({ bed: 'twin' }).notes.join()).not.toContain('do not use');
  });

  test('crib sizes come with the safe-sleep caution', () => {
    const caution = /baby sleeps.*bare crib with a fitted sheet.*local guidance/;
    expect(good({ bed: 'crib' }).notes.join()).toMatch(caution);
    expect(good({ width: 36, length: 50 }).notes.join()).toMatch(caution);
    expect(good(quilt).notes.join()).not.toMatch(caution);
  });
});

describe('a package', () => {
  // Sizes: "Common quilt and batting sizes", Honey Be Good, 1 May 2012; craft and throw are common practice.
  test('the smallest that covers the need', () => {
    // geometry: 66 × 78 in; a throw of 60 × 60 is too small, a twin of 72 × 90 leaves 6 and 12
    const result = good(quilt);
    expect(result.buy).toEqual({
      inches: '90',
      amount: '1',
      unit: 'package',
      text: '1 twin package, 72 × 90 in',
    });
    expect(result).toMatchObject({ fabric: '78', spare: '12' });
    expect(result.cost).toBeUndefined();
    expect(row(result, 'buy').how).toBe('the smallest that fits: 72 ≥ 66 and 90 ≥ 78 in');
    expect(row(result, 'spare')).toMatchObject({ value: '6 in and 12 in', how: '72 − 66 and 90 − 78' });
    expect(result.notes.join()).toContain('Read the label');
    expect(result.packages.map(({ name, fits }) => `${name} ${fits}`)).toEqual([
      'twin true',
      'full true',
      'queen true',
      'king true',
      'craft false',
      'crib false',
      'throw false',
    ]);
    expect(result.cuts).toEqual([
      { count: 1, piece: 'batting', width: '66', length: '78', text: '66 × 78 in' },
    ]);
  });

  test('either way round', () => {
    // geometry: 78 × 66 in, and 90 ≥ 78 beside 72 ≥ 66
    const result = good({ width: 70, length: 58 });
    expect(result.buy.text).toBe('1 twin package, 72 × 90 in');
    expect(result.summary).toBe('You need 78 × 66 in: one package is enough, turned.');
    expect(result).toMatchObject({ fabric: '78', spare: '12' });
  });

  test('one that fits to the inch is taken, with a warning', () => {
    // geometry: 64 + 8 and 82 + 8 are a twin's 72 × 90
    const result = good({ width: 64, length: 82 });
    expect(result.buy.text).toBe('1 twin package, 72 × 90 in');
    expect(result.notes.join()).toContain('Only 0 in to spare one way');
    expect(good({ width: '64.1', length: 82 }).buy.text).toBe('1 full-size package, 81 × 96 in');
    // geometry: 72 and 90 less 8; one side is enough to be short by, and an inch to spare is no cause
    for (const [width, length, warns] of [
      ['63 1/2', 70, 'Only 1/2 in'],
      [58, '81 1/2', 'Only 1/2 in'],
      [63, 81, ''],
    ])
      expect(good({ width, length }).notes.join()).toMatch(warns ? new RegExp(`${warns}`) : /^(?!.*Only)/);
  });

  // Common practice, no source; the other sizes are checked against theirs in tests/published/batting.test.ts.
  test.each([
    ['craft', '36', '45'],
    ['throw', '60', '60'],
  ])('%s is %s × %s in', (name, width, length) => {
    expect(good({ width, length, overage: 0 }).buy.text).toBe(`1 ${name} package, ${width} × ${length} in`);
  });

  test('from a shop’s own list, by price; one without a price comes last', () => {
    const result = good({ ...quilt, packages: shop, currency: 'USD' });
    expect(result.buy.text).toBe('1 large package, 90 × 100 in');
    expect(result.cost).toEqual({ amount: '29.00', text: '$29.00' });
    expect(row(result, 'buy').how).toContain('the cheapest that fits');
    expect(result.packages).toEqual([
      { name: 'large', width: '90', length: '100', fits: true, price: '29.00', priceText: '$29.00' },
      { name: 'medium', width: '70', length: '80', fits: true, price: '31.00', priceText: '$31.00' },
      { name: 'small', width: '40', length: '50', fits: false, price: '12.50', priceText: '$12.50' },
    ]);
    // a yen has no smaller coin
    expect(good({ ...quilt, packages: 'a 70 x 80 @ 1200', currency: 'JPY' }).packages[0]!.price).toBe('1200');
    expect(good({ ...quilt, packages: `odd 67 x 79; ${shop}` }).buy.text).toBe(
      '1 large package, 90 × 100 in',
    );
    expect(good({ ...quilt, packages: [{ name: 'a', width: 70, length: '80' }] }).buy.text).toContain(
      '1 a package',
    );
    expect(good({ ...quilt, packages: '70 x 80' }).buy.text).toBe('1 package, 70 × 80 in');
  });

  test('may have any sign in its name', () => {
    for (const name of ['{big}', '{width}', 'a =, b', '{=']) {
      const { buy, working } = good({ ...quilt, packages: `${name} 90 x 100 @ 29` });
      expect(buy.text).toBe(`1 ${name} package, 90 × 100 in`);
      expect(working.find(({ id }) => id === 'cost')!.how).toBe(`1 ${name} package × 29.00`);
    }
  });

  test('one bad entry is named', () => {
    const [input, message] = errorOf({ ...quilt, packages: 'small 40 x 50; large 90' });
    expect(input).toBe('packages');
    expect(message).toContain('“large 90”');
  });
});

describe('a roll', () => {
  test('is what is bought where its width is given', () => {
    // geometry: 96 covers 78, so one length of 66 in, 1 5/6 yd: up to 1 7/8 yd, 67 1/2 in, at 10
    const result = good({ ...quilt, roll: 96, price: 10, currency: 'USD' });
    const amount = { inches: '67 1/2', amount: '1 7/8', unit: 'yd' };
    // a narrower roll would be short, so wherever the amount is listed its width is
    expect(result.buy).toEqual({ ...amount, text: '1 7/8 yd, 96 in wide' });
    expect(result).toMatchObject({ fabric: '66', spare: '1 1/2', cost: { amount: '18.75', text: '$18.75' } });
    expect(row(result, 'lengths').how).toBe('1 × 96 = 96 ≥ 78 in');
    expect(row(result, 'each')).toMatchObject({
      value: '66 in',
      how: 'the batting’s width',
      from: ['needWidth'],
    });
    expect(result.rolls).toEqual([
      {
        width: '96',
        lengths: 1,
        length: '66',
        direction: 'crosswise',
        seams: 0,
        fabric: '66',
        buy: { ...amount, text: '1 7/8 yd' },
      },
    ]);
    // the packages are still there to compare
    expect(result.packages[0]).toMatchObject({ name: 'twin', fits: true });
  });

  test('two lengths are butted edge to edge, without overlap', () => {
    // geometry: 2 × 45 covers 78; each is 66 long, 132 in all
    const result = good({ ...quilt, roll: '45' });
    expect(result).toMatchObject({ fabric: '132', buy: { text: '3 3/4 yd, 45 in wide' } });
    expect(result.rolls[0]).toMatchObject({ lengths: 2, seams: 1, length: '66' });
    expect(row(result, 'lengths').how).toBe('2 × 45 = 90 ≥ 78 in, butted edge to edge with no overlap');
    expect(result.cuts).toEqual([
      { count: 2, piece: 'length of batting', width: '45', length: '66', text: '45 × 66 in' },
    ]);
  });

  test('the best of several', () => {
    // geometry: 96 and 120 cover 78 with one length, 96 with less area; 45 takes two
    expect(good({ ...quilt, roll: '45, 96, 120' }).rolls.map(({ width }) => width)).toEqual([
      '96',
      '120',
      '45',
    ]);
    expect(good({ ...quilt, roll: '' }).buy.unit).toBe('package');
    expect(good({ ...quilt, roll: [] }).buy.unit).toBe('package');
  });

  test('where no package is large enough, whatever it takes', () => {
    // geometry: 118 × 130 in is more than a king, 120 × 120, either way; 120 covers 118
    const large = good({ width: 110, length: 122 });
    expect(large.buy.unit).toBe('yd');
    expect(large.notes.join()).toContain('No package is large enough');
    expect(large.rolls[0]).toMatchObject({ width: '120', lengths: 1, length: '130' });
    // geometry: 308 in take three of 108 or of 120, and 108 are less
    const huge = good({ width: 300, length: 300 });
    expect(huge.rolls[0]).toMatchObject({ width: '108', lengths: 3 });
    expect(huge.notes.join()).toContain('so you need 3, edge to edge');
  });

  test('is as wide as rolls are sold (common practice, no source)', () => {
    // 66 × 78 in takes at most two lengths of each
    const widths = good(quilt).rolls.map(({ width }) => Number(width));
    expect([...new Set(widths)].sort((a, b) => a - b)).toEqual([45, 60, 90, 96, 108, 120]);
  });

  test('gives up to a hundred lengths', () => {
    const narrow = { length: 200, overage: 0, roll: '1' };
    expect(good({ ...narrow, width: 100 }).rolls[0]!.lengths).toBe(100);
    expect(errorOf({ ...narrow, width: 101 })).toMatchObject([
      'roll',
      expect.stringContaining('101 lengths'),
    ]);
  });
});

test('every row comes from rows that are there', () => {
  for (const input of [
    quilt,
    { bed: 'king', shrinkage: 3, roll: 60, price: 3 },
    { ...quilt, packages: shop },
    { width: 300, length: 200 },
  ]) {
    const { working } = good(input);
    const ids = working.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, from } of working)
      for (const source of from) expect(ids, `${id} from ${source}`).toContain(source);
  }
});

describe('what cannot be', () => {
  test.each<[BattingInput, string, RegExp]>([
    [{ ...quilt, bed: 'sofa' }, 'bed', /Write none, crib, twin, .* or california-king/],
    [{ ...quilt, bed: 'constructor' }, 'bed', /not one of the choices/],
    [{ ...quilt, overage: '40' }, 'overage', /at most 36 in/],
    [{ ...quilt, roll: '0' }, 'roll', /more than 0/],
    [{ ...quilt, roll: '96; wide' }, 'roll', /wide”/],
    [{ ...quilt, width: '-5' }, 'width', /less than 0/],
    [{ ...quilt, shrinkage: 100 }, 'shrinkage', /between 0 and 50/],
    [{ bed: 'twin', drop: 61 }, 'drop', /at most 60 in/],
    [{ bed: 'twin', measured: { bedWidth: '0' } }, 'bedWidth', /more than 0/],
  ])('%j', (input, key, words) => {
    const [at, message] = errorOf(input);
    expect(at).toBe(key);
    expect(message).toMatch(words);
    expect(reckonBatting(input)).not.toHaveProperty('buy');
  });

  const hostile: unknown[] = [
    ...HOSTILE,
    ...[[null], [{ name: {}, width: [], length: null }], [{ width: 4, length: 5, price: {} }], [Symbol('x')]],
  ];
  const keys = inputsOf(battingFields);
  test.each(keys)('whatever is written as %s gives a sentence or an answer', (key) => {
    for (const base of [quilt, { bed: 'king', shrinkage: 4 }, { ...quilt, roll: '45, 60' }])
      for (const value of hostile) {
        const result = reckonBatting({ ...base, [key]: value });
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
    for (const value of hostile)
      expect(() =>
        reckonBatting({ bed: 'full', measured: { bedWidth: value, bedLength: value } }),
      ).not.toThrow();
  });
});

/** Anything a reader could sensibly ask for, in eighths of an inch. */
const sensible = fc.record({
  width: fc.integer({ min: 40, max: 1100 }),
  length: fc.integer({ min: 40, max: 1100 }),
  overage: fc.integer({ min: 0, max: 40 }),
});

/** Whether a rectangle lies in another, either way round, tried by its corners. */
const covers = (width: number, length: number, need: { width: number; length: number }): boolean =>
  [
    [need.width, need.length],
    [need.length, need.width],
  ].some(([x, y]) => x! <= width && y! <= length);

describe('the batting bought', () => {
  test('a package always covers the need, and none that does is smaller', () => {
    fc.assert(
      fc.property(sensible, ({ width, length, overage }) => {
        const result = good({ width: width / 8, length: length / 8, overage: overage / 8 });
        const need = { width: (width + 2 * overage) / 8, length: (length + 2 * overage) / 8 };
        expect([inches(result.need.width), inches(result.need.length)]).toEqual([need.width, need.length]);
        const fitting = PACKAGES.in.filter((pack) =>
          covers(parseInt(pack.width), parseInt(pack.length), need),
        );
        if (!fitting.length) {
          expect(result.buy.unit).not.toBe('package');
          return;
        }
        const least = Math.min(...fitting.map((pack) => parseInt(pack.width) * parseInt(pack.length)));
        const [best] = result.packages;
        expect(covers(inches(best!.width), inches(best!.length), need)).toBe(true);
        expect(inches(best!.width) * inches(best!.length)).toBe(least);
        expect(result.buy.text).toContain(` ${best!.name === 'full' ? 'full-size' : best!.name} `);
        expect(result.packages.filter(({ fits }) => fits)).toHaveLength(fitting.length);
      }),
      { numRuns: 400 },
    );
  });

  test('from a roll: the lengths cut from it cover the need; one shop step less never does', () => {
    const STEPS: Record<string, number[]> = {
      '1/8 yd': [36],
      thirds: [36, 96],
      '1/4 yd': [72],
      '3 in': [24],
    };
    fc.assert(
      fc.property(
        sensible,
        fc.array(fc.integer({ min: 20, max: 130 }), { minLength: 1, maxLength: 3 }),
        fc.constantFrom('1/8 yd', 'thirds', '1/4 yd', '3 in'),
        ({ width, length, overage }, rolls, increment) => {
          const result = good({
            width: width / 8,
            length: length / 8,
            overage: overage / 8,
            roll: rolls.join(', '),
            increment,
          });
          const sides = [width + 2 * overage, length + 2 * overage]; // eighths
          const plan = result.rolls[0]!;
          const [across, along] = plan.direction === 'lengthwise' ? sides : sides.toReversed();
          /** How far lengths cut from so much reach, laid side by side; eighths. */
          const reach = (bought: number): number => {
            let covered = 0;
            for (let left = bought; left >= along!; left -= along!) covered += inches(plan.width) * 8;
            return covered;
          };
          const bought = inches(result.buy.inches) * 8;
          expect(reach(bought)).toBeGreaterThanOrEqual(across!);
          const before = Math.max(...STEPS[increment]!.map((step) => (Math.ceil(bought / step) - 1) * step));
          expect(reach(before)).toBeLessThan(across!);
          expect(plan.buy.inches).toBe(result.buy.inches);
          expect(inches(result.fabric) + inches(result.spare)).toBe(inches(result.buy.inches));
        },
      ),
      { numRuns: 400 },
    );
  });

  test('is the same for the same lengths in centimetres', () => {
    fc.assert(
      fc.property(sensible, fc.integer({ min: 160, max: 960 }), ({ width, length, overage }, roll) => {
        const cm = (eighths: number): string => String((eighths * 2540) / 8000);
        const given = { width, length, overage, roll };
        const as = (write: (eighths: number) => string): BattingInput =>
          Object.fromEntries(Object.entries(given).map(([key, value]) => [key, write(value)]));
        const shared = { increment: '1/8 yd' };
        const { working: _, ...inInches } = good({ ...shared, ...as((eighths) => `${eighths}/8`) });
        expect(good({ ...shared, ...as((eighths) => `${cm(eighths)} cm`) })).toMatchObject(inInches);
        const { need, rolls } = inInches;
        const { text: _text, ...buy } = inInches.buy;
        expect(good({ ...shared, ...as(cm), units: 'cm' })).toMatchObject({ buy, need, rolls });
      }),
    );
  });
});
