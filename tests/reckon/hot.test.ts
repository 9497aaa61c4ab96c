import { afterEach, describe, expect, it, vi } from 'vitest';
import { reckonBacking } from '../../src/reckon.js';
import { reckonTop, type TopInput, type TopResult } from '../../src/reckon.js';

afterEach(() => void vi.restoreAllMocks());

describe('a reckoning that was made before', () => {
  it.each(['en', 'de'])('makes no Intl object: %s', (lang) => {
    const input = { width: '58', length: '70', price: '12.50', currency: 'EUR', lang };
    // What is said of a result is made when it is read.
    const read = (): string => JSON.stringify(reckonBacking(input));
    const first = read();
    const made = vi.spyOn(Intl, 'NumberFormat');
    const written = vi.spyOn(Number.prototype, 'toLocaleString');
    expect(read()).toBe(first);
    expect(made).not.toHaveBeenCalled();
    expect(written).not.toHaveBeenCalled();
  });

  it('reads no text to make plain data of its result', () => {
    const parsed = vi.spyOn(JSON, 'parse');
    const { working, errors } = reckonBacking({ width: '58', length: '70' });
    expect(errors).toBeUndefined();
    expect(JSON.parse(JSON.stringify(working))).toEqual(working);
    expect(parsed).toHaveBeenCalledTimes(1);
  });
});

describe('a top whose cloth is still being planned', () => {
  const tops: TopInput[] = [
    { block: '12', across: '4', down: '5', sashing: '2' },
    { block: '12', across: '4', down: '5', sashing: '2', cornerstones: true, frame: true },
    { block: '9', across: '3', down: '4', set: 'on-point' },
    { block: '6', across: '3', down: '3', sashing: '1', cornerstones: true, set: 'on-point', shrinkage: '3' },
  ];
  const roughly = (input: TopInput): TopResult => reckonTop(input, () => 0) as TopResult;

  it.each(tops)('has its size and its pieces, and says that it may take less: %o', (input) => {
    const [now, then] = [roughly(input), reckonTop(input) as TopResult];
    for (const key of ['finished', 'blocks', 'cuts', 'pieces'] as const) expect(now[key]).toEqual(then[key]);
    expect(now.notes.join()).toContain('The layout is being planned: it may take less cloth.');
    expect(then.notes.join()).not.toContain('planned');
  });

  it.each(tops)('names enough cloth for every strip, and every piece: %o', (input) => {
    const { strips, cuts, fabric } = roughly(input);
    const inches = (text: string): number => {
      const [whole = 0, part] = text.split(' ').flatMap((one) => (one.includes('/') ? [0, one] : [+one]));
      const [top = 0, bottom = 1] = `${part ?? 0}`.split('/').map(Number);
      return +whole + top / bottom;
    };
    // geometry: strips lie one below the other, each within 40 in of cloth; shrinkage only adds to it
    const tall = strips.reduce((all, { count, height }) => all + count * inches(height), 0);
    expect(inches(fabric)).toBeGreaterThanOrEqual(tall - 1e-9);
    for (const { piece, count } of cuts) {
      const given = strips.flatMap((strip) =>
        strip.gives.filter((one) => one.piece === piece).map((one) => one.count * strip.count),
      );
      expect(given.reduce((all, one) => all + one, 0)).toBe(count);
    }
    for (const { gives } of strips) {
      const [one] = gives;
      const cut = cuts.find(({ piece }) => piece === one!.piece)!;
      const [short, long] = [inches(cut.width), inches(cut.length)].sort((a, b) => a - b) as [number, number];
      expect(one!.count * (long <= 40 ? long : short)).toBeLessThanOrEqual(40);
    }
  });

  it('refuses what does not fit, as its plan does', () => {
    const input = { block: '50', across: '2', down: '2', sashing: '45' };
    expect(reckonTop(input, () => 0)).toEqual(reckonTop(input));
  });
});
