import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { reckonBorders } from '../../src/reckon.js';

// "45 degree border math", The Quilting Board: a mitred strip = side + 2 × border width + 1 in. The thread leaves open
// whether its border width is finished or cut; ours is never below either.
test('a mitred strip is never shorter than side + 2 × border width + 1 in', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 8, max: 960 }),
      fc.integer({ min: 8, max: 960 }),
      fc.integer({ min: 2, max: 96 }),
      (width, length, border) => {
        const result = reckonBorders({
          width: `${width}/8`,
          length: `${length}/8`,
          borders: `${border}/8`,
          corners: 'mitred',
        });
        if (result.errors) throw new Error(JSON.stringify(result.errors));
        const [side, end] = result.borders[0]!.pieces;
        for (const [piece, along] of [
          [side, length],
          [end, width],
        ] as const)
          for (const wide of [exact(border, 8), exact(piece!.width)])
            expect(exact(piece!.length).gte(exact(along, 8).add(wide.mul(2)).add(1))).toBe(true);
      },
    ),
  );
});
