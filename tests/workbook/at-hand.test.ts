import { describe, expect, test } from 'vitest';
import { block } from '../../src/calculators/block/block.js';
import type { Planner } from '../../src/ledger/planning.js';
import { exact, type Exact } from '../../src/measure/exact.js';
import type { Style } from '../../src/measure/format.js';
import { checkPlan } from '../../src/planner/check.js';
import { cutFromOwn, mostThatFit, type OwnPiece } from '../../src/planner/own-pieces.js';
import { planCloth, type CutPiece } from '../../src/planner/plan.js';
import { readAtHand } from '../../src/workbook/at-hand.js';
import { Fabrics } from '../../src/workbook/fabrics.js';
import { gather } from '../../src/workbook/gather.js';
import { reckonPlain, type FabricInput, type PartInput } from '../../src/workbook/plain.js';
import { reckon } from '../../src/workbook/reckon.js';
import type { OwnCloth, PlannedTogether } from '../../src/workbook/shape.js';
import { headline, shopping } from '../../src/workbook/shopping.js';
import { dice } from '../planner/seeded.js';
import { t } from './telling.js';

const INCHES: Style = { units: 'in' };
const read = (text: string, style = INCHES, width = exact(40)): string[] =>
  readAtHand(text, width, style).pieces.map(
    ({ count, width, length }) => `${count}: ${width.toFraction(true)} × ${length.toFraction(true)}`,
  );

describe('what a reader has at hand', () => {
  // A fat quarter is 20 × 18 in and a fat eighth 20 × 9 in: common practice, no source. A length is as wide as the fabric.
  test.each<[text: string, pieces: string[]]>([
    ['9 fat quarters', ['9: 20 × 18']],
    ['a fat quarter', ['1: 20 × 18']],
    ['fat quarter', ['1: 20 × 18']],
    ['3 Fat-Quarters', ['3: 20 × 18']],
    ['2 FQ', ['2: 20 × 18']],
    ['4 fat eighths', ['4: 20 × 9']],
    ['1 1/2 yd', ['1: 40 × 54']],
    ['1½ yd', ['1: 40 × 54']],
    ['18"', ['1: 40 × 18']],
    ['127 cm', ['1: 40 × 50']],
    ['9 x 40 in', ['1: 9 × 40']],
    ['2 pieces of 9 x 40', ['2: 9 × 40']],
    ['2 fat quarters, 1/2 yd', ['2: 20 × 18', '1: 40 × 18']],
    ['2 fat quarters,1/2 yd and 9 x 40 in', ['2: 20 × 18', '1: 40 × 18', '1: 9 × 40']],
    ['2 fat quarters + 1 yd; 1 fat eighth', ['2: 20 × 18', '1: 40 × 36', '1: 20 × 9']],
    ['', []],
  ])('is read from %j', (text, pieces) => expect(read(text)).toEqual(pieces));

  test('is read with a decimal comma where the language writes one', () => {
    const german: Style = { units: 'cm', comma: true };
    expect(read('1,27 m und 3 Fat Quarters', german, exact(40))).toEqual([
      '1: 40 × 50',
      '3: 19 87/127 × 17 91/127',
    ]);
  });

  test.each([
    '2',
    '1/2',
    'lots',
    '0 fat quarters',
    '501 fat quarters',
    '-1 yd',
    '9 x',
    '0 x 4',
    'fat cat',
    '9 x y',
    // What may be a sum, or a number with a comma: read wrong, cloth would be missing.
    '2 x 9 x 40 in',
    '9 x 40 in x 2',
    '10 x 10 x 3',
    '2 x 1/2 yd',
    '2 × 1 m',
    '3 by 1 yard',
    '2 * 1/2 yd',
    '1,5 yd',
    '0,5 m',
  ])('counts as nothing if it is %j, and that is said', (text) => {
    const { pieces, problems } = readAtHand(`${text}, 1 yd`, exact(40), INCHES);
    expect([pieces.length, problems.map(({ code }) => code)]).toEqual([1, ['notAtHand']]);
    const { notes } = reckonPlain({ fabrics: [{ letter: 'A', atHand: text }], parts: [] });
    expect(notes.map((note) => t.say(note)).join()).toContain(
      'What you have of fabric A: “' +
        text +
        '” counts as nothing. Write it like 9 fat quarters, 1 1/2 yd, 9 x 40 in or 2 pieces of 9 x 40 in.',
    );
  });
});

const square = (side: string, count: number) => ({ width: side, length: side, count, turn: true });
const sheets = (count: number, more: object = {}): PartInput => ({
  ...{ title: 'Block', fabric: 'A', need: '0', sheet: 'fat-quarter', pieces: [square('6', count)] },
  ...more,
});
const length = (count: number, need: string): PartInput => ({
  ...{ title: 'Block', fabric: 'A', need, width: '40', pieces: [square('6', count)] },
});
const listed = (
  parts: PartInput[],
  atHand: string | undefined,
  more: object = {},
  fabric: Partial<FabricInput> = {},
) => reckonPlain({ fabrics: [{ letter: 'A', atHand, ...fabric }], parts, ...more });
const ofSheets = (
  parts: PartInput[],
  atHand: string | undefined,
  more?: object,
  fabric?: Partial<FabricInput>,
) => {
  const { own } = listed(parts, atHand, more, fabric);
  return own?.items[0] ?? expect.fail('refused');
};
const ofLength = (
  parts: PartInput[],
  atHand: string | undefined,
  more?: object,
  fabric?: Partial<FabricInput>,
) => listed(parts, atHand, more, fabric).own?.fabrics[0] ?? expect.fail('refused');

describe('the line of a fabric', () => {
  // Geometry: 3 × 3 squares of 6 in fit a fat quarter, so 80 take 9.
  test('says what is missing of fat quarters, or that there are enough', () => {
    const text = (atHand: string | undefined): string => t.say(ofSheets([sheets(80)], atHand).text);
    expect([undefined, '', '5 fat quarters', '9 fat quarters', '20 fat quarters', 'lots'].map(text)).toEqual([
      ...['9 fat quarters', '9 fat quarters', '4 fat quarters more'],
      ...['You have enough', 'You have enough', '9 fat quarters'],
    ]);
  });

  // Geometry: 36 in take 3 pieces of 10 in across, and 18 in take 2 of 9 in: half a yard gives 6 of 8.
  test('takes a length to be as wide as the cloth of the part, if the fabric does not say it', () => {
    const part = (width: string): PartInput => ({
      ...{ title: 'Strips', fabric: 'A', need: '27', width },
      pieces: [{ width: '10', length: '9', count: 8, turn: false }],
    });
    const isEnough = (width: string): boolean | undefined => ofLength([part(width)], '1/2 yd').own?.isEnough;
    expect([isEnough('40'), isEnough('36')]).toEqual([true, false]);
  });

  test('never has less than nothing to spare', () => {
    // 27 in are needed, and a yard is there.
    const { own } = listed([{ title: 'Back', fabric: 'A', need: '27', width: '40' }], '1 yd');
    expect(own?.spare.valueOf()).toBeGreaterThanOrEqual(0);
  });

  // Geometry: 6 squares of 6 in lie across 40 in, so a yard gives 6 × 6 = 36 of them: 44 are left, on 5 fat quarters. 9 × 40 in gives 6.
  test('uses other cloth for what can be cut from it', () => {
    const line = ofSheets([sheets(80)], '1 yd');
    expect([t.say(line.text), line.own?.plans.length, line.sheets]).toEqual(['5 fat quarters more', 1, 5]);
    expect(t.say(ofSheets([sheets(80)], '2 fat quarters, 1 yd').text)).toBe('3 fat quarters more');
    // 74 still take 9.
    expect(t.say(ofSheets([sheets(80)], '9 x 40 in').text)).toBe('9 fat quarters');
    expect(t.say(ofSheets([sheets(78)], '9 x 40 in').text)).toBe('8 fat quarters more');
    expect(t.say(ofSheets([sheets(80)], '5 x 40 in').text)).toBe('9 fat quarters');
  });

  test('costs what is missing', () => {
    const bought = (atHand: string) =>
      ofSheets([sheets(80)], atHand, {}, { sheet: 'fat-quarter', price: '3' }).cost?.amount;
    expect([bought(''), bought('5 fat quarters'), bought('9 fat quarters')]).toEqual([
      '27.00',
      '12.00',
      '0.00',
    ]);
  });

  // Geometry: 80 squares are 14 rows of 6 in, 84 in; a yard has 6 rows, so 44 are left: 8 rows, 48 in = 1 3/8 yd on steps of 1/8.
  test('says what is missing of cloth by length', () => {
    const text = (atHand: string | undefined): string => t.say(ofLength([length(80, '84')], atHand).text);
    expect([undefined, '1 yd', '2 1/2 yd', '1/8 yd'].map(text)).toEqual([
      ...['2 3/8 yd', '1 3/8 yd more', 'You have enough', '2 3/8 yd'],
    ]);
    // 4 fat quarters give 36 squares too.
    expect(text('4 fat quarters')).toBe('1 3/8 yd more');
    const { rows } = listed([length(80, '84')], '1 yd');
    expect(rows.map(({ id }) => id).filter((id) => id.endsWith('-A'))).toEqual(['need-A', 'left-A', 'buy-A']);
  });

  test('gives a part that has to be cut in one piece only a length that holds it', () => {
    const backing: PartInput = { title: 'Backing', fabric: 'A', need: '60', width: '40' };
    const text = (atHand: string): string => t.say(ofLength([backing], atHand).text);
    expect([text('1 1/2 yd'), text('1 3/4 yd'), text('9 fat quarters')]).toEqual([
      '1 3/4 yd',
      'You have enough',
      '1 3/4 yd',
    ]);
  });

  test('is told in the middle of a sentence with a small letter', () => {
    const other: PartInput = { title: 'Backing', fabric: 'B', need: '60', width: '40' };
    const { own } = listed([other, sheets(9)], '1 fat quarter');
    expect(own && t.say(own.summary)).toBe('1 fabric by length, you have enough of fabric A.');
  });

  test('is not counted as something to buy', () => {
    const other: PartInput = { title: 'Backing', fabric: 'B', need: '60', width: '40' };
    const buying = (parts: PartInput[]): string | undefined => {
      const { own } = listed(parts, '1 fat quarter');
      return own && t.say(headline(own).large);
    };
    expect(buying([other, sheets(9)])).toBe('1 thing');
    expect(buying([sheets(9)])).toBe('nothing');
  });

  test('uses no cloth twice', () => {
    const parts = [sheets(9), sheets(9, { sheet: '20 x 30' })];
    const { own } = listed(parts, '1 fat quarter');
    expect(own?.items.map(({ text }) => t.say(text))).toEqual(['You have enough', '1 sheet, 20 × 30 in']);
  });

  test('has a cell only if the reader is asked, and none for kits', () => {
    const heads = (atHand: string | undefined, more = {}): string[] => {
      const { own } = listed([sheets(80)], atHand, more);
      return own ? (shopping(own).head ?? []).map((head) => t.say(head)) : [];
    };
    expect(heads(undefined)).not.toContain('At hand');
    expect(heads('')).toContain('At hand');
    expect(heads('2 yd', { kits: 3 })).not.toContain('At hand');
    expect(t.say(ofSheets([sheets(80)], '2 yd', { kits: 3 }).text)).toBe('9 fat quarters');
  });
});

/** How many pieces of each size lie on these plans. */
const laidOn = (plans: (PlannedTogether | undefined)[]): Map<string, number> => {
  const laid = new Map<string, number>();
  for (const plan of plans)
    for (const { width, height } of plan?.layout ?? []) {
      const [a, b] = width.gt(height) ? [width, height] : [height, width];
      const size = `${a.toFraction()} × ${b.toFraction()}`;
      laid.set(size, (laid.get(size) ?? 0) + 1);
    }
  return laid;
};

describe('own cloth', () => {
  const CASES = 1000;
  const quarters = (of: number): Exact => exact(of, 4);

  test(`gives pieces that can be cut from it, each once, in ${CASES} random cases`, () => {
    const roll = dice(11);
    let used = 0;
    for (let at = 0; at < CASES; at += 1) {
      const pieces = Array.from({ length: 1 + roll(3) }, (): CutPiece => {
        const width = 8 + 4 * roll(10);
        return {
          width: quarters(width),
          height: quarters(roll(2) ? width : 8 + 4 * roll(10)),
          count: 1 + roll(9),
          turn: roll(3) > 0,
        };
      });
      const own = Array.from({ length: 1 + roll(2) }, (): OwnPiece => {
        return { width: quarters(40 + roll(120)), height: quarters(20 + roll(60)), count: 1 + roll(2) };
      });
      const cut = cutFromOwn(pieces, own, planCloth);
      if (typeof cut === 'number') return expect.fail('still planning');
      const counted = pieces.map(() => 0);
      const often = own.map(() => 0);
      for (const { own: place, plan, counts } of cut.used) {
        const on = own[place] ?? expect.fail();
        often[place] = (often[place] ?? 0) + plan.count;
        const asked = pieces.map((piece, at) => ({ ...piece, count: counts[at] ?? 0 }));
        expect(checkPlan(asked, { width: on.width, height: on.height }, plan)).toEqual([]);
        counts.forEach((count, at) => (counted[at] = (counted[at] ?? 0) + count));
        used += 1;
      }
      expect(often.every((times, place) => times <= (own[place]?.count ?? 0))).toBe(true);
      expect(counted.map((count, at) => count + (cut.rest[at] ?? 0))).toEqual(
        pieces.map(({ count }) => count),
      );
    }
    expect(used).toBeGreaterThan(CASES);
  });

  test('never makes a reader buy more, and leaves no piece out, in 300 random lists', () => {
    const roll = dice(12);
    const known = new Map<string, ReturnType<Planner>>();
    const plan: Planner = (pieces, cloth) => {
      const key = JSON.stringify([pieces, cloth], (_, one: unknown) =>
        typeof one === 'bigint' ? `${one}` : one,
      );
      const made = known.get(key) ?? planCloth(pieces, cloth);
      known.set(key, made);
      if (typeof made !== 'number' && made.ok) expect(checkPlan(pieces, cloth, made)).toEqual([]);
      return made;
    };
    const HAND = [
      '1 fat quarter',
      '3 fat quarters',
      '1/2 yd',
      '1 yd',
      '9 x 40 in',
      '12 x 15',
      '2 fat eighths',
    ];
    let helped = 0;
    for (let at = 0; at < 300; at += 1) {
      const isOnSheets = roll(2) > 0;
      const parts = Array.from({ length: 1 + roll(2) }, (_, week): PartInput => ({
        title: `Part ${week}`,
        fabric: 'A',
        need: '200',
        width: '40',
        ...(isOnSheets && { sheet: 'fat-quarter', week: week + 1 }),
        pieces: [{ width: `${2 + roll(7)}`, length: `${2 + roll(7)}`, count: 4 + roll(20), turn: true }],
      }));
      const atHand = [HAND[roll(7)], ...(roll(2) ? [HAND[roll(7)]] : [])].join(', ');
      const lineIn = (
        hand: string | undefined,
      ): {
        buy: number;
        own?: OwnCloth | undefined;
        together?: PlannedTogether | undefined;
        total?: number | undefined;
        opened?: number | undefined;
      } => {
        const { own, issues } = reckonPlain({ fabrics: [{ letter: 'A', atHand: hand }], parts }, plan);
        expect(issues).toEqual([]);
        const [item] = own?.items ?? [];
        const [line] = own?.fabrics ?? [];
        const opened = item?.weeks?.reduce((all, { opened }) => all + opened, 0);
        if (item)
          return {
            buy: item.used.buy?.amount.valueOf() ?? 0,
            own: item.own,
            together: item.together,
            total: item.sheets,
            opened,
          };
        return { buy: line?.buy.inches.valueOf() ?? 0, own: line?.own, together: line?.together };
      };
      const [without, line] = [lineIn(undefined), lineIn(atHand)];
      expect(line.buy, atHand).toBeLessThanOrEqual(without.buy);
      expect(line.opened, atHand).toBe(line.total);
      if (line.buy < without.buy) helped += 1;
      if (!line.own?.plans.length) continue;
      const laid = laidOn([...line.own.plans, line.together]);
      const wanted = new Map<string, number>();
      for (const { width, length, count } of parts.flatMap(({ pieces }) => pieces ?? [])) {
        const size = [+width, +length].sort((a, b) => b - a).join(' × ');
        wanted.set(size, (wanted.get(size) ?? 0) + count);
      }
      expect(Object.fromEntries(laid), atHand).toEqual(Object.fromEntries(wanted));
    }
    expect(helped).toBeGreaterThan(100);
  });
});

describe('what own cloth makes', () => {
  test('is the most blocks whose pieces fit it', () => {
    // Geometry: a fat quarter holds 3 × 3 squares of 6 in. A block takes two.
    const two = (blocks: number): CutPiece[] => [
      { width: exact(6), height: exact(6), count: 2 * blocks, turn: true },
    ];
    const own = (count: number): OwnPiece[] => [{ width: exact(20), height: exact(18), count }];
    const made = (count: number, most: number) => mostThatFit(two, own(count), most, planCloth);
    expect([made(1, 20), made(2, 20), made(3, 20), made(3, 5), made(1, 1)]).toEqual([4, 9, 13, 5, 1]);
    expect(mostThatFit(two, [{ width: exact(5), height: exact(90), count: 9 }], 7, planCloth)).toBe(0);
    expect(mostThatFit(two, own(3), 20, () => 0.5)).toBe(undefined);
  });

  test('is said for each block, with the fabric that runs out first', () => {
    // Geometry: blocks of 2 × 2 squares of 5 1/2 in, cut 6 in: two of A and two of B.
    const input = { chart: 'A B; B A', block: 11, count: 20, name: 'Star', shared: true };
    const made = (a: string | undefined, b: string | undefined) => {
      const fabrics = new Fabrics(
        [
          { letter: 'A', atHand: a },
          { letter: 'B', atHand: b },
        ],
        undefined,
        INCHES,
      );
      const { gathered } = gather(
        [{ calculator: block, reckoning: block.reckon(input) }],
        fabrics,
        () => true,
      );
      return reckon({}, gathered).own?.makes?.map(({ title, ...made }) => ({ title: t.say(title), ...made }));
    };
    expect(made('2 fat quarters', '3 fat quarters')).toEqual([
      { title: 'Star', blocks: 9, of: 20, runsOut: 'A' },
    ]);
    expect(made('', '3 fat quarters')).toEqual([{ title: 'Star', blocks: 13, of: 20, runsOut: 'B' }]);
    expect(made('9 fat quarters', '2 yd')).toEqual([
      { title: 'Star', blocks: 20, of: 20, runsOut: undefined },
    ]);
    expect(made('', undefined)).toBe(undefined);
  });
});
