import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../src/planner/check.js';
import { planCloth, type Cloth, type CutPiece, type CuttingPlan } from '../../src/planner/plan.js';
import { exact, sum, type Exact } from '../../src/measure/exact.js';
import { reckonCutting, type CuttingInput, type FabricPlan } from '../../src/reckon.js';
import type { Planner } from '../../src/ledger/planning.js';
import { answersOf, inches } from './asked.js';

const good = answersOf(reckonCutting);
const notesOf = (input: CuttingInput): string => good(input).notes.join('\n');

// Verifying a layout, with nothing of the planner’s: sizes in whole sixteenths, which a plain number holds exactly.

interface Laid {
  left: number;
  top: number;
  right: number;
  bottom: number;
}
const sixteenths = (text: string): number => inches(text) * 16;
const laidOn = (plan: FabricPlan, sheet: number): Laid[] =>
  plan.layout
    .filter((piece) => piece.sheet === sheet)
    .map(({ x, y, width, height }) => ({
      left: sixteenths(x),
      top: sixteenths(y),
      right: sixteenths(x) + sixteenths(width),
      bottom: sixteenths(y) + sixteenths(height),
    }));

/** Whether edge-to-edge cuts, one after the other, take all of these apart; each cut tried in turn. */
const comesApart = (pieces: Laid[]): boolean => {
  if (pieces.length < 2) return true;
  for (const [from, to] of [
    ['left', 'right'],
    ['top', 'bottom'],
  ] as const)
    for (const at of new Set(pieces.map((piece) => piece[from]))) {
      const before = pieces.filter((piece) => piece[to] <= at);
      const after = pieces.filter((piece) => piece[from] >= at);
      if (before.length && after.length && before.length + after.length === pieces.length)
        return comesApart(before) && comesApart(after);
    }
  return false;
};

const eighths = (min: number, max: number) => fc.integer({ min, max });
const piece = fc.record({
  width: eighths(8, 120),
  length: eighths(8, 120),
  count: fc.integer({ min: 1, max: 9 }),
});
const list = fc.array(piece, { minLength: 1, maxLength: 5 });
const written = (pieces: { width: number; length: number; count: number }[], fabric = 'A'): string =>
  pieces
    .map(({ width, length, count }, at) => `${fabric} | p${at} | ${width}/8 x ${length}/8 | ${count}`)
    .join('\n');

describe('any plan that is shown', () => {
  test('has every piece once, on the cloth, without overlap, and edge-to-edge cuts reach all of them', () => {
    fc.assert(
      fc.property(
        list,
        fc.constantFrom({}, { fabricWidth: '30' }, { sheet: 'fat-quarter' }, { sheet: '20 x 30' }),
        fc.boolean(),
        (pieces, from, oneWay) => {
          const result = reckonCutting({ list: written(pieces), ...from, oneWay });
          if (result.errors) {
            expect(result.errors[0]!.message).toContain('does not fit');
            return;
          }
          const [plan] = result.fabrics as [FabricPlan];
          const cloth = { right: sixteenths(plan.width), bottom: sixteenths(plan.height) };
          for (const sheet of new Set(plan.layout.map(({ sheet }) => sheet))) {
            const laid = laidOn(plan, sheet);
            for (const { left, top, right, bottom } of laid) {
              expect(left >= 0 && top >= 0).toBe(true);
              expect(right <= cloth.right && bottom <= cloth.bottom).toBe(true);
            }
            expect(comesApart(laid)).toBe(true);
          }
          for (const [at, { width, length, count }] of pieces.entries()) {
            const mine = plan.layout.filter(({ piece }) => piece === `p${at}`);
            expect(mine).toHaveLength(count);
            for (const { width: w, height: h } of mine) {
              const sides = [inches(w) * 8, inches(h) * 8];
              if (oneWay) expect(sides).toEqual([width, length]);
              else expect(sides.sort()).toEqual([width, length].sort());
            }
          }
          if ('sheet' in from)
            expect(Math.max(...plan.layout.map(({ sheet }) => sheet)) + 1).toBe(result.sheets);
          else
            expect(plan.strips.reduce((all, { count, height }) => all + count * sixteenths(height), 0)).toBe(
              cloth.bottom,
            );
          const given = plan.strips.flatMap(({ count, gives }) => gives.map((give) => give.count * count));
          expect(given.reduce((all, some) => all + some, 0)).toBe(plan.layout.length);
        },
      ),
      { numRuns: 150 },
    );
  });

  test('passes the independent check; one that does not is not shown', () => {
    const asked: [CutPiece[], Cloth, CuttingPlan][] = [];
    const watch: Planner = (pieces, cloth) => {
      const plan = planCloth(pieces, cloth);
      if (plan.ok) asked.push([pieces, cloth, plan]);
      return plan;
    };
    fc.assert(
      fc.property(list, fc.constantFrom(undefined, 'fat-eighth', 'fat-quarter'), (pieces, sheet) => {
        reckonCutting({ list: written(pieces), sheet }, watch);
      }),
      { numRuns: 60 },
    );
    expect(asked.length).toBeGreaterThan(20);
    for (const [pieces, cloth, plan] of asked) expect(checkPlan(pieces, cloth, plan)).toEqual([]);

    const spoil: Planner = (pieces, cloth) => {
      const plan = planCloth(pieces, cloth) as CuttingPlan;
      const [sheet] = plan.sheets;
      const [strip] = sheet!.strips;
      const moved = strip!.placed.map((spot) => ({ ...spot, x: exact(0) }));
      return {
        ...plan,
        sheets: [
          { ...sheet!, strips: [{ ...strip!, placed: moved }, ...sheet!.strips.slice(1)] },
          ...plan.sheets.slice(1),
        ],
      };
    };
    const { errors } = reckonCutting({ list: 'A | square | 3 | 20' }, spoil);
    expect(errors).toMatchObject([{ input: 'list' }]);
    expect(errors![0]!.message).toContain('did not pass its check');
  });
});

describe('amounts', () => {
  test('buy enough cloth: the layout fits on it after the wash, and the amount is a step of the shop', () => {
    const STEPS: Record<string, Exact[]> = {
      '1/8 yd': [exact(9, 2)],
      thirds: [exact(9, 2), exact(12)],
      '10 cm': [exact(500, 127)],
    };
    fc.assert(
      fc.property(
        list,
        fc.constantFrom(0, 3, '4.5'),
        fc.constantFrom(...Object.keys(STEPS)),
        fc.constantFrom('40', '42 1/2'),
        (pieces, shrinkage, increment, fabricWidth) => {
          const input = {
            list: `${written(pieces)}\n${written(pieces.slice(0, 2), 'B')}`,
            shrinkage,
            increment,
            fabricWidth,
          };
          const result = good(input);
          const kept = exact(100).sub(exact(shrinkage)).div(100);
          expect(result.fabrics.map(({ fabric }) => fabric)).toEqual(['A', 'B']);
          for (const { need, buy, layout, pieces, width } of result.fabrics) {
            expect(exact(width).equals(exact(fabricWidth).mul(kept))).toBe(true);
            const bought = exact(buy.inches);
            expect(bought.gte(exact(need))).toBe(true);
            expect(STEPS[increment]!.some((step) => bought.div(step).d === 1n)).toBe(true);
            for (const { x, y, width: w, height: h } of layout) {
              expect(exact(x).add(exact(w)).lte(exact(width))).toBe(true);
              expect(exact(y).add(exact(h)).lte(bought.mul(kept))).toBe(true);
            }
            const area = sum(pieces.map((cut) => exact(cut.width).mul(exact(cut.length)).mul(cut.count)));
            expect(area.lte(exact(width).mul(bought).mul(kept))).toBe(true);
          }
          expect(
            sum(result.fabrics.map(({ buy }) => exact(buy.inches))).equals(exact(result.buy.inches)),
          ).toBe(true);
          expect(exact(result.fabric).add(exact(result.spare)).equals(exact(result.buy.inches))).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('of sheets are whole sheets; once they are washed, smaller ones', () => {
    // geometry: 5 × 5 squares of 3 1/2 fit 18 × 20 in (5 × 3 1/2 = 17 1/2); less 3 % they are 17.46 × 19.4, and 4 × 5 fit
    expect(good({ list: 'A | square | 3 1/2 | 25', sheet: 'fat-quarter' })).toMatchObject({
      sheets: 1,
      buy: { amount: '1', unit: 'sheet', text: '1 fat quarter' },
    });
    expect(good({ list: 'A | square | 3 1/2 | 20', sheet: 'fat-quarter', shrinkage: 3 }).sheets).toBe(1);
    expect(good({ list: 'A | square | 3 1/2 | 25', sheet: 'fat-quarter', shrinkage: 3 }).sheets).toBe(2);
  });

  test('are planned for the shop’s step as it is once it is washed', () => {
    const steps: (string | undefined)[] = [];
    const watch: Planner = (pieces, cloth) => {
      steps.push(cloth.step?.toFraction(true));
      return planCloth(pieces, cloth);
    };
    const list = 'A | square | 4 | 10';
    good({ list }, watch);
    // 4 1/2 in less 4 %
    good({ list, shrinkage: 4 }, watch);
    // of two steps no one is the next
    good({ list, increment: 'thirds' }, watch);
    expect(steps).toEqual(['4 1/2', '4 8/25', undefined]);
  });

  test('of sheets may be named or measured', () => {
    // geometry: 18 × 20 in hold 4 × 5 squares of 4 in; 9 × 20 in hold 2 × 5
    for (const [sheet, sheets, name] of [
      ['fat-quarter', 1, '1 fat quarter'],
      ['Fat Quarter', 1, '1 fat quarter'],
      ['fat-eighth', 2, '2 fat eighths'],
      ['18 x 20', 1, '1 sheet, 18 × 20 in'],
      ['20 x 9', 2, '2 sheets, 20 × 9 in'],
      ['square-10', 5, '5 squares, 10 × 10 in'],
    ] as const)
      expect(good({ list: 'A | square | 4 | 20', sheet }), sheet).toMatchObject({
        sheets,
        fabric: '0',
        buy: { text: name },
      });
    // 16 in a strip
    expect(good({ list: 'A | square | 2 1/2 | 17', sheet: 'strip-2.5' }).buy.text).toBe(
      '2 strips, 40 × 2 1/2 in',
    );
    for (const sheet of ['flat quarter', 'constructor', '__proto__', '18 x', '0 x 20', '-1 x 4'])
      expect(reckonCutting({ list: 'A | square | 4 | 20', sheet }).errors, sheet).toMatchObject([
        { input: 'sheet' },
      ]);
    for (const sheet of ['0 x 20', '-1 x 4'])
      expect(reckonCutting({ list: 'A | square | 4 | 20', sheet }).errors![0]!.message, sheet).toContain(
        'more than 0',
      );
  });

  test('cost what the price says: of a yard, a metre or a sheet', () => {
    // 10 × 9 squares of 4 in: nine strips of 4 in are 36 in, 1 yd
    const yard = { list: 'A | square | 4 | 90', price: '12.50' };
    expect(good(yard).cost).toMatchObject({ amount: '12.50' });
    expect(good({ ...yard, increment: '9 in' }).cost).toMatchObject({ amount: '12.50' });
    expect(good({ ...yard, list: `${yard.list}\nB | square | 4 | 90` })).toMatchObject({
      cost: { amount: '25.00' },
      fabrics: [{ cost: '12.50' }, { cost: '12.50' }],
    });
    // 36 in are 0.9144 m: 1 m on steps of 10 cm
    expect(good({ ...yard, increment: '10 cm' }).cost).toMatchObject({ amount: '12.50' });
    expect(
      good({ list: 'A | square | 4 | 20\nB | square | 4 | 40', sheet: 'fat-quarter', price: '3.20' }),
    ).toMatchObject({ cost: { amount: '9.60' }, fabrics: [{ cost: '3.20' }, { cost: '6.40' }] });
  });

  test('a fabric narrower than the others is planned on its own width', () => {
    const result = good({ list: 'A | square | 4 | 10\nB | square | 4 | 10', widths: { B: '36 in' } });
    // 40 ÷ 4 = 10 in one strip; 36 ÷ 4 = 9, so two
    expect(result.fabrics.map(({ width, need }) => [width, need])).toEqual([
      ['40', '4'],
      ['36', '8'],
    ]);
    const { errors } = reckonCutting({ list: 'A | square | 4 | 10', widths: { A: 'wide' } });
    expect(errors).toMatchObject([{ input: 'fabricWidth' }]);
    expect(errors![0]!.message).toMatch(/^The width of fabric A: “wide” is not a length\./);
  });

  test('a fabric without a width of its own is as wide as is usual', () => {
    const list = ['A', 'C', ''].map((fabric) => `${fabric} | square | 4 | 26`).join('\n');
    const input = { list, fabricWidth: '106', widths: { A: '106' } };
    const widths = (more: CuttingInput): string[] =>
      good({ ...input, ...more }).fabrics.map(({ width }) => width);
    expect(widths({ usualWidth: '40' })).toEqual(['106', '40', '106']);
    expect(widths({})).toEqual(['106', '106', '106']);
    expect(reckonCutting({ ...input, usualWidth: 'wide' }).errors).toMatchObject([{ input: 'fabricWidth' }]);
  });

  test('a measured width after the wash counts for a fabric with its own width too, if it is narrower', () => {
    const widthOf = (measured: string, own: string): string =>
      good({
        list: 'A | square | 4 | 26',
        shrinkage: 3,
        measured: { washedWidth: measured },
        widths: { A: own },
      }).fabrics[0]!.width;
    expect(widthOf('35', '40')).toBe('35');
    // 36 less 3 %
    expect(widthOf('38', '36')).toBe('34 23/25');
    expect(widthOf('', '36')).toBe('34 23/25');
  });

  test('warn, for each fabric, where hardly any cloth is to spare', () => {
    // one strip of 4 in from 4 1/2 in (1/8 yd): 1/2 in to spare; one of 3 in: 1 1/2 in
    const notes = notesOf({ list: 'A | square | 4 | 10\nB | square | 3 | 10' });
    expect(notes).toMatch(/Fabric A: .*1\/2 in to spare.*next step up is 1\/4 yd/);
    expect(notes).not.toMatch(/Fabric B: .*to spare/);
  });
});

describe('one of several parts whose cloth is added up', () => {
  // the sashing and cornerstones of a top of 4 × 6 blocks of 8 in: cut in any order they take 1/2 in less than in strips
  const list = 'A | rail | 8 1/2 x 2 1/2 | 58\nA | stone | 2 1/2 | 35';

  test('takes the least it can be cut from, though no less is bought for it alone', () => {
    const [alone, shared] = [good({ list }), good({ list, shared: true })];
    expect(alone.buy.text).toBe(shared.buy.text);
    expect(exact(shared.fabric).lt(exact(alone.fabric))).toBe(true);
    // geometry: no less than the pieces' own area, 58 × 8 1/2 × 2 1/2 and 35 × 2 1/2 × 2 1/2
    expect(exact(shared.fabric).mul(40).gte(exact(1451.25))).toBe(true);
  });
});

describe('a one-way print', () => {
  test('is never turned', () => {
    // geometry: a piece 4 wide and 50 long has to run along the cloth, ten side by side
    const long = { list: 'A | stripe | 4 x 50 | 10' };
    expect(good({ ...long, oneWay: true })).toMatchObject({ fabric: '50' });
    // 50 wide lies across no cloth of 40 in
    const across = { list: 'A | stripe | 50 x 4 | 10' };
    expect(good(across)).toMatchObject({ fabric: '50' });
    const { errors } = reckonCutting({ ...across, oneWay: true });
    expect(errors).toMatchObject([{ input: 'list' }]);
    expect(errors![0]!.message).toMatch(/^stripe, 50 × 4 in: .*does not fit/);
  });

  test('lies on a sheet as it is written, width first', () => {
    // a strip 36 in tall fits a remnant 12 in wide and 40 in long only upright
    const list = 'A | strip | 10 x 36 | 1';
    expect(good({ list, sheet: '12 x 40', oneWay: true }).fabrics[0]).toMatchObject({
      sheets: 1,
      width: '12',
    });
    expect(reckonCutting({ list, sheet: '40 x 12', oneWay: true }).errors).toMatchObject([{ input: 'list' }]);
    expect(good({ list, sheet: '12 x 40' }).fabrics[0]).toMatchObject({ sheets: 1, width: '40' });
    expect(good({ list: 'A | strip | 19 x 17 | 1', sheet: 'fat-quarter', oneWay: true }).sheets).toBe(1);
  });
});

describe('selvages', () => {
  test('are warned of where a sheet is as wide as cloth is sold', () => {
    const list = 'A | square | 4 | 2';
    // a fat quarter is nominally 18 × 22 in: “Number of squares from a fat quarter”, Pieceful Living, 13 August 2011
    for (const sheet of ['18 x 22', '22 x 18', '36 x 44'])
      expect(notesOf({ list, sheet }), sheet).toMatch(/Cloth sold as (22|44) in wide is usually (20|40) in/);
    for (const sheet of ['18 x 20', 'fat-quarter', '12 x 40', 'square-10'])
      expect(notesOf({ list, sheet }), sheet).not.toContain('selvages');
  });
});

describe('what a page knows of a list', () => {
  test('is told with it', () => {
    expect(notesOf({ list: 'A | square | 4 | 2', caution: 'Mind the print.' })).toContain('Mind the print.');
  });
});

describe('folding', () => {
  const folds = (input: CuttingInput): string => notesOf({ list: 'A | square | 3 | 10', ...input });

  test('says how the cloth lies so that a cut across it fits the ruler and the mat', () => {
    // geometry: 40 in folded once are 20, within 24; 108 ÷ 4 = 27
    expect(folds({})).toContain('folded once');
    expect(folds({ fabricWidth: '22' })).toContain('without a fold');
    expect(folds({ ruler: '12 in' })).toContain('folded twice, in four layers');
    expect(folds({ ruler: '40 in' })).toContain('folded once');
    expect(folds({ ruler: '40 in', mat: '24 x 48' })).toContain('without a fold');
    expect(folds({ sheet: 'fat-quarter' })).toContain('without a fold');
    expect(folds({ sheet: 'fat-quarter', ruler: '12 in' })).toContain('folded once');
  });

  test('warns of a cut that fits neither, and then tells nobody to make it', () => {
    const wide = folds({ fabricWidth: '108' });
    expect(wide).toContain('A cut across 108 in does not fit');
    expect(wide).not.toContain('Cut each strip');
    expect(folds({ mat: '9 x 9' })).toContain('does not fit');
  });

  test('counts for the cuts along the cloth too', () => {
    const tall = (length: string): string =>
      notesOf({ list: `A | panel | 30 x ${length} | 2`, oneWay: true });
    expect(tall('20')).not.toMatch(/taller|tall is longer/);
    expect(tall('40')).toContain('taller than 24 in once');
    expect(tall('60')).toMatch(/60 in tall is longer than the ruler even folded once/);
  });
});

describe('bad and large lists', () => {
  test('a piece larger than the cloth is named', () => {
    const { errors } = reckonCutting({ list: 'A | square | 3 | 10\nB | panel | 45 x 50 | 1' });
    expect(errors).toMatchObject([{ input: 'list' }]);
    expect(errors![0]!.message).toMatch(/^panel, 45 × 50 in: .*does not fit on cloth 40 in wide/);
    expect(reckonCutting({ list: 'A | square | 21 | 1', sheet: 'fat-quarter' }).errors![0]!.message).toMatch(
      /^square, 21 × 21 in: /,
    );
  });

  test('a million of a piece is reckoned, and more is refused in a sentence', () => {
    // 20 to a strip of 2 in: 50,000 strips
    expect(good({ list: 'A | square | 2 | 1000000' }).fabric).toBe('100000');
    const tooMany = reckonCutting({ list: 'A | square | 2 | 1000001' }).errors!;
    expect(tooMany[0]!.message).toContain('more than a million pieces');
    const together = reckonCutting({ list: 'A | a | 2 | 600000\nA | b | 2 | 600000' }).errors!;
    expect(together[0]!.message).toContain('more than a million pieces');
  });

  test('no list at all is asked for, with a line that works', () => {
    const { errors } = reckonCutting();
    expect(errors).toMatchObject([{ input: 'list' }]);
    const example = /like (.+)\.$/.exec(errors![0]!.message)![1];
    expect(good({ list: example }).fabrics).toHaveLength(1);
  });

  test('while a plan is being made there is no amount, and it says how far it is', () => {
    const { errors, buy } = reckonCutting({ list: 'A | square | 3 | 10' }, () => 0.42);
    expect(buy).toBeUndefined();
    expect(errors![0]!.message).toMatch(/being planned: 42 % done\.$/);
  });
});

test('a finished size is cut with the list’s own seam allowance', () => {
  // Geometry: 3 in finished with 3/8 in all round is 3 3/4 in.
  const result = reckonCutting({ list: 'A | square | 3 finished | 4', seam: '3/8' });
  expect(result.errors ? undefined : result.cuts[0]!.text).toBe('3 3/4 × 3 3/4 in');
});

test('a size between two marks is cut on the upper one, and takes that much cloth', () => {
  // 13 strips of 2.4 in are cut at 2 1/2 in on a ruler of eighths: 32 1/2 in.
  const result = reckonCutting({ list: 'A | strip | 2.4 x 40 | 13' });
  expect(result.errors ? undefined : result.fabric).toBe('32 1/2');
});

test('a note says how a cut size between two marks is cut; a finished size and a size on a mark need no note', () => {
  const notes = (list: string): string[] => {
    const result = reckonCutting({ list });
    return result.errors ? ['refused'] : result.notes.filter((note) => note.includes('marks'));
  };
  expect(notes('A | strip | 2.4 x 40 | 13\nA | square | 3.3 | 2\nA | square | 2.4 | 2')).toEqual([
    'These sizes are between two marks of the ruler, so cut them on a mark: 2 2/5 in, cut 2 1/2 in; 3 3/10 in, cut 3 3/8 in.',
  ]);
  expect(notes('A | strip | 2 1/2 x 40 | 13')).toEqual([]);
  expect(notes('A | square | 3.3 finished | 2')).toEqual([]);
});

describe('how the cloth is got adds up', () => {
  const how = (input: CuttingInput): string => {
    const result = reckonCutting(input);
    return result.working.find(({ id }) => /^fabric(-|$)/.test(id))!.how;
  };
  const list = 'A | square | 3 1/2 | 48\nA | half-square triangles | 3 finished | 10';

  test.each<[CuttingInput, string]>([
    // Geometry: 11 squares of 3 1/2 in lie across 40 in, so 48 take four strips and 4 of a fifth; five squares of 3 7/8 in.
    [
      { list },
      'strips across cloth of 40 in: 1 × 3 7/8 + 4 × 3 1/2 = 17 7/8 in; we found no layout with less',
    ],
    [
      { list: 'A | square | 3 1/2 | 48', sheet: 'fat-quarter' },
      'strips 20 in long: 10 × 3 1/2 = 35 ≤ 2 × 18 = 36 in; fewer are not enough',
    ],
  ])('%o', (input, words) => expect(how(input)).toBe(words));

  test('of cloth that is washed', () =>
    expect(how({ list, shrinkage: '3 %' })).toBe(
      'strips across cloth of 38 4/5 in: (1 × 3 7/8 + 4 × 3 1/2) ÷ (1 − 3 %) ≈ 18 7/16 in; no plan for these pieces takes less',
    ));
});
