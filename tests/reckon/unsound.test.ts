import { describe, expect, test } from 'vitest';
import type { Planner } from '../../src/ledger/planning.js';
import { exact } from '../../src/measure/exact.js';
import { planCloth } from '../../src/planner/plan.js';
import { reckonTop } from '../../src/reckon.js';

/** A planner that puts all pieces of a strip at its left edge, one on the other. */
const unsound: Planner = (pieces, cloth) => {
  const plan = planCloth(pieces, cloth);
  if (!plan.ok) return plan;
  const sheets = plan.sheets.map((sheet) => ({
    ...sheet,
    strips: sheet.strips.map((strip) => ({
      ...strip,
      placed: strip.placed.map((spot) => ({ ...spot, x: exact(0) })),
    })),
  }));
  return { ...plan, sheets };
};

describe('a top whose strips cannot be cut as they say', () => {
  test('says so, and gives no amount', () => {
    const { errors, buy } = reckonTop({ block: 12, across: 4, down: 5, sashing: 2 }, unsound);
    expect(errors!.map(({ input }) => input)).toEqual(['sashing']);
    expect(errors![0]!.message).toContain('did not pass its check');
    expect(buy).toBeUndefined();
  });
});
