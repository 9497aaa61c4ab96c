import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inTurn } from '../../src/workbook/in-turn.js';
import { flowingCount, isPlaced, sharesOf, unevenOf, type PlacedBlock } from '../../src/workbook/places.js';
import { exact } from '../../src/measure/exact.js';

const block = (count: unknown, fills = false): PlacedBlock => ({ count, fills, block: undefined });
const filling = block(undefined, true);

describe('how many blocks there are of each', () => {
  test.each<[string, number, PlacedBlock[], (number | undefined)[]]>([
    ['an only block takes all places', 20, [block(undefined)], [20]],
    ['an only block with a number keeps it', 20, [block('18')], [18]],
    ['one of several without a number is one', 20, [block('12'), block(undefined)], [12, 1]],
    ['one that fills takes what is left', 20, [block('12'), filling], [12, 8]],
    // 20 − 5 = 15, by two: 8 and 7
    ['the first of those that fill takes one more', 20, [filling, block('5'), filling], [8, 5, 7]],
    ['nothing is left where the others are too many', 20, [block('12'), filling, block('11')], [12, 0, 11]],
    ['one that fills may be typed over', 20, [block('12'), block('6', true)], [12, 6]],
    ['an empty text is no number', 20, [block('')], [undefined]],
    ['a number that nobody can read takes no place', 20, [block('some'), filling], [undefined, 20]],
  ])('%s', (_, places, blocks, shares) => expect(sharesOf(places, blocks)).toEqual(shares));

  test('at random, those that fill make up the places, evenly, and none is below 0', () => {
    const one = fc.oneof(
      fc.nat(40).map((count) => block(`${count}`)),
      fc.constant(filling),
    );
    fc.assert(
      fc.property(fc.nat(200), fc.array(one, { minLength: 2, maxLength: 8 }), (places, blocks) => {
        const shares = sharesOf(places, blocks).map((share) => share ?? NaN);
        const all = shares.reduce((sum, share) => sum + share, 0);
        const given = blocks.reduce((sum, { count }) => sum + Number(count ?? 0), 0);
        const open = shares.filter((_, at) => blocks[at]?.fills);
        expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
        expect(all).toBe(open.length ? Math.max(places, given) : given);
        expect(open.length ? Math.max(...open) - Math.min(...open) : 0).toBeLessThanOrEqual(1);
        expect([...open].sort((a, b) => b - a)).toEqual(open);
        expect(unevenOf(places, blocks)?.values).toEqual(
          all === places ? undefined : { places, made: all, difference: places - all },
        );
      }),
    );
  });

  test('flow to those that fill, and to an only one, typed over or not', () => {
    const typed = block('3', true);
    const [first, second] = [block('12'), filling];
    expect(flowingCount(20, [first, typed], typed)).toBe(8);
    expect(flowingCount(20, [first, second], second)).toBe(8);
    expect(flowingCount(20, [first, second], first)).toBe(undefined);
    expect(flowingCount(20, [first], first)).toBe(20);
  });

  test('count only blocks as large as those of the top: as written, or as they are now', () => {
    const blocks = (size: number) => ({ count: 20, block: exact(size) });
    const of = (size: number): PlacedBlock => ({ ...block('4'), block: exact(size) });
    const top = { written: blocks(12), now: blocks(10) };
    expect([12, 10, 9].map((size) => isPlaced(of(size), top))).toEqual([true, true, false]);
    expect(isPlaced(block('4'), top)).toBe(true);
  });
});

/** Written row by row, as letters; a point where nothing lies. */
const rows = (counts: number[], across: number, down: number): string[] => {
  const places = inTurn(counts, { across, down, onPoint: false });
  return Array.from({ length: down }, (_, row) =>
    places
      .slice(row * across, (row + 1) * across)
      .map((kind) => (kind === undefined ? '.' : 'ABCDEFGH'[kind]))
      .join(''),
  );
};

describe('the order in which blocks lie in the places', () => {
  // Drawn by hand.
  test.each<[string, number[], number, number, string[]]>([
    ['one kind', [6], 3, 2, ['AAA', 'AAA']],
    ['two kinds on an even number of columns', [8, 8], 4, 4, ['ABAB', 'BABA', 'ABAB', 'BABA']],
    ['two kinds on an odd number of columns', [8, 7], 5, 3, ['ABABA', 'BABAB', 'ABABA']],
    ['three kinds on three columns', [3, 3, 3], 3, 3, ['ABC', 'BCA', 'ABC']],
    ['fewer blocks than places', [3, 3], 4, 2, ['ABAB', 'BA..']],
    ['a kind of which there is none', [4, 0], 2, 2, ['AA', 'AA']],
  ])('%s', (_, counts, across, down, laid) => expect(rows(counts, across, down)).toEqual(laid));

  const layout = fc.record({
    across: fc.integer({ min: 1, max: 12 }),
    down: fc.integer({ min: 1, max: 12 }),
    onPoint: fc.boolean(),
  });

  test('has each kind exactly as often as its number says, at random', () => {
    fc.assert(
      fc.property(layout, fc.array(fc.nat(1000), { minLength: 1, maxLength: 6 }), (layout, parts) => {
        const { across, down, onPoint } = layout;
        const places = across * down + (onPoint ? (across - 1) * (down - 1) : 0);
        // Cuts the places at random into numbers.
        const cuts = [...parts.slice(1).map((part) => part % (places + 1)), places].sort((a, b) => a - b);
        const counts = cuts.map((cut, at) => cut - (cuts[at - 1] ?? 0));
        const laid = inTurn(counts, layout);
        expect(laid.length).toBe(places);
        expect(counts.map((_, kind) => laid.filter((one) => one === kind).length)).toEqual(counts);
        expect(inTurn(counts, layout)).toEqual(laid);
      }),
    );
  });

  test('with two equal kinds puts none beside or above its own', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 12 }), fc.integer({ min: 2, max: 12 }), (across, down) => {
        const half = (across * down) / 2;
        const laid = rows([Math.ceil(half), Math.floor(half)], across, down);
        for (const [at, row] of laid.entries())
          for (const [place, kind] of [...row].entries()) {
            expect(kind).not.toBe(row[place + 1]);
            expect(kind).not.toBe(laid[at + 1]?.[place]);
          }
      }),
    );
  });
});
