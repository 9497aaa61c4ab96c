import { describe, expect, test } from 'vitest';
import { reckonSleeve } from '../../src/reckon.js';
import { answersOf, errorsOf, row } from './asked.js';

const sleeve = answersOf(reckonSleeve);

describe('a hanging sleeve', () => {
  // Geometry: the ends are 1 in short of each side, 38 in; each end is turned twice by 1/2 in, 38 + 4 × 1/2 = 40 in.
  test('is cut as long as the quilt is wide, with the usual hems', () => {
    const result = sleeve({ width: 40 });
    expect(row(result, 'finished').inches).toBe('38');
    expect(row(result, 'cutLength').how).toBe('38 + 4 × 1/2 = 40 in');
    expect([result.strips, result.fabric]).toEqual([1, '8 1/2']);
    expect(result.cuts).toEqual([
      { count: 1, piece: 'sleeve', width: '8 1/2', length: '40', text: '8 1/2 × 40 in' },
    ]);
  });

  // "2023 quilt show quilt sleeve instructions", Hill Country Quilt Guild: 8 1/2 in strips, 6 1/2 in for a 3 in sleeve.
  test.each([
    ['8 1/2', '4'],
    ['6 1/2', '3'],
  ])('of a strip of %s in is %s in deep', (stripWidth, depth) =>
    expect(sleeve({ width: 40, stripWidth }).finished.length).toBe(depth),
  );

  // Geometry: 70 in of 40 in cloth: 2 strips reach 2 × 40 − 2 × 1/4 = 79 1/2 in; 2 × 8 1/2 = 17 in.
  test('is joined where the quilt is wider than the cloth', () => {
    const result = sleeve({ width: 70 });
    expect([result.strips, result.fabric, result.buy.text]).toEqual([2, '17', '1/2 yd']);
    expect(row(result, 'strips').how).toBe('2 × 40 − 2 × 1/4 = 79 1/2 ≥ 70 in');
  });

  test('takes more cloth before a wash', () => {
    // Geometry: 8 1/2 ÷ (1 − 15 %) = 10 in; 38.25 in of cloth are left of 45, and 38 in are needed.
    expect(sleeve({ width: 38, fabricWidth: 45, shrinkage: 15 }).fabric).toBe('10');
  });

  test.each([
    [{ width: 2 }, 'width'],
    [{ width: 40, stripWidth: '1/2' }, 'stripWidth'],
    [{ width: 40, fabricWidth: '1/4' }, 'fabricWidth'],
    [{ width: '' }, 'width'],
  ])('of %j is refused at %s', (input, at) => expect(errorsOf(reckonSleeve)(input)[0]).toBe(at));

  // Geometry: 4 + 2 × 1/4 by 6 + 2 × 1/4 in; its shorter side lies along the cloth, 2 × 8 1/2 + 4 1/2 in.
  test('may have a label, which is turned under all round', () => {
    const result = sleeve({ width: 70, label: '4 x 6' });
    expect([row(result, 'labelWidth').how, row(result, 'labelLength').inches]).toEqual([
      '4 + 2 × 1/4 = 4 1/2 in',
      '6 1/2',
    ]);
    expect(result.fabric).toBe('21 1/2');
    expect(result.cuts[1]).toEqual({
      count: 1,
      piece: 'label',
      width: '4 1/2',
      length: '6 1/2',
      text: '4 1/2 × 6 1/2 in',
    });
    expect(result.summary).toBe('2 strips for a sleeve 68 in long and 4 in deep, and a label of 4 × 6 in.');
  });

  // Geometry: a sleeve of 34 in leaves 6 × 8 1/2 in at the end of its strip; one of 33 1/2 leaves 6 1/2.
  test.each([
    [33, '8 1/2'],
    [36, '13'],
  ])('%i in wide takes %s in with its label: it may fit beside the sleeve', (width, fabric) =>
    expect(sleeve({ width, label: '4 x 6' }).fabric).toBe(fabric),
  );

  test.each(['40 x 6', '4 x 58', 'x', '0 x 4'])('with a label of %s is refused there', (label) =>
    expect(errorsOf(reckonSleeve)({ width: 40, label })[0]).toBe('label'),
  );

  // Worked here: quilts 40, 5 and 2 1/4 in wide, whose label has two seams of 1/4 in beside it.
  test.each([
    ['40', 'in', '4 x 6 in'],
    ['5', 'in', '2 x 2 in'],
    ['100', 'cm', '10 x 15 cm'],
    ['12', 'cm', '5 x 5 cm'],
  ] as const)('%s %s wide: a label that is too large is told of one that is not', (width, units, smaller) => {
    const refused = reckonSleeve({ width, units, label: '190 x 190' });
    expect(refused.errors?.[0]?.message).toMatch(new RegExp(`like ${smaller}\\.$`));
    expect(sleeve({ width, units, label: smaller }).strips).toBe(1);
  });

  test('of a quilt too narrow for any label: its cell is to be empty', () =>
    expect(reckonSleeve({ width: '2 1/4', label: '4 x 6' }).errors?.[0]?.message).toMatch(
      /Leave its cell empty\.$/,
    ));
});
