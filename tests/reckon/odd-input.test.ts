import { describe, expect, it } from 'vitest';
import { reckonBlock, reckonCutting, reckonTop, reckonWorksheet } from '../../src/reckon.js';

const part = { title: 'Week', fabric: 'A', need: '0', sheet: 'fat-quarter' };
const pieces = [{ width: '5', length: '5', count: 3, turn: true }];

describe('odd input throws nothing', () => {
  it('a chart with holes in it is a chart with empty rows or cells', () => {
    const [rows, cells]: [string[], string[]] = [[], ['A']];
    rows[1] = 'A';
    cells[2] = 'B';
    for (const chart of [rows, [cells], new Array<string>(5)])
      expect(reckonBlock({ block: 6, chart }).errors).toHaveLength(1);
  });

  it('a number in the place of a planner is no planner', () => {
    const block = Reflect.apply(reckonBlock, undefined, [{ chart: 'A B; B A', block: 6 }, 0]) as object;
    expect(block).toEqual(reckonBlock({ chart: 'A B; B A', block: 6 }));
    for (const reckon of [reckonBlock, reckonCutting, reckonTop, reckonWorksheet])
      expect(() => Reflect.apply(reckon, undefined, [{}, 0]) as object).not.toThrow();
  });

  it('something that only looks like an exact number is no length', () => {
    const block = { d: 1n, toFraction: () => '' };
    expect(reckonTop({ across: 2, down: 2, block }).errors).toHaveLength(1);
  });

  it('a wash that makes cloth longer counts as none', () => {
    const needed = (washed: string): unknown => {
      const parts = [{ title: 'Backing', fabric: 'A', need: '10', width: '40', washed }];
      return reckonWorksheet({ fabrics: [{ letter: 'A', atHand: '1 yd' }], parts });
    };
    expect(['0', '1/3'].map(needed)).toEqual([needed('1'), needed('1')]);
  });

  it('a week is a whole number, or none', () => {
    const weekOf = (week: unknown): unknown => {
      const result = reckonWorksheet({ parts: [{ ...part, pieces, week } as object as typeof part] });
      const { items } = result as { items?: { weeks?: { week?: number }[] }[] };
      return items?.[0]?.weeks?.[0]?.week;
    };
    expect([3, '3', Infinity, 0.5, 1e308, -1, NaN].map(weekOf)).toEqual([
      3,
      3,
      ...Array<undefined>(5).fill(undefined),
    ]);
  });

  it('a letter is the same in both of its forms, and with marks that nobody sees', () => {
    const fabrics = (chart: string): unknown =>
      (reckonBlock({ block: 6, chart }) as { fabrics?: object[] }).fabrics?.length;
    expect([fabrics('e\u0301 \u00e9; \u00e9 e\u0301'), fabrics('\u200fA B;B \u200bA')]).toEqual([1, 2]);
  });
});
