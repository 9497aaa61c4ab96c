import { describe, expect, it } from 'vitest';
import { weights } from '../tools/weigh.mjs';

const weighed = (await weights()).filter(({ limit }) => limit !== undefined);

describe('what a page that uses it has to load, in gzipped bytes', () => {
  it('counts the four calculators for finishing a quilt', () => {
    expect(weighed.map(({ name }) => name)).toContain('backing, binding, borders, batting together');
  });

  it.each(weighed)('$name: at most $limit', ({ bundled = 0, served = 0, limit = 0 }) => {
    expect(Math.max(bundled, served)).toBeGreaterThan(1000);
    expect(bundled).toBeLessThanOrEqual(limit);
    expect(served).toBeLessThanOrEqual(limit);
  });
});
