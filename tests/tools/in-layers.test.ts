import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sortedByLayer } from './in-layers.mjs';

describe('the order of modules in a bundle', () => {
  it('is that of the layers, and in each that of the paths', () => {
    const order = [
      'src/measure/exact.ts',
      'src/measure/parse.ts',
      'src/calculators/backing/draw.ts',
      'src/words/en/backing.ts',
      'src/face/face.ts',
    ].map((path) => resolve(path));
    expect(sortedByLayer(order.toReversed())).toEqual(order);
  });

  it('leaves alone what defines an element, and what is not of the sources', () => {
    const others = ['src/elements/top/define.ts', 'src/index.ts', 'demo/quick.ts'].map((path) =>
      resolve(path),
    );
    expect(sortedByLayer(others)).toEqual([]);
  });
});
