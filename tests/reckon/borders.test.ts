import { describe, expect, test } from 'vitest';
import { exact, sum } from '../../src/measure/exact.js';
import { reckonBorders, type Border, type BordersInput, type BordersResult } from '../../src/reckon.js';
import { answersOf } from './asked.js';

const reckon = answersOf(reckonBorders);
const refused = (input: BordersInput): Record<string, string> => {
  const result = reckonBorders(input);
  expect(result.buy).toBeUndefined();
  return Object.fromEntries((result.errors ?? []).map(({ input, message }) => [input, message]));
};
const pieces = ({ pieces }: Border): string[] =>
  pieces.map(({ piece, count, length, width }) => `${count} ${piece} ${length} by ${width}`);
const plan = ({ plans }: Border, name: string) => {
  const found = plans.find(({ plan }) => plan === name);
  return found && [found.strips, found.joins, found.fabric];
};
const rowIn = (result: BordersResult, id: string) => result.working.find((row) => row.id === id);

/** Most of what follows is worked for this: a 58 × 70 in top, 40 in cloth, a border cut 2 + 2 × 1/4 = 2 1/2 in wide. */
const TOP = { width: 58, length: 70, borders: '2' };

describe('cut lengths', () => {
  test('sides first', () => {
    const { borders, finished } = reckon(TOP);
    // Geometry: 70 + 1/2; the sides make the top 58 + 4 = 62 wide: 62 + 1/2.
    expect(pieces(borders[0]!)).toEqual(['2 side 70 1/2 by 2 1/2', '2 end 62 1/2 by 2 1/2']);
    expect(finished).toEqual({ width: '62', length: '74' });
    expect(borders[0]).toMatchObject({ finished: '2', corners: 'sides-first' });
  });

  test('top and bottom first', () => {
    const { borders, finished } = reckon({ ...TOP, corners: 'ends-first' });
    // Geometry: 58 + 1/2; they make the top 70 + 4 = 74 long: 74 + 1/2.
    expect(pieces(borders[0]!)).toEqual(['2 end 58 1/2 by 2 1/2', '2 side 74 1/2 by 2 1/2']);
    expect(finished).toEqual({ width: '62', length: '74' });
  });

  test('corner squares', () => {
    const { borders, finished } = reckon({ ...TOP, corners: 'squares' });
    // Geometry: all four strips as long as the top they go on; the squares as wide as the strips.
    expect(pieces(borders[0]!)).toEqual([
      '2 side 70 1/2 by 2 1/2',
      '2 end 58 1/2 by 2 1/2',
      '4 corner 2 1/2 by 2 1/2',
    ]);
    expect(finished).toEqual({ width: '62', length: '74' });
  });

  test('mitred', () => {
    const { borders, finished } = reckon({ ...TOP, corners: 'mitred' });
    // Common practice, no source: 70 + 2 × 2 1/2 + 2 and 58 + 2 × 2 1/2 + 2.
    expect(pieces(borders[0]!)).toEqual(['2 side 77 by 2 1/2', '2 end 65 by 2 1/2']);
    expect(finished).toEqual({ width: '62', length: '74' });
  });

  test('each border goes round those before it, in its own style', () => {
    const { borders, finished } = reckon({
      ...TOP,
      borders: '2, 4 1/2, 1',
      corners: 'squares, mitred, ends-first',
    });
    // Geometry: 62 × 74 with the first, 71 × 83 with the second, 73 × 85 with the third.
    expect(pieces(borders[1]!)).toEqual(['2 side 86 by 5', '2 end 74 by 5']);
    expect(pieces(borders[2]!)).toEqual(['2 end 71 1/2 by 1 1/2', '2 side 85 1/2 by 1 1/2']);
    expect(borders.map(({ corners }) => corners)).toEqual(['squares', 'mitred', 'ends-first']);
    expect(finished).toEqual({ width: '73', length: '85' });
  });

  test('another seam allowance', () => {
    const { borders, finished } = reckon({ ...TOP, seam: '3/8' });
    // Geometry: 70 + 3/4, 62 + 3/4, 2 + 3/4.
    expect(pieces(borders[0]!)).toEqual(['2 side 70 3/4 by 2 3/4', '2 end 62 3/4 by 2 3/4']);
    expect(finished).toEqual({ width: '62', length: '74' });
  });

  test('the cut list is on the ruler’s marks, and the cloth is enough for it', () => {
    const result = reckon({ ...TOP, borders: '2 1/3' });
    // Geometry: 2 1/3 + 1/2 = 2 5/6, up to 2 7/8; 58 + 4 2/3 + 1/2 = 63 1/6, up to 63 1/4; 8 strips of 2 7/8.
    expect(pieces(result.borders[0]!)).toEqual(['2 side 70 1/2 by 2 5/6', '2 end 63 1/6 by 2 5/6']);
    expect(result.cuts.map(({ width, length }) => [width, length])).toEqual([
      ['2 7/8', '70 1/2'],
      ['2 7/8', '63 1/4'],
    ]);
    expect(result.borders[0]!.strips).toBe(8);
    expect(result.fabric).toBe('23');
    expect(rowIn(result, 'border1Width')!.how).toBe('2 1/3 + 2 × 1/4 = 2 5/6 in, cut 2 7/8 in');
  });

  test('a size that is above a mark by less than anybody can cut keeps that mark, but gets the cloth for the exact size', () => {
    // Geometry: 2.005 + 1/2 is 1/200 in above 2 1/2, less than 1/128; 8 × 2.505 = 20.04.
    const { borders, cuts, fabric } = reckon({ ...TOP, borders: '2.005' });
    expect(borders[0]!.strips).toBe(8);
    expect(cuts[0]!.width).toBe('2 1/2');
    expect(fabric).toBe('20 1/25');
  });
});

describe('a wanted size', () => {
  test('may be mitred where the last border is as wide all round', () => {
    // Geometry: (64 − 58) ÷ 2 = (76 − 70) ÷ 2 = 3: cut 3 1/2, and 70 + 2 × 3 1/2 + 2, 58 + 2 × 3 1/2 + 2.
    const { borders } = reckon({ width: 58, length: 70, target: '64 x 76', corners: 'mitred' });
    expect(pieces(borders[0]!)).toEqual(['2 side 79 by 3 1/2', '2 end 67 by 3 1/2']);
  });

  test('one border all round', () => {
    const result = reckon({ width: 58, length: 70, target: '64 x 76' });
    // Geometry: (64 − 58) ÷ 2 = (76 − 70) ÷ 2 = 3.
    expect(result.borders).toHaveLength(1);
    expect(result.borders[0]).toMatchObject({ finished: '3' });
    expect(result.borders[0]!.finishedEnds).toBeUndefined();
    expect(result.finished).toEqual({ width: '64', length: '76' });
    expect(result.notes.join()).not.toContain('wanted size');
  });

  test('unequal: both are shown, and said', () => {
    const result = reckon({ width: 54, length: 70, target: '60 x 80' });
    // Geometry: (60 − 54) ÷ 2 = 3, (80 − 70) ÷ 2 = 5; sides 70 + 1/2 by 3 1/2, top and bottom 60 + 1/2 by 5 1/2.
    expect(result.borders[0]).toMatchObject({ finished: '3', finishedEnds: '5' });
    expect(pieces(result.borders[0]!)).toEqual(['2 side 70 1/2 by 3 1/2', '2 end 60 1/2 by 5 1/2']);
    expect(result.notes.join()).toContain('3 in at each side and 5 in at top and at bottom');
    expect(rowIn(result, 'targetSides')).toMatchObject({
      how: '(60 − 54) ÷ 2 = 3 in',
      from: ['target', 'width'],
    });
    expect(rowIn(result, 'targetEnds')).toMatchObject({
      how: '(80 − 70) ÷ 2 = 5 in',
      from: ['target', 'length'],
    });
    expect(result.finished).toEqual({ width: '60', length: '80' });
    // Geometry: two of 70 1/2, each 40 + 34 − 3 1/2, are 4 strips of 3 1/2; two of 60 1/2, each 40 + 26 − 5 1/2, 4 of 5 1/2.
    expect(plan(result.borders[0]!, 'separate')).toEqual([8, 4, '36']);
    // Geometry: side by side 2 × 3 1/2 + 2 × 5 1/2 = 18 ≤ 40: as long as the longest.
    expect(plan(result.borders[0]!, 'along')).toEqual([4, 0, '70 1/2']);
  });

  test('unequal: corner squares become rectangles', () => {
    const { borders, cuts, finished } = reckon({
      width: 54,
      length: 70,
      target: '60 x 80',
      corners: 'squares',
    });
    expect(pieces(borders[0]!)).toEqual([
      '2 side 70 1/2 by 3 1/2',
      '2 end 54 1/2 by 5 1/2',
      '4 corner 5 1/2 by 3 1/2',
    ]);
    expect(cuts[2]!.piece).toBe('border 1, corner');
    expect(finished).toEqual({ width: '60', length: '80' });
  });

  test('after the borders listed', () => {
    const { borders, finished } = reckon({
      width: 54,
      length: 70,
      borders: '2',
      target: '60 x 80',
      corners: 'squares, ends-first',
    });
    // Geometry: 58 × 74 with the first; (60 − 58) ÷ 2 = 1, (80 − 74) ÷ 2 = 3; 58 + 1/2, then 80 + 1/2.
    expect(borders[1]).toMatchObject({ finished: '1', finishedEnds: '3', corners: 'ends-first' });
    expect(pieces(borders[1]!)).toEqual(['2 end 58 1/2 by 3 1/2', '2 side 80 1/2 by 1 1/2']);
    expect(finished).toEqual({ width: '60', length: '80' });
  });

  test.each(['sides-first', 'ends-first', 'squares'])('no strips if nothing is missing, %s', (corners) => {
    const ends = reckon({ width: 58, length: 70, target: '58 x 80', corners });
    expect(pieces(ends.borders[0]!)).toEqual(['2 end 58 1/2 by 5 1/2']);
    expect(ends.borders[0]).toMatchObject({ finished: '0', finishedEnds: '5' });
    expect(ends.finished).toEqual({ width: '58', length: '80' });
    const sides = reckon({ width: 58, length: 70, target: '60 x 70', corners });
    expect(pieces(sides.borders[0]!)).toEqual(['2 side 70 1/2 by 1 1/2']);
    expect(sides.finished).toEqual({ width: '60', length: '70' });
  });

  test('already reached by the borders listed', () => {
    const result = reckon({ ...TOP, target: '62 x 74' });
    expect(result.borders).toHaveLength(1);
    expect(result.notes.join()).toContain('reached without a last border');
  });

  test('cannot be met', () => {
    expect(refused({ width: 58, length: 70, target: '50 x 80' })).toEqual({
      target: 'Without a border it is 58 × 70 in already. Write a larger size, like 62 x 74.',
    });
    expect(refused({ ...TOP, target: '70 x 72' })['target']).toContain('62 × 74 in already');
    expect(refused({ width: 58, length: 70, target: '58 x 70' })['target']).toContain('58 × 70 in already');
    expect(refused({ width: 54, length: 70, target: '60 x 80', corners: 'mitred' })['corners']).toMatch(
      /3 in at each side and 5 in .* Write squares or sides-first\.$/,
    );
    for (const larger of ['62 x 74', '66 x 78'])
      expect(reckonBorders({ width: 58, length: 70, target: larger }).errors).toBeUndefined();
  });
});

describe('strips across the cloth', () => {
  test('all joined, or each border on its own: as many strips, so the fewer joins', () => {
    const border = reckon(TOP).borders[0]!;
    // Geometry: 2 × 70 1/2 + 2 × 62 1/2 = 266; 7 × 40 − 6 × 2 1/2 = 265 is short, 8 × 40 − 7 × 2 1/2 = 302 1/2 is not.
    expect(plan(border, 'joined')).toEqual([8, 7, '20']);
    // Geometry: 40 + 33 − 2 1/2 = 70 1/2, 40 + 25 − 2 1/2 = 62 1/2; of 33, 33, 25, 25 no two fit into 40.
    expect(plan(border, 'separate')).toEqual([8, 4, '20']);
    expect(border).toMatchObject({ plan: 'separate', strips: 8, joins: 4, fabric: '20' });
    expect(rowIn(reckon(TOP), 'border1Strips')!.how).toBe(
      '4 whole + 4 cut into 2 × 33, 2 × 25 (each join uses 2 1/2)',
    );
  });

  test('a straight join loses two seams, and joining all takes fewer strips', () => {
    const border = reckon({ ...TOP, join: 'straight' }).borders[0]!;
    // Geometry: 6 × 40 − 5 × 1/2 = 237 1/2 < 266 ≤ 7 × 40 − 6 × 1/2 = 277; on their own 31, 31, 23, 23 are left.
    expect(plan(border, 'joined')).toEqual([7, 6, '17 1/2']);
    expect(plan(border, 'separate')).toEqual([8, 4, '20']);
    expect(border).toMatchObject({ plan: 'joined', strips: 7, joins: 6, fabric: '17 1/2' });
  });

  test('corner squares share strips with what is left of long borders', () => {
    const border = reckon({ width: 62, length: 74, borders: '4 1/2', corners: 'squares' }).borders[0]!;
    // Geometry: 149 + 125 + 20 = 294; 8 × 40 − 7 × 5 = 285 is short.
    expect(plan(border, 'joined')).toEqual([9, 8, '45']);
    // Geometry: 74 1/2 leaves 39 1/2, 62 1/2 leaves 27 1/2, and 27 1/2 + 2 × 5 ≤ 40.
    expect(plan(border, 'separate')).toEqual([8, 4, '40']);
    expect(border.plan).toBe('separate');
  });

  test('a tie in strips and joins goes to the joined plan', () => {
    // Geometry: 2 × 8 1/2 + 2 × 10 1/2 = 38 ≤ 40: one strip either way.
    expect(reckon({ width: 8, length: 8, borders: 1 }).borders[0]).toMatchObject({
      plan: 'joined',
      strips: 1,
      joins: 0,
    });
  });

  test('a join at 45° loses the strip’s width, by coordinates', () => {
    // Geometry, on 40 in strips 2 1/2 wide: one lies from (0, 0) to (40, 2 1/2), the other stands on it, its end over the
    // first one's, from (37 1/2, 2 1/2 − 40) to (40, 2 1/2). The seam runs along x + y = 40 and opening the strip mirrors
    // it there: (x, y) goes to (40 − y, 40 − x).
    const mirror = ([x, y]: [number, number]): [number, number] => [40 - y, 40 - x];
    expect([mirror([37.5, -37.5]), mirror([40, 2.5])]).toEqual([
      [77.5, 2.5],
      [37.5, 0],
    ]);
    // So two strips reach 77 1/2. A 2 in border, sides first, of a top w × w takes 2 (w + 1/2) + 2 (w + 4 1/2) = 4 w + 10:
    // exactly that for w = 16 7/8.
    const strips = (width: string) =>
      plan(reckon({ width, length: width, borders: 2 }).borders[0]!, 'joined')![0];
    expect(strips('16 7/8')).toBe(2);
    expect(strips('17')).toBe(3);
  });

  test('shrinkage: narrower cloth, and more of it', () => {
    const result = reckon({ ...TOP, shrinkage: 3 });
    // Geometry: 40 × 0.97 = 38.8; 7 × 38.8 − 6 × 2.5 = 256.6 < 266 ≤ 8 × 38.8 − 7 × 2.5; 8 × 2.5 ÷ 0.97 = 2000/97.
    expect(rowIn(result, 'washedWidth')).toMatchObject({ inches: '38 4/5' });
    expect(plan(result.borders[0]!, 'joined')).toEqual([8, 7, '20 60/97']);
    // Geometry: a wash that leaves 38 in of 40 leaves 19 of 20 in: 8 strips of 2 1/2 are 20 in, bought as 20 × 20/19.
    expect(reckon({ ...TOP, shrinkage: 5 }).fabric).toBe(exact(400, 19).toFraction(true));
  });

  test('wider than the cloth', () => {
    // Geometry: 41 in strips of 40 in cloth, 41 in tall each. Straight joins: 70 1/2 + 70 1/2 + 139 1/2 + 139 1/2 = 420.
    const border = reckon({ ...TOP, borders: '40 1/2', join: 'straight' }).borders[0]!;
    expect(plan(border, 'joined')).toEqual([11, 10, '451']);
    expect(plan(border, 'along')).toBeUndefined();
    expect(refused({ ...TOP, borders: '40 1/2' })['join']).toMatch(/Write straight\.$/);
    expect(refused({ ...TOP, borders: '2, 40 1/2', grain: 'along' })['grain']).toBe(
      'Border 2 is cut 41 in wide, too wide to be cut along cloth of 40 in. Write across.',
    );
    expect(refused({ ...TOP, fabricWidth: '1/2', join: 'straight' })['fabricWidth']).toContain('like 40 in');
  });

  test('as wide as the cloth, and nothing longer: no join is needed', () => {
    const input = { width: '1/4', length: 8, borders: 9, fabricWidth: '9 1/2', corners: 'squares' };
    const border = reckon(input).borders[0]!;
    // Geometry: strips 9 1/2 by 9 1/2; four squares, and 8 1/2 + 3/4 from each of two more.
    expect(plan(border, 'separate')).toEqual([6, 0, '57']);
    expect(plan(border, 'joined')).toBeUndefined();
    expect(border.plan).toBe('separate');
  });
});

describe('strips along the cloth', () => {
  test('side by side, as long as the longest', () => {
    const result = reckon({ ...TOP, grain: 'along' });
    // Geometry: 16 strips of 2 1/2 lie side by side in 40.
    expect(result.borders[0]).toMatchObject({ plan: 'along', strips: 4, joins: 0, fabric: '70 1/2' });
    expect(rowIn(result, 'border1Strips')!.how).toBe('40 ÷ 2 1/2: 16 fit side by side, in 1 row');
  });

  test('shorter ones one behind another', () => {
    // Geometry: six of 6 1/2 lie side by side in 40: two sides of 48 1/2, two ends of 18 1/2, and 4 × 6 1/2 = 26 in a fifth.
    const input = { width: 18, length: 48, borders: '6', corners: 'squares', grain: 'along' };
    const result = reckon(input);
    expect(result.fabric).toBe('48 1/2');
    expect(rowIn(result, 'border1Strips')!.how).toBe(
      '40 ÷ 6 1/2: 6 fit side by side, in 1 row, shorter ones one behind another',
    );
  });

  test('in rows where they do not fit side by side, longest first', () => {
    // Geometry: three of 11 fit into 40. Top and bottom are 58 + 21 + 1/2 = 79 1/2: 79 1/2, 79 1/2, 70 1/2; then 70 1/2.
    expect(reckon({ ...TOP, borders: '10 1/2', grain: 'along' }).fabric).toBe('150');
    // Geometry: two of 15 1/2 fit: 70 1/2 twice, 58 1/2 twice, and two rows of two squares.
    expect(reckon({ ...TOP, borders: 15, grain: 'along', corners: 'squares' }).fabric).toBe('160');
    // Geometry: three of 13 fit exactly into 39: 70 1/2, 70 1/2, 58 1/2; then 58 1/2, and beside it 4 × 13 = 52, one
    // behind another.
    expect(
      reckon({ ...TOP, borders: '12 1/2', fabricWidth: 39, grain: 'along', corners: 'squares' }).fabric,
    ).toBe('129');
    // Geometry: only one of 20 1/2 fits: 70 1/2, 70 1/2, 98 + 1/2, 98 + 1/2.
    expect(reckon({ ...TOP, borders: 20, grain: 'along' }).fabric).toBe('338');
    // Geometry: 40 in fit exactly.
    expect(reckon({ ...TOP, borders: '39 1/2', grain: 'along' }).borders[0]!.strips).toBe(4);
  });

  test('of several borders beside each other, where they fit on less', () => {
    const result = reckon({ ...TOP, borders: '2, 4 1/2', grain: 'along' });
    // Geometry: 4 × 2 1/2 + 4 × 5 = 30, which fits beside each other in 40; the longest is 70 + 4 + 1/2. Apart: 70 1/2 + 74 1/2.
    expect(result.fabric).toBe('74 1/2');
    expect(rowIn(result, 'fabric')!.how).toBe(
      'all of them, as many as fit side by side, in 1 row: the longest piece = 74 1/2 in',
    );
    expect(result.borders.map(({ fabric }) => fabric)).toEqual(['70 1/2', '74 1/2']);
    // Geometry: two of 15 1/2 fill 31 of the 40, and no piece of the other border, 15 1/2 wide, fits beside them.
    const apart = reckon({ ...TOP, borders: '15, 15', grain: 'along' });
    expect(exact(apart.fabric).equals(sum(apart.borders.map(({ fabric }) => exact(fabric))))).toBe(true);
  });

  test('after a wash', () => {
    // Geometry: 38.8 in hold 15 of 2 1/2; 70 1/2 ÷ 0.97 = 7050/97.
    expect(reckon({ ...TOP, grain: 'along', shrinkage: 3 }).fabric).toBe(exact(7050, 97).toFraction(true));
  });
});

describe('what is bought', () => {
  test('all borders from one cloth, rounded once; each border’s own for different cloths', () => {
    const result = reckon({ ...TOP, borders: '2, 1' });
    // Geometry: 20 in for the first. The second: 74 1/2 and 64 1/2, cut 1 1/2: left 36 and 26 of each, 8 strips, 12 in;
    // all joined 278, and 7 × 40 − 6 × 1 1/2 = 271 is short.
    expect(result.borders.map(({ fabric }) => fabric)).toEqual(['20', '12']);
    expect(result.borders.map(({ buy }) => buy.text)).toEqual(['5/8 yd', '3/8 yd']);
    expect(result).toMatchObject({ fabric: '32', spare: '4', buy: { inches: '36', text: '1 yd' } });
    expect(result.notes.join()).toContain('5/8 yd for border 1, 3/8 yd for border 2');
    expect(rowIn(result, 'fabric')).toMatchObject({
      how: '20 + 12 = 32 in',
      from: ['border1Fabric', 'border2Fabric'],
    });
    expect(rowIn(result, 'border2Fabric')!.how).toBe('8 × 1 1/2 = 12 in');
  });

  test('one border has nothing to say of others', () => {
    const result = reckon(TOP);
    expect(result.notes.join()).not.toContain('border 1');
    expect(rowIn(result, 'fabric')!.how).toBe('8 × 2 1/2 = 20 in');
    expect(result.summary).toBe(
      '8 strips across the cloth, 4 joins; with its border the quilt is 62 × 74 in.',
    );
  });

  test('price', () => {
    // 5/8 yd at 12.
    expect(reckon({ ...TOP, price: 12 }).cost?.amount).toBe('7.50');
  });
});

describe('lengths measured on the top', () => {
  test('everything after follows', () => {
    const result = reckon({
      ...TOP,
      borders: '2, 4 1/2',
      measured: { border1Sides: '71', border1Ends: '62' },
    });
    // Geometry: 71 raw is 70 1/2 finished, with the border 74 1/2; 62 raw is 61 1/2 finished.
    expect(pieces(result.borders[0]!)).toEqual(['2 side 71 by 2 1/2', '2 end 62 by 2 1/2']);
    expect(pieces(result.borders[1]!)).toEqual(['2 side 75 by 5', '2 end 71 by 5']);
    expect(result.finished).toEqual({ width: '70 1/2', length: '83 1/2' });
    expect(rowIn(result, 'border1Sides')).toMatchObject({
      role: 'measured',
      value: '71 in',
      reckoned: '70 1/2 in',
    });
    expect(rowIn(result, 'border1FinishedLength')).toMatchObject({
      how: '71 − 2 × 1/4 + 2 × 2 = 74 1/2 in',
      from: ['border1Sides', 'seam', 'borders'],
    });
    expect(rowIn(result, 'border1FinishedWidth')).toMatchObject({ how: '62 − 2 × 1/4 = 61 1/2 in' });
  });

  test('a mitred border is reckoned from the top’s measure', () => {
    const result = reckon({
      ...TOP,
      corners: 'mitred',
      measured: { border1TopLength: '71 1/2', border1TopWidth: '58' },
    });
    // Geometry: 71 + 5 + 2, 57 1/2 + 5 + 2.
    expect(pieces(result.borders[0]!)).toEqual(['2 side 78 by 2 1/2', '2 end 64 1/2 by 2 1/2']);
    expect(result.finished).toEqual({ width: '61 1/2', length: '75' });
  });

  test('the wanted size is reached from what was measured', () => {
    const { borders, finished } = reckon({ ...TOP, target: '70 x 82', measured: { border1Sides: '72 1/2' } });
    // Geometry: 72 + 4 = 76 long; (82 − 76) ÷ 2 = 3, (70 − 62) ÷ 2 = 4.
    expect(borders[1]).toMatchObject({ finished: '4', finishedEnds: '3' });
    expect(finished).toEqual({ width: '70', length: '82' });
  });

  test('a washed width that was measured decides the strips', () => {
    // Geometry: 2 × 70 1/2 + 2 × 62 1/2 = 266 = 2 × 134 1/4 − 2 1/2: two strips from 134 1/4 in.
    const wide = { ...TOP, fabricWidth: 142, shrinkage: 5 };
    const border = reckon({ ...wide, measured: { washedWidth: '134 1/4' } }).borders[0]!;
    expect(plan(border, 'joined')!.slice(0, 2)).toEqual([2, 1]);
  });

  test('cloth does not get wider in the wash: a measure from before the cloth was changed is refused', () => {
    expect(refused({ ...TOP, shrinkage: 5, measured: { washedWidth: '103' } })).toEqual({
      washedWidth:
        'Cloth does not get wider in the wash: it was 40 in. Measure it again, or put the old width back.',
    });
  });

  test('what is much less than reckoned is asked about', () => {
    // Geometry: 70 + 2 × 1/4 = 70 1/2 in long; 19/20 of it are 66.975 in.
    const notes = (border1Sides: string): string =>
      reckon({ ...TOP, measured: { border1Sides } }).notes.join();
    expect(notes('66 7/8')).toContain(
      'you measured 66 7/8 in, and we worked out 70 1/2 in. Is your measure still right?',
    );
    expect(notes('67')).not.toContain('Is it still right?');
  });

  test('a cut width: strips, cloth, later lengths and the finished size follow it', () => {
    const { borders, finished, fabric, cuts } = reckon({
      width: 58,
      length: 70,
      borders: '2',
      fabricWidth: 40,
      measured: { border1Width: '3' },
    });
    // Geometry: cut 3 in, it finishes 2 1/2: 58 + 5 by 70 + 5. Sides of 70 1/2, top and bottom of 63 1/2, all 3 in wide.
    expect(finished).toEqual({ width: '63', length: '75' });
    expect(borders[0]!.finished).toBe('2 1/2');
    expect(cuts.map(({ count, length, width }) => [count, width, length])).toEqual([
      [2, '3', '70 1/2'],
      [2, '3', '63 1/2'],
    ]);
    // 2 × (70 1/2 + 63 1/2) = 268 in of strips: 7 of 40 in less 6 joins of 3 in are 262, 8 less 7 are 299.
    expect([borders[0]!.strips, fabric]).toEqual([8, '24']);
  });

  test('what cannot be is said at its row', () => {
    expect(refused({ ...TOP, measured: { border1Sides: '1/2' } })).toEqual({
      border1Sides: 'The seams leave nothing of 1/2 in. Measure from edge to edge, like 70 1/2 in.',
    });
    expect(refused({ ...TOP, measured: { border1Ends: 'abc' } })['border1Ends']).toBeDefined();
    expect(refused({ ...TOP, measured: { border1Ends: '-3' } })['border1Ends']).toBeDefined();
  });
});

describe('what was written', () => {
  test('some border has to be there', () => {
    for (const borders of [undefined, '', ' ', ',', []])
      expect(refused({ width: 58, length: 70, borders })['borders']).toMatch(/like 2, 4 1\/2/);
  });

  test('a corner style for all or for each', () => {
    const styles = (more: BordersInput): string[] =>
      reckon({ ...TOP, ...more }).borders.map(({ corners }) => corners);
    expect(styles({ borders: '1, 2', corners: 'squares' })).toEqual(['squares', 'squares']);
    expect(styles({ borders: '1, 2', corners: 'squares, mitred' })).toEqual(['squares', 'mitred']);
    expect(refused({ ...TOP, corners: 'constructor' })['corners']).toContain('not one of the choices');
  });

  test('if there are more or fewer borders than corner styles, a border uses those of its neighbour, and a note says so', () => {
    const more = reckon({ ...TOP, borders: '1, 2, 3', corners: 'squares, mitred' });
    expect(more.borders.map(({ corners }) => corners)).toEqual(['squares', 'mitred', 'mitred']);
    expect(more.working.find(({ id }) => id === 'corners')).toMatchObject({
      value: 'corner squares, mitred, mitred',
      code: 'squares, mitred, mitred',
    });
    expect(more.notes.join()).toContain(
      'There are 2 corner styles for 3 borders: the others have corners like border 2.',
    );
    const less = reckon({ ...TOP, borders: '1', corners: 'squares, mitred' });
    expect(less.borders.map(({ corners }) => corners)).toEqual(['squares']);
    expect(less.notes.join()).toContain('There are 2 corner styles for 1 border: the last is not used.');
  });

  test('lists as people write them', () => {
    const said = (borders: unknown, more: BordersInput = {}): string[] =>
      reckon({ ...TOP, ...more, borders }).borders.map(({ finished }) => finished);
    expect(said('2, 4 1/2')).toEqual(['2', '4 1/2']);
    expect(said('2; 4½')).toEqual(['2', '4 1/2']);
    expect(said('2; 4,5', { lang: 'de' })).toEqual(['2', '4 1/2']);
    expect(said([2, '4-1/2'])).toEqual(['2', '4 1/2']);
    expect(said(2)).toEqual(['2']);
    expect(said('5.08 cm, 11.43 cm')).toEqual(['2', '4 1/2']);
  });

  test('every row says how it was got, from rows that are there', () => {
    const result = reckon({
      ...TOP,
      borders: '2, 3',
      target: '90 x 100',
      corners: 'squares, mitred, ends-first',
      shrinkage: 3,
      price: 10,
    });
    const ids = result.working.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, role, how, from } of result.working) {
      if (role === 'given') continue;
      expect(how, id).not.toBe('');
      expect(from.length, id).toBeGreaterThan(0);
      for (const source of from) expect(ids, `${id} from ${source}`).toContain(source);
    }
  });
});
