import { describe, expect, it } from 'vitest';
import { asMarkdown, asText, atMost, figure, median, ratios, type Section } from './table.mjs';

// All values here are worked by hand.
describe('figures of the bench', () => {
  it('takes the middle of an odd number of values, and the mean of the middle two of an even one', () => {
    expect(median([30, 1, 2])).toBe(2);
    expect(median([4, 100, 1, 3])).toBe(3.5);
  });

  it('leaves the values in their order', () => {
    const values = [3, 1, 2];
    median(values);
    expect(values).toEqual([3, 1, 2]);
  });

  it.each([
    [0, '0'],
    [0.0123, '0.012'],
    [0.5678, '0.568'],
    [7.061, '7.06'],
    [26.94, '26.9'],
    [269.4, '269'],
    [7061.2, '7,061'],
    [NaN, '–'],
    [Infinity, '–'],
  ])('writes %d as %s', (value, text) => expect(figure(value)).toBe(text));

  it('divides ours by theirs, so that less is better', () =>
    expect(ratios([10, 3], [4, 6])).toEqual([2.5, 0.5]));
});

describe('the table', () => {
  const section: Section = {
    title: 'Times, ms',
    rows: [
      {
        what: 'a | b',
        ours: [10],
        beside: [
          { name: 'peer', values: [4] },
          { name: 'floor', values: [1] },
        ],
        goal: atMost('≤ 2 ×', 2.5, 2),
      },
      { what: 'c', ours: [1, 2], goal: atMost('≤ 1 ms', 1, 1) },
    ],
    skipped: ['mathjs, which could not be installed'],
  };

  it('is one line a row, with every ratio and whether a goal is met', () => {
    const lines = asText(section).split('\n');
    expect(lines.map((line) => line.split(/ {2,}/))).toEqual([
      ['Times, ms'],
      ['a | b', '10', 'peer 4; floor 1', '2.5; 10', '≤ 2 ×: not met'],
      ['c', '1, 2', '≤ 1 ms: met'],
      ['left out: mathjs, which could not be installed'],
    ]);
    // Every goal stands under the other.
    expect(lines[1]!.indexOf('≤')).toBe(lines[2]!.indexOf('≤'));
  });

  it('is the same table in Markdown, whatever stands in a cell', () => {
    expect(asMarkdown([section]).split('\n')).toEqual([
      '|  | ours | beside | ours ÷ beside | goal |',
      '| --- | --- | --- | --- | --- |',
      '| **Times, ms** |  |  |  |  |',
      '| a \\| b | 10 | peer 4; floor 1 | 2.5; 10 | ≤ 2 ×: not met |',
      '| c | 1, 2 |  |  | ≤ 1 ms: met |',
      '| left out: mathjs, which could not be installed |  |  |  |  |',
    ]);
  });
});
