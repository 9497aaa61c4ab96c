import { describe, expect, it } from 'vitest';
import { weights } from '../tools/weigh.mjs';

/**
 * What is over its budget today, in bytes. `npm run bench` prints the budgets beside the figures; here nothing may grow
 * beyond where it stands, and whatever comes within its budget has to stay there: take its line out.
 */
const OVER_BUDGET: Record<string, number> = {
  'backing, binding, borders, batting together': 37_900,
  backing: 24_900,
  batting: 26_600,
  binding: 26_100,
  borders: 27_700,
  cutting: 35_100,
  top: 31_900,
  worksheet: 42_300,
  everything: 54_600,
  'everything, classic script': 54_500,
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
