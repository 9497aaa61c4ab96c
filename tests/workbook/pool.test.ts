import { describe, expect, test } from 'vitest';
import type { Planner } from '../../src/ledger/planning.js';
import { exact, type Exact } from '../../src/measure/exact.js';
import { checkPlan } from '../../src/planner/check.js';
import { planCloth, type Cloth, type CutPiece } from '../../src/planner/plan.js';
import { Quantity } from '../../src/ledger/quantity.js';
import { Purchase } from '../../src/ledger/purchase.js';
import { reckonPlain, type PartInput } from '../../src/workbook/plain.js';
import { shopping } from '../../src/workbook/shopping.js';
import type { ShoppingItem } from '../../src/workbook/shape.js';
import { dice } from '../planner/seeded.js';

type Roll = ReturnType<typeof dice>;
/** Pieces of one size, in quarter inches. */
type Size = [width: number, length: number, count: number];

/** 2,000 sew-alongs in all, in runs that are short enough for a busy machine. */
const CASES = 250;
const RUNS = [20, 21, 22, 23, 24, 25, 26, 27];
const SHEETS = { 'fat-quarter': [80, 72], 'fat-eighth': [80, 36], '18 x 22': [88, 72] } as const;
type SheetName = keyof typeof SHEETS;

const keyOf = (value: unknown): string =>
  JSON.stringify(value, (_, one: unknown) => (typeof one === 'bigint' ? `${one}` : one));

/** The planner, which keeps its plans and checks each of them independently. */
const careful = (): Planner => {
  const known = new Map<string, ReturnType<Planner>>();
  return (pieces, cloth) => {
    const key = keyOf([pieces, cloth]);
    let plan = known.get(key);
    if (plan === undefined) {
      plan = planCloth(pieces, cloth);
      if (plan.ok) expect(checkPlan(pieces, cloth, plan)).toEqual([]);
      known.set(key, plan);
    }
    return plan;
  };
};

/** A sew-along of two or three weeks, with one or two sizes a week that fit on each of the sheets. */
const sewAlong = (roll: Roll): Size[][] =>
  Array.from({ length: roll(4) ? 2 : 3 }, () =>
    Array.from({ length: roll(3) ? 1 : 2 }, (): Size => {
      const width = 8 + 5 * roll(6);
      return [width, roll(2) ? width : 8 + 5 * roll(6), 1 + roll(6)];
    }),
  );

const partsOf = (weeks: Size[][], sheet: SheetName, turn: boolean): PartInput[] =>
  weeks.map((sizes, at) => ({
    title: `List ${at}`,
    fabric: 'A',
    need: '0',
    sheet,
    week: at + 1,
    pieces: sizes.map(([width, length, count]) => ({
      width: `${width}/4`,
      length: `${length}/4`,
      count,
      turn,
    })),
  }));

const lineOf = (parts: PartInput[], plan: Planner): ShoppingItem => {
  const { own, issues } = reckonPlain({ fabrics: [{ letter: 'A' }], parts }, plan);
  expect(issues).toEqual([]);
  expect(own?.items).toHaveLength(1);
  return own?.items[0] ?? expect.fail('nothing on the list');
};

/** The sheets of one list with all these pieces, the largest first. */
const ofOneList = (weeks: Size[][], sheet: SheetName, turn: boolean, plan: Planner): number => {
  const sizes = new Map<string, CutPiece>();
  for (const [w, l, count] of weeks.flat()) {
    const [width, height] = turn && l > w ? [l, w] : [w, l];
    const key = `${width} ${height}`;
    const before = sizes.get(key)?.count ?? 0;
    const isTurned = turn || width === height;
    sizes.set(key, {
      width: exact(width, 4),
      height: exact(height, 4),
      count: before + count,
      turn: isTurned,
    });
  }
  const pieces = [...sizes.values()].sort((a, b) => b.width.compare(a.width) || b.height.compare(a.height));
  const [across, along] = SHEETS[sheet];
  const [width, height] = turn || sheet !== '18 x 22' ? [across, along] : [along, across];
  const planned = plan(pieces, { width: exact(width, 4), height: exact(height, 4) } satisfies Cloth);
  return typeof planned !== 'number' && planned.ok ? planned.count : expect.fail('no plan');
};

const sidesOf = (a: Exact, b: Exact, turn: boolean): string =>
  (turn && b.gt(a) ? [b, a] : [a, b]).map((side) => side.toFraction()).join(' × ');

/** Follows the weeks, sheet by sheet, from what is laid on each sheet: says what goes wrong, or nothing. */
const faultIn = ({ sheets = 0, weeks = [], together }: ShoppingItem, turn: boolean): string | undefined => {
  const onSheets = new Map<number, Map<string, number>>();
  for (const { sheet, width, height } of together?.layout ?? []) {
    const has = onSheets.get(sheet + 1) ?? new Map<string, number>();
    const size = sidesOf(width, height, turn);
    has.set(size, (has.get(size) ?? 0) + 1);
    onSheets.set(sheet + 1, has);
  }
  let opened = 0;
  for (const { from, opened: more, pieces } of weeks) {
    const before = opened;
    opened += more;
    if (opened > sheets) return 'more sheets than the total';
    if (from.some((number) => number > opened)) return 'cuts from a sheet that is not open';
    if (from.filter((number) => number > before).length !== more) return 'opens a sheet that it does not cut';
    if (!together) continue;
    for (const { width, length, count } of pieces) {
      let left = count;
      const size = sidesOf(width, length, turn);
      for (const number of from) {
        const has = onSheets.get(number)?.get(size) ?? 0;
        const taken = Math.min(left, has);
        onSheets.get(number)?.set(size, has - taken);
        left -= taken;
      }
      if (left) return `${left} pieces of ${size} are missing`;
    }
  }
  if (opened !== sheets) return 'not every sheet is opened';
  const rest = [...onSheets.values()].flatMap((has) => [...has.values()]).some(Boolean);
  return rest ? 'a piece is left over' : undefined;
};

describe('a sew-along that is cut from fat quarters', () => {
  // Geometry: 3 × 3 squares of 6 in fit 20 × 18 in. So 5 and 4 of them take a fat quarter each by themselves, one together.
  test('shares the sheets that are open', () => {
    const line = lineOf(partsOf([[[24, 24, 5]], [[24, 24, 4]]], 'fat-quarter', true), planCloth);
    expect([line.sheets, line.parts?.map(({ sheets }) => sheets)]).toEqual([1, [1, 1]]);
    expect(line.weeks?.map(({ from, opened }) => [from, opened])).toEqual([
      [[1], 1],
      [[1], 0],
    ]);
  });

  test.each(RUNS)(
    `is cut week by week from no more than the total, in ${CASES} random ones from %i`,
    (seed) => {
      const roll = dice(seed);
      const plan = careful();
      let saved = 0;
      for (let at = 0; at < CASES; at += 1) {
        const weeks = sewAlong(roll);
        const turn = roll(4) > 0;
        const sheet =
          (['fat-quarter', 'fat-quarter', '18 x 22', 'fat-eighth'] as const)[roll(4)] ?? 'fat-quarter';
        const parts = partsOf(weeks, sheet, turn);
        const line = lineOf(parts, plan);
        const apart = (line.parts ?? []).reduce((all, { sheets }) => all + sheets, 0);
        const what = keyOf([sheet, turn, weeks]);
        expect(faultIn(line, turn), what).toBe(undefined);
        expect(line.sheets, what).toBe(Math.min(apart, ofOneList(weeks, sheet, turn, plan)));
        if ((line.sheets ?? 0) < apart) saved += 1;
        const other = lineOf([...parts].reverse(), plan);
        const mixed = lineOf(
          parts.map((part) => ({ ...part, week: 1 + roll(3) })),
          plan,
        );
        expect([other.sheets, mixed.sheets], what).toEqual([line.sheets, line.sheets]);
        expect(faultIn(mixed, turn), what).toBe(undefined);
      }
      expect(saved).toBeGreaterThan(CASES / 4);
    },
  );
});

describe('a line of sheets', () => {
  const nine = { width: '6', length: '6', turn: true };
  const part = (title: string, count: number, more: object = {}): PartInput => ({
    ...{ title, fabric: 'A', need: '0', sheet: 'fat-quarter', pieces: [{ ...nine, count }] },
    ...more,
  });
  const listed = (parts: PartInput[], fabric: object = {}, more: object = {}) =>
    reckonPlain({ fabrics: [{ letter: 'A', name: 'Print', ...fabric }], parts, ...more });

  // Geometry: 3 × 3 squares of 6 in fit a fat quarter: 5 + 4 + 9 take two.
  test('costs what its sheets cost: the fabric’s price is of one of them', () => {
    const parts = [part('One', 5), part('Two', 4), part('Three', 9)];
    const { own } = listed(parts, { sheet: 'fat-quarter', price: '3.20' });
    const [line] = own?.items ?? [];
    expect([line?.sheets, line?.price?.amount, line?.cost?.amount, own?.total?.amount]).toEqual([
      2,
      '3.20',
      '6.40',
      '6.40',
    ]);
    // A price of a yard is no price of a fat quarter, and the other way round.
    expect(listed(parts, { price: '12' }).own?.items[0]?.cost).toBe(undefined);
    const length = { title: 'Binding', fabric: 'A', need: '20', width: '40' };
    const both = listed([...parts, length], { sheet: 'fat-quarter', price: '3.20' }).own;
    expect([both?.items[0]?.cost?.amount, both?.fabrics[0]?.cost]).toEqual(['6.40', undefined]);
    expect(listed([part('One', 5, { price: '2' })]).own?.items[0]?.cost?.amount).toBe('2.00');
  });

  test('is apart for sheets of another size, and for a print with one way up', () => {
    const oneWay = [
      { ...nine, count: 4, turn: false },
      { width: '2', length: '3', count: 1, turn: false },
    ];
    const { own } = listed([
      part('One', 5),
      part('Two', 4, { sheet: 'fat-eighth' }),
      part('Three', 4, { sheet: 'Fat Quarter' }),
      part('Four', 0, { pieces: oneWay }),
    ]);
    expect(own?.items.map(({ parts, sheets }) => [parts?.length, sheets])).toEqual([
      [2, 1],
      [1, 2],
      [1, 1],
    ]);
  });

  test('is multiplied for kits', () => {
    const { own } = listed([part('One', 5), part('Two', 4)], {}, { kits: 3 });
    const [line] = own ? shopping(own).rows : [];
    expect(line?.map((cell) => (cell instanceof Purchase ? cell.amount.toFraction() : '')).at(-1)).toBe('3');
  });

  // Common practice: a half yard of the bolt, halved, is two fat quarters. A bolt of 2 yd has four half yards, so eight quarters.
  test('says how many bolts the kits take, if the shop cuts the fat quarters itself', () => {
    const boltsOf = (kits: number, more: object = {}, sheet = 'fat-quarter') =>
      listed([part('One', 9, { sheet })], {}, { kits, bolt: '2 yd', ...more })
        .rows.filter(({ id }) => id.startsWith('bolts-'))
        .map(({ value }) => (value instanceof Quantity ? value.value.toFraction() : value));
    expect([8, 9, 27].map((kits) => boltsOf(kits))).toEqual([['1'], ['2'], ['4']]);
    expect(boltsOf(9, { units: 'cm', bolt: '2 m' })).toEqual(['2']);
    expect(boltsOf(9, { bolt: '17 in' })).toEqual([]);
    expect(boltsOf(9, {}, 'fat-eighth')).toEqual([]);
  });

  test('is refused if a piece does not fit, and if nobody says how many there are', () => {
    const issues = (...parts: PartInput[]) => listed(parts).issues.map(({ input, code }) => [input, code]);
    expect(issues(part('One', 1, { pieces: [{ ...nine, width: '30', count: 1 }] }))).toEqual([
      ['parts', 'about'],
    ]);
    expect(issues(part('One', 1, { pieces: [] }))).toEqual([['parts', 'about']]);
    expect(issues(part('One', 1, { sheet: 'much' }))).toEqual([['parts', 'about']]);
  });

  test('says what is wrong with the sheet of a fabric', () => {
    expect(listed([], { sheet: 'much' }).notes.map(({ code }) => code)).toContain('about');
  });
});

describe('cloth by length', () => {
  test('takes the same in all, in whatever order its parts come', () => {
    const roll = dice(7);
    const plan = careful();
    for (let at = 0; at < 60; at += 1) {
      const parts = partsOf(sewAlong(roll), 'fat-quarter', true).map((part) => ({
        ...part,
        sheet: '',
        need: '100',
        width: '40',
      }));
      const needOf = (parts: PartInput[]): string =>
        reckonPlain({ fabrics: [{ letter: 'A' }], parts }, plan).own?.fabrics[0]?.need.toFraction() ?? '';
      expect(needOf([...parts].reverse())).toBe(needOf(parts));
    }
  });
});
