import fc from 'fast-check';
import { exact, type Exact } from '../../src/measure/exact.js';

/** Fractions of an inch as they come up in cloth, and awkward ones. */
export const fractions = ({ min = 0, finest = 1000 } = {}): fc.Arbitrary<Exact> =>
  fc
    .tuple(fc.integer({ min: min * finest, max: 1000 * finest }), fc.integer({ min: 1, max: finest }))
    .map(([top, bottom]) => exact(top, bottom));

/** Multiples of 1/64 in, which are always shown exactly. */
export const sixtyFourths: fc.Arbitrary<Exact> = fc
  .integer({ min: -64_000, max: 64_000 })
  .map((n) => exact(n, 64));

/** Whole numbers of 1/100 mm, in inches: 1 in = 25.4 mm exactly, so 1/100 mm = 1/2540 in. */
export const hundredthsOfMillimetres: fc.Arbitrary<Exact> = fc
  .integer({ min: -2_000_000, max: 2_000_000 })
  .map((n) => exact(n, 2540));
