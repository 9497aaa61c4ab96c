import { describe, expect, test } from 'vitest';
import { sentence } from '../sentences.js';
import { clothBound } from '../../src/planner/bounds.js';
import { planCloth } from '../../src/planner/plan.js';
import { exact } from '../../src/measure/exact.js';

const piece = (width: number, height: number, count: number, turn = false) => ({
  width,
  height,
  count,
  turn,
});

describe('what no plan can do with less than', () => {
  // Geometry, on cloth 40 wide.
  test('a length that holds the tallest piece, however little the others take', () => {
    expect(clothBound([piece(2, 100, 1), piece(3, 7, 1)], 40)).toBe(100);
  });

  test('the shorter side of a piece that may be turned', () => {
    expect(clothBound([piece(30, 7, 1, true), piece(3, 5, 1)], 40)).toBe(7);
  });

  test('the area over the width, up to a sum of heights', () => {
    // 9 × 20 × 6 over 40 is 27, and every height is a multiple of 6.
    expect(clothBound([piece(20, 6, 9)], 40)).toBe(30);
  });

  test('what does not go side by side goes below each other, or on sheets of its own', () => {
    // Two of 21 do not fit beside each other, though their area is little more than half.
    expect(clothBound([piece(21, 6, 5)], 40)).toBe(30);
    expect(clothBound([piece(21, 6, 5)], 40, 7)).toBe(5);
  });
});

test('cloth too narrow is named as a ruler has its width', () => {
  const found = planCloth([{ width: exact(30), height: exact(30), count: 1, turn: true }], {
    width: exact(41, 2),
  });
  expect(found.ok ? '' : sentence(found.problem)).toContain('cloth 20 1/2 in wide');
});
