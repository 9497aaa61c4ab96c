import { describe, expect, it } from 'vitest';
import { weights } from '../tools/weigh.mjs';

/**
 * The limit for each script in gzipped bytes. It is a little above the size of today, so that we notice when a script grows. Some
 * have a goal too. A script that has reached its goal has to stay below it.
 */
const CEILINGS: Record<string, { ceiling: number; goal?: number }> = {
  backing: { ceiling: 43_200, goal: 20_000 },
  batting: { ceiling: 46_100, goal: 24_000 },
  binding: { ceiling: 44_900, goal: 24_000 },
  borders: { ceiling: 47_000, goal: 24_000 },
  sleeve: { ceiling: 42_900 },
  block: { ceiling: 65_900 },
  top: { ceiling: 57_000, goal: 27_000 },
  cutting: { ceiling: 63_500 },
  fabric: { ceiling: 40_500 },
  worksheet: { ceiling: 75_800 },
  'backing, binding, borders, batting together': { ceiling: 60_800, goal: 34_000 },
  'the loader': { ceiling: 1000, goal: 1000 },
  everything: { ceiling: 112_000, goal: 53_000 },
  'everything, classic script': { ceiling: 112_000, goal: 53_000 },
  'the arithmetic alone': { ceiling: 75_300 },
};

const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

const weighed = weights().map(({ name, bytes }) => ({ name, bytes, ...CEILINGS[name]! }));

describe('what a page that uses it has to load, gzipped', () => {
  it('is weighed for everything that has a ceiling', () => {
    expect(weighed.map(({ name }) => name).sort()).toEqual(Object.keys(CEILINGS).sort());
  });

  for (const { name, bytes, ceiling, goal } of weighed)
    it(`${name}: no more than ${kB(ceiling)}${goal ? `; the goal is ${kB(goal)}, ${goal < ceiling ? 'not reached' : 'reached'}` : ''}`, () => {
      expect(bytes).toBeGreaterThan(300);
      expect(bytes).toBeLessThanOrEqual(ceiling);
      // The limit has to be close to the size.
      expect(ceiling - bytes, 'the ceiling is too high').toBeLessThan(1000);
      if (goal && bytes <= goal) expect(ceiling, 'within its goal now: the goal is its ceiling').toBe(goal);
    });
});
