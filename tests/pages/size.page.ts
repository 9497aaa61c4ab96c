import { describe, expect, it } from 'vitest';
import { weights } from '../tools/weigh.mjs';

/**
 * What is over its budget today, in bytes. `npm run bench` prints the budgets beside the figures; here nothing may grow
 * beyond where it stands, and whatever comes within its budget has to stay there: take its line out.
 */
const OVER_BUDGET: Record<string, number> = {
  'backing, binding, borders, batting together': 33_900,
  backing: 21_500,
  batting: 23_100,
  binding: 22_800,
  borders: 24_300,
  cutting: 30_600,
  top: 27_900,
  worksheet: 36_300,
  everything: 47_300,
  'everything, classic script': 47_300,
};

const weighed = (await weights()).filter(({ limit }) => limit !== undefined);

describe('what a page that uses it has to load, in gzipped bytes', () => {
  it('counts the four calculators for finishing a quilt', () => {
    expect(weighed.map(({ name }) => name)).toContain('backing, binding, borders, batting together');
  });

  it.each(weighed)('$name: no more than it may', ({ name, bundled = 0, served = 0, limit = 0 }) => {
    const heavier = Math.max(bundled, served);
    expect(heavier).toBeGreaterThan(1000);
    expect(heavier).toBeLessThanOrEqual(OVER_BUDGET[name] ?? limit);
    if (OVER_BUDGET[name]) expect(heavier, 'within its budget now').toBeGreaterThan(limit);
  });
});
