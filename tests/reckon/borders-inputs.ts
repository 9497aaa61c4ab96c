import fc from 'fast-check';

/** So many eighths of an inch, as text. */
export const eighths = (min: number, max: number) => fc.integer({ min, max }).map((count) => `${count}/8`);
export const CORNERS = ['sides-first', 'ends-first', 'squares', 'mitred'];

/** The sensible range, on a ruler’s marks. No border is as wide as the cloth, so none of these is refused. */
export const inputs = fc
  .record({
    width: eighths(8 * 6, 8 * 120),
    length: eighths(8 * 6, 8 * 120),
    borders: fc.array(eighths(2, 8 * 12), { minLength: 1, maxLength: 3 }),
    corners: fc.constantFrom(...CORNERS),
    grain: fc.constantFrom('across', 'along'),
    join: fc.constantFrom('diagonal', 'straight'),
    fabricWidth: eighths(8 * 18, 8 * 108),
    seam: fc.constantFrom('1/4', '3/8', '1/2'),
    shrinkage: fc.constantFrom(0, 0, 3, '4.5'),
    increment: fc.constantFrom('1/8 yd', '1/4 yd', 'thirds', '10 cm'),
  })
  .map((input) => ({ ...input, borders: input.borders.join(', ') }));
