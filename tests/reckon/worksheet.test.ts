import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../src/planner/check.js';
import { planCloth, type Cloth, type CutPiece, type CuttingPlan } from '../../src/planner/plan.js';
import { exact, sum, type Exact } from '../../src/measure/exact.js';
import type { Planner } from '../../src/ledger/planning.js';
import {
  reckonWorksheet,
  type ShoppingLine,
  type WorksheetInput,
  type WorksheetResult,
} from '../../src/reckon.js';
import { reckonTop } from '../../src/reckon.js';
import type { PartInput } from '../../src/workbook/plain.js';
import { answersOf } from './asked.js';

const good = answersOf(reckonWorksheet);
const part = (title: string, fabric: string, need: string, more: Partial<PartInput> = {}): PartInput => ({
  title,
  fabric,
  need,
  width: '40',
  ...more,
});
const notesOf = (input: WorksheetInput): string => good(input).notes.join('\n');
const bought = (lines: ShoppingLine[]): Exact => sum(lines.map(({ buy }) => exact(buy.inches)));

const STEPS: Record<string, Exact[]> = {
  '1/8 yd': [exact(9, 2)],
  '1/4 yd': [exact(9)],
  thirds: [exact(9, 2), exact(12)],
  '10 cm': [exact(500, 127)],
};
const increment = fc.constantFrom(...Object.keys(STEPS));
const need = fc.integer({ min: 1, max: 8 * 400 }).map((eighths) => `${eighths}/8`);

describe('the shopping list', () => {
  test('adds the parts of one fabric before it rounds, and rounds once', () => {
    // 23 + 12 1/2 = 35 1/2 in, 1 yd; apart they would be 3/4 yd and 3/8 yd
    const { fabrics } = good({ parts: [part('Border 1', 'A', '23'), part('Binding', 'A', '12 1/2')] });
    expect(fabrics).toMatchObject([
      {
        letter: 'A',
        need: '35 1/2',
        spare: '1/2',
        buy: { text: '1 yd' },
        parts: [
          { title: 'Border 1', need: '23' },
          { title: 'Binding', need: '12 1/2' },
        ],
      },
    ]);
  });

  test('is never short, and is on a step of the shop', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom('A', 'B', 'C', ''), need), { minLength: 1, maxLength: 8 }),
        increment,
        (parts, increment) => {
          const result = good({
            parts: parts.map(([fabric, need]) => part('Part', fabric, need)),
            increment,
          });
          for (const letter of ['A', 'B', 'C']) {
            const wanted = sum(parts.filter(([fabric]) => fabric === letter).map(([, need]) => exact(need)));
            const [line] = result.fabrics.filter((line) => line.letter === letter);
            expect(exact(line?.need ?? 0).equals(wanted)).toBe(true);
            if (!line) continue;
            const amount = exact(line.buy.inches);
            expect(amount.gte(wanted)).toBe(true);
            expect(amount.sub(wanted).equals(exact(line.spare))).toBe(true);
            const lengths = (line.lengths ?? [line]).map(({ buy }) => exact(buy.inches));
            expect(sum(lengths).equals(amount)).toBe(true);
            for (const length of lengths)
              expect(STEPS[increment]!.some((step) => length.div(step).d === 1n)).toBe(true);
          }
          const apart = parts.filter(([fabric]) => !fabric);
          expect(result.fabrics.filter(({ letter }) => !letter)).toHaveLength(apart.length);
        },
      ),
    );
  });

  test('together never takes more than each part by itself', () => {
    fc.assert(
      fc.property(fc.array(need, { minLength: 2, maxLength: 6 }), increment, (needs, increment) => {
        const together = good({ parts: needs.map((need) => part('Part', 'A', need)), increment });
        const apart = good({ parts: needs.map((need, at) => part('Part', `F${at}`, need)), increment });
        const [one, all] = [bought(together.fabrics), bought(apart.fabrics)];
        expect(one.lte(all)).toBe(true);
        expect(exact(together.fabric).equals(exact(apart.fabric))).toBe(true);
      }),
      { examples: [[['81/8', '68/8'], 'thirds']] },
    );
  });

  describe('where a shop cuts thirds and eighths', () => {
    const thirds = (needs: string[], more: WorksheetInput = {}): WorksheetResult =>
      good({
        parts: needs.map((need, at) => part(`Border ${at + 1}`, 'A', need)),
        increment: 'thirds',
        ...more,
      });

    test('has two lengths if they are less than one, and says what each is for', () => {
      // 10 1/8 in are 1/3 yd and 8 1/2 in 1/4 yd, 21 in; 18 5/8 in one length are 5/8 yd, 22 1/2 in
      const { fabrics, notes, working } = thirds(['10 1/8', '8 1/2'], {
        fabrics: [{ letter: 'A', price: '12' }],
      });
      expect(fabrics).toMatchObject([
        {
          need: '18 5/8',
          spare: '2 3/8',
          buy: { inches: '21', amount: '7/12', text: '1/3 yd and 1/4 yd' },
          text: '1/3 yd and 1/4 yd',
          cost: { amount: '7.00' },
          lengths: [
            { parts: ['Border 1'], need: '10 1/8', buy: { text: '1/3 yd' } },
            { parts: ['Border 2'], need: '8 1/2', buy: { text: '1/4 yd' } },
          ],
        },
      ]);
      expect(notes.join()).toContain(
        'Fabric A: buy two lengths, 1/3 yd for border 1, and 1/4 yd for border 2. One length for both would be 5/8 yd.',
      );
      expect(working.find(({ id }) => id === 'buy-A')).toMatchObject({
        value: '1/3 yd and 1/4 yd',
        how: '10 1/8 (border 1) and 8 1/2 (border 2), each rounded up to the next eighth or third of a yard; 2 3/8 in to spare',
      });
      expect(thirds(['10 1/8', '8 1/4']).fabrics[0]).toHaveProperty('lengths');
      // 9 + 9 in are 1/2 yd in one length too
      expect(thirds(['9', '9']).fabrics[0]).not.toHaveProperty('lengths');
    });

    test('has the least that any lengths come to', () => {
      const upTo = (need: Exact): Exact =>
        STEPS['thirds']!.map((step) => step.mul(need.div(step).ceil())).sort((a, b) => a.compare(b))[0]!;
      /** The least of all ways to put the needs in lengths. */
      const leastOf = ([first, ...others]: Exact[], lengths: Exact[] = []): Exact =>
        first
          ? [...lengths, exact(0)]
              .map((length, at) => leastOf(others, lengths.toSpliced(at, 1, length.add(first))))
              .sort((a, b) => a.compare(b))[0]!
          : sum(lengths.map(upTo));
      fc.assert(
        fc.property(fc.array(need, { minLength: 2, maxLength: 5 }), (needs) => {
          const [line] = thirds(needs).fabrics as [ShoppingLine];
          expect(exact(line.buy.inches).equals(leastOf(needs.map((need) => exact(need))))).toBe(true);
          const {
            lengths = [{ parts: line.parts.map(({ title }) => title), need: line.need, buy: line.buy }],
          } = line;
          expect(lengths.flatMap(({ parts }) => parts).sort()).toEqual(
            line.parts.map(({ title }) => title).sort(),
          );
          for (const { parts, need, buy } of lengths) {
            const wanted = line.parts.filter(({ title }) => parts.includes(title));
            expect(exact(need).equals(sum(wanted.map(({ need }) => exact(need))))).toBe(true);
            expect(upTo(exact(need)).equals(exact(buy.inches))).toBe(true);
          }
        }),
      );
    });

    test('never takes more together than apart, however many parts there are', () => {
      // 1/4 or 1/3 yd each, so that next to nothing is left over apart
      const whole = fc.constantFrom('9', '8 15/16', '12', '11 15/16');
      fc.assert(
        fc.property(fc.array(whole, { minLength: 9, maxLength: 30 }), (needs) => {
          const apart = sum(needs.map((need) => bought(thirds([need]).fabrics)));
          expect(bought(thirds(needs).fabrics).lte(apart)).toBe(true);
        }),
        { numRuns: 30 },
      );
    });

    test('warns of a length with little to spare', () => {
      // 1/3 yd is 12 in
      expect(thirds(['11 3/4', '8 1/2']).notes.join('\n')).toMatch(
        /Fabric A, border 1: Only 1\/4 in to spare.*next step up is 3\/8 yd/,
      );
    });

    test('has both lengths of a kit from one bolt, or each from bolts of its own', () => {
      const how = (bolt: string): [string, string] => {
        const { value, how } = thirds(['10 1/8', '8 1/2'], { kits: 30, bolt }).working.find(
          ({ id }) => id === 'bolts-A',
        )!;
        return [value, how];
      };
      // 540 ÷ 21: 25 kits from a bolt of 15 yd
      expect(how('15 yd')).toEqual(['2', '25 × 1/3 yd and 1/4 yd from each bolt of 15 yd']);
      // 18 in hold one of 12 in, or two of 9 in: 30 + 15
      expect(how('1/2 yd')).toEqual(['45', '1 × 1/3 yd, or 2 × 1/4 yd, from each bolt of 1/2 yd']);
      // 27 in hold one of each kit, which takes 30 bolts; or two of 12 in, or three of 9 in: 15 + 10
      expect(how('3/4 yd')).toEqual(['25', '2 × 1/3 yd, or 3 × 1/4 yd, from each bolt of 3/4 yd']);
      expect(thirds(['10 1/8', '8 1/2'], { kits: 30, bolt: '1/4 yd' }).notes.join()).toContain(
        'Fabric A: a kit’s 1/3 yd is longer than a bolt of 1/4 yd. Write a longer bolt, like 1/3 yd.',
      );
    });
  });

  describe('of one letter in two widths', () => {
    const parts = [part('Backing', 'A', '135', { width: '106' }), part('Binding', 'A', '20')];

    test('has a line for each, with its amount, cost and bolts, and says so', () => {
      const { fabrics, notes, summary } = good({
        parts,
        fabrics: [{ letter: 'A', name: 'Harbour', price: '10' }],
        kits: 4,
      });
      expect(fabrics).toMatchObject([
        {
          letter: 'A',
          width: '106',
          need: '135',
          text: '3 3/4 yd, 106 in wide',
          cost: { amount: '37.50' },
          bolts: 1,
        },
        {
          letter: 'A',
          width: '40',
          need: '20',
          text: '5/8 yd, 40 in wide',
          cost: { amount: '6.25' },
          bolts: 1,
        },
      ]);
      expect(notes.join()).toContain(
        'Fabric A is cut from cloth of 2 widths, so each width has a line of its own. To buy one width, write it on each of these parts, like fabric-width="40 in".',
      );
      expect(summary).toBe('1 fabric in whole bolts. Whole bolts can hold more than the kits take.');
    });

    test('has rows of their own in the working', () => {
      const ids = good({ parts }).working.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
    });

    test('takes a part that does not say its width with the first', () => {
      const top: PartInput = { title: 'Top', fabric: 'A', need: '5' };
      expect(good({ parts: [...parts, top] }).fabrics).toMatchObject([
        { width: '106', need: '140' },
        { width: '40', need: '20' },
      ]);
    });

    test('has one line where only the wash makes them differ', () => {
      const { fabrics } = good({
        parts: [
          part('Border 1', 'A', '20', { width: '38 4/5', sold: '40' }),
          part('Binding', 'A', '20', { width: '39', sold: '40' }),
        ],
      });
      expect(fabrics).toMatchObject([{ need: '40', text: '1 1/8 yd', width: '40' }]);
    });

    test('names a width that is not the usual one, the worksheet’s or 40 in', () => {
      const texts = (input: WorksheetInput): string[] => good(input).fabrics.map(({ text }) => text);
      expect(texts({ parts: [parts[0]!] })).toEqual(['3 3/4 yd, 106 in wide']);
      expect(texts({ parts: [parts[0]!], fabricWidth: '106' })).toEqual(['3 3/4 yd']);
      expect(texts({ parts: [parts[1]!], fabricWidth: '42' })).toEqual(['5/8 yd, 40 in wide']);
      expect(texts({ parts: [{ title: 'Top', fabric: 'A', need: '20' }] })).toEqual(['5/8 yd']);
    });
  });

  test('warns of a small spare, and of which fabric', () => {
    expect(notesOf({ parts: [part('Binding', 'A', '22'), part('Backing', 'B', '30')] })).toMatch(
      /Fabric A: .*1\/2 in to spare.*next step up is 3\/4 yd/,
    );
    expect(notesOf({ parts: [part('Backing', 'B', '30')] })).not.toContain('to spare');
    // Less than 1 in is small (common practice, no source): 5/8 yd are 22 1/2 in.
    expect(notesOf({ parts: [part('Backing', 'B', '21 5/8')] })).toContain('Only 7/8 in to spare');
    expect(notesOf({ parts: [part('Backing', 'B', '21 1/2')] })).not.toContain('to spare');
  });

  test('gives a part that names no fabric a line of its own', () => {
    const parts = [part('Backing', '', '135'), part('Binding', '', '20')];
    const { fabrics, notes } = good({ parts });
    expect(fabrics.map(({ letter, need, buy }) => [letter, need, buy.text])).toEqual([
      ['', '135', '3 3/4 yd'],
      ['', '20', '5/8 yd'],
    ]);
    expect(notes.join()).not.toContain('names no fabric');
    expect(notesOf({ parts, fabrics: [{ letter: 'A' }] })).toMatch(
      /Backing names no fabric.*Give it fabric A/,
    );
  });

  test('has a line for a letter that is not declared, and says so', () => {
    const input = {
      fabrics: [{ letter: 'A', name: 'Harbour' }],
      parts: [part('Binding', 'A', '20'), part('Backing', 'Q', '135')],
    };
    expect(good(input).fabrics.map(({ letter, name }) => [letter, name])).toEqual([
      ['A', 'Harbour'],
      ['Q', ''],
    ]);
    expect(notesOf(input)).toMatch(
      /Backing uses fabric Q, but the worksheet does not list it\. Add fabric Q to the worksheet\./,
    );
    expect(notesOf({ parts: input.parts })).not.toContain('declared');
  });

  test('says that no part uses a declared fabric, unless something is bought of it or a part is unfinished', () => {
    const fabrics = [{ letter: 'A' }, { letter: 'B' }];
    const parts = [part('Binding', 'B', '20')];
    expect(notesOf({ fabrics, parts })).toContain('No part uses fabric A.');
    expect(
      notesOf({ fabrics, parts, items: [{ title: 'Cutting plan', fabric: 'A', text: '5 fat quarters' }] }),
    ).not.toContain('Fabric A');
    expect(notesOf({ fabrics, parts, named: ['A', 'B'] })).toContain(
      'No part uses fabric A. The part that names it takes no cloth from it.',
    );
    const sentence = 'Borders is not on the list yet: something in it is wrong.';
    const unfinished = notesOf({ fabrics, parts, unfinished: [sentence] });
    expect(unfinished).not.toContain('Fabric A');
    expect(unfinished).toContain(sentence);
  });

  test('has a part’s title as it is written, whatever signs are in it', () => {
    for (const title of ['{x}', '{bolt unit}', 'a =, b =', '{{=', 'a = b']) {
      const { working } = good({ parts: [part(title, 'A', '3'), part('Binding', 'A', '3')] });
      expect(working.find(({ id }) => id === 'need-A')!.how).toBe(`3 (${title}) + 3 (binding) = 6 in`);
      const [alone] = good({ parts: [part(title, 'A', '3')] }).working.slice(-2);
      expect(alone!.how).toBe(title);
    }
  });

  test('uses the first of two fabrics with one letter, and says so; it also says that a fabric has no letter', () => {
    const input = {
      fabrics: [
        { letter: 'A', name: 'First', price: '10' },
        { letter: ' A ', name: 'Second', price: '20' },
        { letter: ' ', name: 'Third' },
      ],
      parts: [part('Binding', 'A', '36')],
    };
    expect(good(input).fabrics).toMatchObject([{ name: 'First', cost: { amount: '10.00' } }]);
    expect(notesOf(input)).toContain(
      'Two fabrics have the letter A; the first is used. Give the other a letter of its own.',
    );
    expect(notesOf(input)).toContain('A fabric has no letter. Write letter="A".');
  });

  test('says that the width of a fabric cannot be read, even if no part uses it', () => {
    const width = (fabricWidth: unknown): string =>
      notesOf({ fabrics: [{ letter: 'A', fabricWidth }], parts: [part('Binding', 'A', '20')] });
    expect(width('wide')).toContain('The width of fabric A: “wide” is not a length. Write it like');
    expect(width('5000')).toMatch(
      /The width of fabric A: .* can be at most 1000 in here\. Is the unit right\?/,
    );
    expect(width('-40')).toMatch(/The width of fabric A: .* cannot be less than 0\./);
    for (const fine of ['42', '106 cm', '', undefined]) expect(width(fine)).not.toContain('The width');
  });

  test('may be empty', () => {
    expect(good({})).toMatchObject({ fabrics: [], items: [], fabric: '0' });
    expect(good({}).summary).toContain('Nothing on the list yet: put calculators inside');
    expect(good({ unfinished: ['Borders is not on the list yet.'] }).summary).toBe(
      'Nothing on the list yet.',
    );
    expect(good(null)).toMatchObject({ fabrics: [] });
  });
});

describe('parts planned together', () => {
  const size = fc.integer({ min: 8, max: 160 }).map((eighths) => `${eighths}/8`);
  const pieces = fc.array(
    fc.record({ width: size, length: size, count: fc.integer({ min: 1, max: 6 }), turn: fc.boolean() }),
    { minLength: 1, maxLength: 3 },
  );
  const share = fc.constantFrom('1', '100/97');
  const toCut = (list: { width: string; length: string; count: number; turn: boolean }[]): CutPiece[] =>
    list.map(({ width, length, count, turn }) => ({
      width: exact(width),
      height: exact(length),
      count,
      turn,
    }));
  /** Each part’s own need: what a plan of it alone takes, before the wash. */
  const alone = (cut: CutPiece[], cloth: Cloth, washed: string): string =>
    (planCloth(cut, cloth) as CuttingPlan).length.mul(exact(washed)).toFraction(true);

  test('never take more than apart, and the layout that is shown is one that can be cut', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(pieces, share, fc.constantFrom('36', '40')), { minLength: 2, maxLength: 3 }),
        increment,
        (parts, increment) => {
          const input = parts.map(([list, washed, width], at) =>
            part(`Part ${at}`, 'A', alone(toCut(list), { width: exact(width) }, washed), {
              width,
              sold: '42',
              washed,
              pieces: list,
            }),
          );
          const asked: [CutPiece[], Cloth, CuttingPlan][] = [];
          const watch: Planner = (pieces, cloth) => {
            const plan = planCloth(pieces, cloth);
            if (plan.ok) asked.push([pieces, cloth, plan]);
            return plan;
          };
          const [line] = good({ parts: input, increment }, watch).fabrics as [ShoppingLine];
          const apart = sum(input.map(({ need }) => exact(need)));
          expect(exact(line.need).add(exact(line.saved)).equals(apart)).toBe(true);
          expect(exact(line.saved).gte(0)).toBe(true);
          expect(exact(line.buy.inches).gte(exact(line.need))).toBe(true);
          expect(!!line.together).toBe(exact(line.saved).gt(0));
          const [added] = good({ parts: input, increment }, () => 0).fabrics as [ShoppingLine];
          expect(exact(line.buy.inches).lte(exact(added.buy.inches))).toBe(true);
          if (!line.together) return;
          const [[cut, cloth, plan]] = asked as [(typeof asked)[0]];
          expect(checkPlan(cut, cloth, plan)).toEqual([]);
          // every piece of every part, on cloth as wide as the narrowest, on what is bought once the part that shrinks most is washed
          const all = parts.flatMap(([list]) => list);
          const most = parts.reduce(
            (most, [, washed]) => (exact(washed).gt(most) ? exact(washed) : most),
            exact(1),
          );
          expect(line.together.layout).toHaveLength(all.reduce((count, one) => count + one.count, 0));
          const narrowest = Math.min(...parts.map(([, , width]) => Number(width)));
          for (const { x, y, width, height } of line.together.layout) {
            expect(exact(x).add(exact(width)).lte(narrowest)).toBe(true);
            expect(exact(y).add(exact(height)).mul(most).lte(exact(line.buy.inches))).toBe(true);
          }
          const names = line.together.layout.map(({ piece }) => piece);
          for (const [at, [list]] of parts.entries())
            expect(names.filter((name) => name === `Part ${at}`)).toHaveLength(
              list.reduce((count, one) => count + one.count, 0),
            );
        },
      ),
      { numRuns: 100 },
    );
  });

  // three strips of 30 × 3 leave 10 × 3 each, where three squares of 3 fit: 9 in, where 9 + 3 would be 13 1/2 in of cloth
  const strips = part('Border 1', 'A', '9', {
    pieces: [{ width: '30', length: '3', count: 3, turn: false }],
  });
  const squares = part('Cornerstones', 'A', '3', {
    pieces: [{ width: '3', length: '3', count: 3, turn: true }],
  });

  test.each([
    [false, '30'],
    [true, '12'],
  ])('are turned only where they may be: %s, %s in', (turn, need) => {
    // Geometry: two pieces 6 in wide and 30 in long lie side by side on 40 in; turned, below each other.
    const pieces = [{ width: '6', length: '30', count: 1, turn }];
    const parts = ['Borders', 'Binding'].map((title) => part(title, 'A', '30', { pieces }));
    expect(good({ parts }, planCloth).fabrics).toMatchObject([{ need }]);
  });

  test('save cloth where one leaves room for another', () => {
    const parts = [strips, squares];
    expect(good({ parts }).fabrics).toMatchObject([
      { need: '9', saved: '3', buy: { text: '1/4 yd' }, together: { fabric: 'A', width: '40', height: '9' } },
    ]);
    const howOf = (increment: string): string =>
      good({ parts, increment }).working.find(({ id }) => id === 'need-A')!.how;
    const sums = '9 (border 1) + 3 (cornerstones) = 12 in; planned together 9 in';
    expect(howOf('1/8 yd')).toBe(sums);
    // 9 and 12 in are both 1/2 yd on steps of that
    expect(howOf('1/2 yd')).toBe(`${sums}, though what you buy is enough for each on its own`);
  });

  test('are planned without a page too', () => {
    // geometry: two pieces of 20 × 10 in lie side by side on cloth of 40 in
    const parts = ['Border 1', 'Border 2'].map((title) =>
      part(title, 'A', '10', { pieces: [{ width: '20', length: '10', count: 1, turn: true }] }),
    );
    expect(good({ parts }).fabrics).toMatchObject([{ need: '10', saved: '10', buy: { text: '3/8 yd' } }]);
  });

  test('take no more than the top’s own plan of its sashing and cornerstones from one cloth', () => {
    for (const [across, down, sashing] of [
      [3, 4, '2'],
      [4, 6, '2'],
      [5, 4, '1 1/2'],
    ] as const) {
      const top = answersOf(reckonTop)({ block: 12, across, down, sashing, cornerstones: true, frame: true });
      const parts = top.parts.map(({ part: title, fabric, cuts }) =>
        part(title, 'A', fabric, { pieces: cuts.map((cut) => ({ ...cut, turn: true })) }),
      );
      const [line] = good({ parts }).fabrics as [ShoppingLine];
      expect(exact(line.need).lte(exact(top.fabric)), `${across} × ${down}`).toBe(true);
    }
  });

  test('take the least cloth for one part, also if another part is added that is cut on its own', () => {
    // geometry: 30 + 10 in fill the cloth's 40, so both lie in one strip of 10 in; in a strip each they take 10 + 6
    const list = part('Cutting plan', 'A', '16', {
      pieces: [
        { width: '30', length: '10', count: 1, turn: false },
        { width: '10', length: '6', count: 1, turn: false },
      ],
    });
    const backing = part('Backing', 'A', '26', { pieces: [] });
    // 10 + 26 in are 1 yd; 16 + 26 in would be 1 1/4 yd
    expect(good({ parts: [list, backing] }).fabrics).toMatchObject([
      { need: '36', saved: '6', buy: { text: '1 yd' }, together: { height: '10' } },
    ]);
    // alone it is cut as it says itself
    expect(good({ parts: [list] }).fabrics).toMatchObject([{ need: '16', saved: '0' }]);
  });

  test('never take less cloth than their layout, for any shrinkage', () => {
    const parts = [1, 2].map((name) =>
      part(`Part ${name}`, 'A', '20', {
        washed: '0',
        pieces: [{ width: '40', length: '5', count: 1, turn: false }],
      }),
    );
    // geometry: two pieces as wide as the cloth, 5 in each
    expect(good({ parts }, planCloth).fabrics).toMatchObject([{ need: '10' }]);
  });

  test('leave out a part that is cut on its own', () => {
    const backing = part('Backing', 'A', '135', { pieces: [] });
    const binding = part('Binding', 'A', '20', {
      pieces: [{ width: '2 1/2', length: '40', count: 8, turn: true }],
    });
    expect(good({ parts: [backing, binding] }, planCloth).fabrics).toMatchObject([
      { need: '155', saved: '0' },
    ]);
    // and add it to what the others save: 135 + 9, as in the test before
    expect(good({ parts: [backing, strips, squares] }, planCloth).fabrics).toMatchObject([
      { need: '144', saved: '3' },
    ]);
  });

  test('are added where their layout cannot be cut as it says', () => {
    const spoil: Planner = (pieces, cloth) => {
      const plan = planCloth(pieces, cloth) as CuttingPlan;
      return { ...plan, length: plan.length.div(2) };
    };
    expect(good({ parts: [strips, squares] }).fabrics).toMatchObject([{ need: '9' }]);
    expect(good({ parts: [strips, squares] }, spoil).fabrics).toMatchObject([{ need: '12', saved: '0' }]);
  });

  test('are added until their plan is ready, and it says so', () => {
    const parts = ['Binding', 'Border 1'].map((title) =>
      part(title, 'A', '20', { pieces: [{ width: '2', length: '2', count: 9, turn: true }] }),
    );
    const { fabrics, notes } = good({ parts }, () => 0.5);
    expect(fabrics).toMatchObject([{ need: '40', saved: '0' }]);
    expect(notes.join()).toContain('being planned');
  });

  test('are added where they cannot lie together', () => {
    const parts = ['1', '2'].map((name) =>
      part(name, 'A', '50', { pieces: [{ width: '50', length: '50', count: 1, turn: true }] }),
    );
    expect(good({ parts }, planCloth).fabrics).toMatchObject([{ need: '100', saved: '0' }]);
  });
});

describe('prices', () => {
  const parts = [part('Binding', 'A', '20'), part('Backing', 'B', '135')];
  const fabrics = [
    { letter: 'A', price: '13.50' },
    { letter: 'B', price: '19.80' },
  ];

  test('are of a yard, or of a metre where the shop’s step is metric', () => {
    // 5/8 × 13.50 = 8.4375 and 3 3/4 × 19.80 = 74.25
    expect(good({ parts, fabrics })).toMatchObject({
      fabrics: [{ price: { amount: '13.50' }, cost: { amount: '8.44' } }, { cost: { amount: '74.25' } }],
      total: { amount: '82.69' },
    });
    // 20 in are 0.508 m, 0.6 m on the step; 135 in are 3.429 m, 3.5 m
    expect(good({ parts, fabrics, increment: '10 cm' })).toMatchObject({
      fabrics: [{ cost: { amount: '8.10' } }, { cost: { amount: '69.30' } }],
    });
    // a part's price may be of a metre: 36 in are 1 yd, 0.9144 m exactly (international yard and pound agreement, 1959)
    expect(
      good({ parts: [part('Backing', 'C', '36', { price: '100', per: 'm' })], currency: 'EUR' }).fabrics,
    ).toMatchObject([{ buy: { text: '1 yd' }, cost: { amount: '91.44' } }]);
    // a step in inches does not make the price one of an inch: 27 in are 3/4 yd
    expect(good({ parts: [parts[0]!], fabrics, increment: '9 in' })).toMatchObject({
      fabrics: [{ cost: { amount: '10.13' } }],
    });
  });

  test('are written as the language and the currency have it', () => {
    for (const [lang, currency] of [
      ['en', 'USD'],
      ['de', 'EUR'],
      ['ja', 'JPY'],
      ['fr-CH', 'CHF'],
      ['ar-EG', 'EGP'],
    ] as const) {
      const result = good({ parts, fabrics, lang, currency });
      const write = (amount: number): string =>
        new Intl.NumberFormat(lang, { style: 'currency', currency }).format(amount);
      // a yen has no smaller coin: 8 + 74, not 82.69
      const isYen = currency === 'JPY';
      expect(result.total!.text).toBe(write(isYen ? 82 : 82.69));
      expect(result.fabrics.map(({ cost }) => cost!.text)).toEqual([write(8.44), write(74.25)]);
    }
    expect(good({ parts, fabrics }).total!.text).toBe('82.69');
    expect(good({ parts, fabrics, currency: 'XXQ' }).total!.amount).toBe('82.69');
    // 1 1/2 yd at 1001: 1501.50 each; a shop asks for 1502 twice
    const yen = good({
      parts: [part('Binding', 'A', '54'), part('Backing', 'B', '54')],
      fabrics: [
        { letter: 'A', price: '1001' },
        { letter: 'B', price: '1001' },
      ],
      currency: 'JPY',
    });
    expect(yen.fabrics.map(({ cost }) => cost!.amount)).toEqual(['1502', '1502']);
    expect(yen.total!.amount).toBe('3004');
  });

  test('that a part says itself count where its fabric has none', () => {
    const priced = [part('Binding', '', '36', { price: '8' }), part('Backing', 'B', '135', { price: '99' })];
    // 1 × 8 + 3 3/4 × 19.80
    expect(good({ parts: priced, fabrics: [{ letter: 'B', price: '19.80' }] })).toMatchObject({
      total: { amount: '82.25' },
    });
    expect(notesOf({ parts: [part('Binding', '', '36', { price: 'cheap' })] })).toContain(
      'The price of binding: “cheap” is not a number.',
    );
  });

  test('finer than a coin are shown as they are reckoned with', () => {
    // 1 yd at 13.335 costs 13 yen, or 13.34 where there are cents
    const at = (currency: string): unknown[] => {
      const [{ price, cost }] = good({
        parts: [part('Binding', 'A', '36')],
        fabrics: [{ letter: 'A', price: '13.335' }],
        currency,
      }).fabrics as [ShoppingLine];
      return [price!.text, price!.amount, cost!.amount];
    };
    expect(at('JPY')).toEqual(['¥13.335', '13.335', '13']);
    expect(at('EUR')).toEqual(['€13.335', '13.335', '13.34']);
    expect(at('')).toEqual(['13.335', '13.335', '13.34']);
    expect(at('KWD').slice(1)).toEqual(['13.335', '13.335']);
  });

  test.each(['JPY', 'KWD', 'EUR', ''])('add up as they are shown, in %s', (currency) => {
    const price = fc.integer({ min: 1, max: 99_999 }).map((thousandths) => `${thousandths / 1000}`);
    fc.assert(
      fc.property(fc.array(fc.tuple(need, price, price), { minLength: 1, maxLength: 6 }), (lines) => {
        const { fabrics, items, total } = good({
          parts: lines.map(([need], at) => part('Part', `F${at}`, need)),
          fabrics: lines.map(([, price], at) => ({ letter: `F${at}`, price })),
          items: lines.map(([, , cost]) => ({ title: 'Batting', text: '1 package', cost })),
          currency,
        });
        const costs = [...fabrics, ...items].map(({ cost }) => cost!);
        expect(sum(costs.map(({ amount }) => exact(amount))).equals(exact(total!.amount))).toBe(true);
        for (const { amount, text } of [...costs, total!])
          expect(Number(text.replace(/[^\d.]/g, ''))).toBe(Number(amount));
      }),
    );
  });

  test('of items count too, and are written like the others', () => {
    const result = good({
      parts,
      fabrics,
      items: [{ title: 'Batting', text: '1 queen package', cost: '38.50' }],
      currency: 'EUR',
      lang: 'de',
    });
    expect(result.items).toMatchObject([
      {
        cost: {
          amount: '38.50',
          text: new Intl.NumberFormat('de', { style: 'currency', currency: 'EUR' }).format(38.5),
        },
      },
    ]);
    expect(result.total!.amount).toBe('121.19');
  });

  test('that are missing are named, so that nobody takes the total for all', () => {
    expect(
      notesOf({
        parts,
        fabrics: [fabrics[0]!, { letter: 'B' }],
        items: [
          { title: 'Batting', text: '1 queen package' },
          { title: 'Cutting plan', fabric: 'A', text: '5 fat quarters' },
        ],
      }),
    ).toContain(
      'The total leaves out what has no price: Fabric B, 1 queen package, 5 fat quarters of fabric A.',
    );
    const rows = { parts, fabrics: [fabrics[0]!] };
    expect(good(rows)).toMatchObject({ soFar: true, total: { amount: '8.44' } });
    expect(good(rows).working.find(({ id }) => id === 'total')!.label).toBe('Total so far');
    expect(good({ parts, fabrics, unfinished: ['Borders is not on the list yet.'] }).soFar).toBe(true);
    expect(good({ parts, unfinished: ['Borders is not on the list yet.'] }).soFar).toBe(true);
    expect(good({ parts, fabrics })).not.toHaveProperty('soFar');
    expect(good({ parts })).not.toHaveProperty('soFar');
    expect(good({ parts })).not.toHaveProperty('total');
    expect(notesOf({ parts })).not.toContain('price');
  });

  test('that are no numbers are named, and the rest is reckoned', () => {
    const result = good({ parts, fabrics: [{ letter: 'A', price: 'a lot' }, fabrics[1]!] });
    expect(result.notes.join()).toMatch(
      /The price of fabric A: “a lot” is not a number\. Write it like 12\.50 or 1250\./,
    );
    expect(result.total!.amount).toBe('74.25');
    expect(result.fabrics).toHaveLength(2);
  });
});

describe('kits', () => {
  /** Cuts every kit’s length from bolts, one after another; a length never spans two bolts. */
  const cutFromBolts = (length: Exact, kits: number, bolt: Exact): number => {
    let bolts = 0;
    let left = exact(0);
    for (let kit = 0; kit < kits; kit += 1) {
      if (left.lt(length)) [bolts, left] = [bolts + 1, bolt];
      left = left.sub(length);
    }
    return bolts;
  };

  test('come from whole bolts: never too few, and no more than it takes', () => {
    fc.assert(
      fc.property(
        need,
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 10, max: 60 }),
        increment,
        (need, kits, yards, increment) => {
          const result = good({ parts: [part('Backing', 'A', need)], kits, bolt: `${yards} yd`, increment });
          const [{ bolts, buy }] = result.fabrics as [ShoppingLine];
          const bolt = exact(yards * 36);
          if (exact(buy.inches).gt(bolt)) {
            expect(bolts).toBeUndefined();
            expect(result.notes.join()).toContain('longer than a bolt');
            return;
          }
          expect(bolts).toBe(cutFromBolts(exact(buy.inches), kits, bolt));
        },
      ),
      { numRuns: 300 },
    );
  });

  test('of 5/8 yd from bolts of 15 yd: 24 to a bolt, so 24 take one and 25 two', () => {
    const bolts = (kits: number): number | undefined =>
      good({ parts: [part('Binding', 'A', '20')], kits }).fabrics[0]!.bolts;
    expect([bolts(24), bolts(25)]).toEqual([1, 2]);
  });

  test('have a price each, and a cost of all: whole bolts and every kit’s items', () => {
    const input = {
      parts: [part('Binding', 'A', '20')],
      fabrics: [{ letter: 'A', price: '10' }],
      items: [{ title: 'Batting', text: '1 crib package', cost: '12' }],
      kits: 30,
    };
    // one kit: 5/8 × 10 + 12 = 18.25; all: 2 bolts × 15 yd × 10 + 30 × 12 = 660
    expect(good(input).kits).toMatchObject({
      count: 30,
      each: { amount: '18.25' },
      cost: { amount: '660.00' },
    });
    expect(good({ ...input, fabrics: [], items: [] }).kits).toEqual({ count: 30 });
  });

  test('longer than a bolt are named; the rest is reckoned, but not what all would cost', () => {
    const result = good({
      parts: [part('Backing', 'A', '300'), part('Binding', 'B', '20')],
      fabrics: [
        { letter: 'A', price: '10' },
        { letter: 'B', price: '10' },
      ],
      kits: 4,
      bolt: '8 yd',
    });
    expect(result.notes.join()).toMatch(
      /Fabric A: a kit’s 8 3\/8 yd is longer than a bolt of 8 yd\. Write a longer bolt, like 8 3\/8 yd\./,
    );
    expect(result.fabrics.map(({ bolts }) => bolts)).toEqual([undefined, 1]);
    expect(result.kits!.each).toBeDefined();
    expect(result.kits).not.toHaveProperty('cost');
  });

  test('longer than any bolt are told a length that can be written', () => {
    const input = { parts: [part('Backing', 'A', '26208')], kits: 2 };
    const [, longer] = /like ([^.]+ yd)\./.exec(notesOf(input))!;
    expect(good({ ...input, bolt: longer }).fabrics[0]!.bolts).toBe(2);
  });

  test('whose parts each fit on a bolt can be cut as lengths of their own', () => {
    // 200 + 150 in are 9 3/4 yd; 5 5/8 and 4 1/4 yd fit on 8 yd
    const parts = [part('Backing', 'A', '200'), part('Borders', 'A', '150')];
    expect(notesOf({ parts, kits: 2, bolt: '8 yd' })).toContain(
      'Write a longer bolt, like 9 3/4 yd, or cut its parts as lengths of their own: 5 5/8 yd for backing, 4 1/4 yd for borders.',
    );
  });

  test('whose part takes a whole bolt can be cut as a length of its own too', () => {
    // 8 yd are 288 in.
    const parts = [part('Backing', 'A', '288'), part('Borders', 'A', '150')];
    expect(notesOf({ parts, kits: 2, bolt: '8 yd' })).toContain('8 yd for backing, 4 1/4 yd for borders');
  });

  test('say that fewer bolts would not do only of one length for each kit', () => {
    const how = (kits: number): [string, string] => {
      const { label, how } = good({ parts: [part('Backing', 'A', '300')], kits }).working.find(
        ({ id }) => id === 'bolts-A',
      )!;
      return [label, how];
    };
    // one of 8 3/8 yd from 15
    const words =
      '1 length of 8 3/8 yd from each bolt of 15 yd; with 8 3/8 yd in one length for each kit, fewer bolts are not enough';
    expect(how(1)).toEqual(['Bolts for 1 kit', words]);
    expect(how(2)).toEqual(['Bolts for 2 kits', words]);
  });

  test('of nothing take no bolt', () => {
    expect(good({ parts: [part('Top', 'A', '0')], kits: 3 }).fabrics[0]).not.toHaveProperty('bolts');
  });

  test.each([
    ['15 yd', 'in', '15 yd'],
    ['12 1/2 yd', 'in', '12 1/2 yd'],
    ['540', 'in', '15 yd'],
    ['14 m', 'in', '14 m'],
    ['13.7 m', 'cm', '13.7 m'],
    ['1370', 'cm', '13.7 m'],
    ['15 yd', 'cm', '15 yd'],
    ['14 1/8 yd', 'in', '14 1/8 yd'],
    ['13.75 m', 'in', '13.75 m'],
    // 501 × 2.54 cm, which is neither eighths of a yard nor centimetres
    ['501 in', 'cm', '12.7254 m'],
  ])('a bolt of %s on a page in %s reads %s', (bolt, units, value) => {
    for (const kits of [4, 'many']) {
      const { working } = reckonWorksheet({ bolt, units, kits });
      expect(working.find(({ id }) => id === 'bolt')!.value).toBe(value);
    }
  });

  test('as many as a shop cuts are reckoned at once', () => {
    expect(good({ parts: [part('Binding', 'A', '20')], kits: 10_000 }).fabrics[0]!.bolts).toBe(
      Math.ceil(10_000 / 24),
    );
    expect(reckonWorksheet({ kits: 10_001 }).errors).toMatchObject([{ input: 'kits' }]);
    for (const kits of ['0', '-2', '2.5', 'some'])
      expect(reckonWorksheet({ kits }).errors, kits).toMatchObject([{ input: 'kits' }]);
  });
});

describe('bad input', () => {
  test.each([undefined, null, '', 'abc', '-3', '1/0', NaN, {}])(
    'of a need of %j is named by its part',
    (need) => {
      const { errors } = reckonWorksheet({ kits: 3, parts: [part('Binding', 'A', need as string)] });
      expect(errors).toMatchObject([{ input: 'parts' }]);
      expect(errors![0]!.message).toMatch(/^Binding: .+ Write it like .+\.$/);
    },
  );

  test('of a part or an item without words leaves a line that can be named', () => {
    expect(good({ kits: 3, parts: [{ need: '0' } as PartInput] }).working.at(-2)!.label).toBe('Part');
    expect(good({ items: [{ title: 'Batting' }, {}] as never }).summary).toBe('Batting, something.');
  });

  test('of every kind gives sentences, and never throws', () => {
    const junk = fc.anything({ withNullPrototype: true, withBigInt: true, withDate: true, withMap: true });
    const KEYS = [
      'fabrics',
      'parts',
      'items',
      'troubles',
      'unfinished',
      'width',
      'length',
      'fabricWidth',
      'seam',
      'kits',
      'bolt',
      'shrinkage',
      'increment',
      'currency',
      'units',
      'lang',
      'measured',
    ];
    const lists = fc.record(
      {
        fabrics: fc.array(fc.oneof(junk, fc.dictionary(fc.constantFrom('letter', 'name', 'price'), junk))),
        parts: fc.array(
          fc.oneof(
            junk,
            fc.dictionary(
              fc.constantFrom('title', 'fabric', 'need', 'width', 'washed', 'pieces'),
              fc.oneof(junk, fc.constantFrom('12', '-3', 'A')),
            ),
          ),
        ),
        items: fc.array(
          fc.oneof(junk, fc.dictionary(fc.constantFrom('title', 'fabric', 'text', 'cost'), junk)),
        ),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...KEYS), junk), lists, (one, other) => {
        const result = reckonWorksheet(
          { parts: [part('Binding', 'A', '20')], ...one, ...other } as WorksheetInput,
          planCloth,
        );
        if (result.errors) {
          expect(result.buy).toBeUndefined();
          for (const { message } of result.errors) expect(message).toMatch(/[.?]$/u);
        } else expect(JSON.stringify(result)).not.toMatch(/NaN|Infinity|undefined/);
      }),
      // An object that only looks like an exact number.
      { numRuns: 1000, examples: [[{ length: { d: 0n } }, {}]] },
    );
  });
});
