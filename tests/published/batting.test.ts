import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { reckonBatting, type BattingResult } from '../../src/reckon.js';

const good = (input: Parameters<typeof reckonBatting>[0]): BattingResult => {
  const result = reckonBatting(input);
  if (result.errors) throw new Error(result.errors[0]!.message);
  return result;
};

describe('packaged sizes', () => {
  // "Common quilt and batting sizes", Honey Be Good, 1 May 2012
  test.each([
    ['crib', '45', '60'],
    ['twin', '72', '90'],
    ['full', '81', '96'],
    ['queen', '90', '108'],
    ['king', '120', '120'],
  ])('%s is %s × %s in (Honey Be Good)', (name, width, length) => {
    const result = good({ width, length, overage: 0 });
    expect(result.packages).toContainEqual({ name, width, length, fits: true });
    expect(result.buy.text).toBe(
      `1 ${name === 'full' ? 'full-size' : name} package, ${width} × ${length} in`,
    );
  });

  // "Quilting basics: standard quilt sizes", Project 12 Quilts, 6 January 2012; where it differs from the list above the
  // reader is told to look at the label
  test.each([
    ['craft', 34, 45],
    ['crib', 45, 60],
    ['twin', 72, 90],
    ['full', 84, 96],
    ['queen', 90, 108],
    ['king', 124, 120],
  ])('%s of %d × %d in (Project 12 Quilts) is within a few inches of ours', (name, width, length) => {
    const result = good({ width: 30, length: 30 });
    const ours = result.packages.find((pack) => pack.name === name)!;
    expect(Math.abs(exact(ours.width).valueOf() - width)).toBeLessThanOrEqual(4);
    expect(Math.abs(exact(ours.length).valueOf() - length)).toBeLessThanOrEqual(4);
    expect(result.notes.join()).toContain('makers’ sizes differ by a few inches');
  });
});

describe('mattresses', () => {
  // "Mattresses", sizes.com; crib: 16 CFR Part 1219 (full-size baby cribs), interior 28 × 52 3/8 in
  test.each([
    ['twin', '39', '75'],
    ['twin-long', '39', '80'],
    ['full', '54', '75'],
    ['queen', '60', '80'],
    ['king', '78', '80'],
    ['california-king', '72', '84'],
    ['crib', '28', '52 3/8'],
  ])('%s is %s × %s in', (bed, width, length) => {
    expect(good({ bed, drop: 0 }).quilt).toEqual({ width, length });
  });
});

test('for longarm quilting 4 in a side are added (FAQ “Backing & binding”, Quilts of Valor Foundation, 13 July 2020)', () => {
  expect(good({ width: 60, length: 80 }).need).toEqual({ width: '68', length: '88' });
});

test('cotton batting shrinks 3–5 % (“Types of batting”, The Quilt Orchard, September 2013)', () => {
  // geometry: 60 × 0.97, 80 × 0.97; 60 × 0.95, 80 × 0.95
  expect(good({ width: 60, length: 80, shrinkage: 3 }).washed).toEqual({ width: '58 1/5', length: '77 3/5' });
  expect(good({ width: 60, length: 80, shrinkage: 5 }).washed).toEqual({ width: '57', length: '76' });
});

test('crib sizes: a bare crib (“Bare is best”, US Consumer Product Safety Commission)', () => {
  expect(good({ bed: 'crib' }).notes.join()).toContain('bare crib with a fitted sheet');
});
