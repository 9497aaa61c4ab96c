import { describe, expect, test } from 'vitest';
import { backing } from '../../src/calculators/backing/backing.js';
import type { BackingAnswer } from '../../src/calculators/backing/shape.js';
import type { Calculator } from '../../src/calculators/calculator.js';
import { Money, Purchase } from '../../src/ledger/purchase.js';
import { exact } from '../../src/measure/exact.js';
import { Message } from '../../src/measure/message.js';
import { backing as backingWords } from '../../src/words/en/backing.js';
import { inEnglish } from '../../src/words/en/english.js';
import type { Teller, Vocabulary } from '../../src/words/teller.js';
import { told } from '../../src/words/told.js';
import { worksheetCells } from '../../src/workbook/cells.js';
import { Fabrics, type FabricOnPage } from '../../src/workbook/fabrics.js';
import { flow, isSame, type Flow, type FlowingPart } from '../../src/workbook/flow.js';
import { gather, type PartOnPage } from '../../src/workbook/gather.js';
import { reckonPlain, type WorksheetInput } from '../../src/workbook/plain.js';
import { reckon } from '../../src/workbook/reckon.js';
import { worksheetFields } from '../../src/workbook/shape.js';
import { headline, listLines, shopping } from '../../src/workbook/shopping.js';
import { telling } from './telling.js';

const packs: Vocabulary = {
  ...inEnglish(backingWords),
  title: 'Batting',
  sentences: {
    packs: ({ count }: { count: number }, t: Teller) =>
      t.many(count, { one: 'twin package', other: 'twin packages' }),
  },
};
const t = telling({ batting: packs });
const isColour = (swatch: string): boolean => swatch === '#fff';

const back = (fabric: string, input: object = {}): PartOnPage => ({
  calculator: backing,
  reckoning: backing.reckon({ width: 58, length: 58, shared: true, ...input }),
  fabric,
});
const twoPackages: Calculator<BackingAnswer> = {
  ...backing,
  name: 'batting',
  takes: ({ fabric: need }) => [
    {
      fabric: '',
      need,
      cuts: [],
      item: new Purchase(exact(90), exact(2), 'package', new Message('packs', { count: 2 })),
      cost: new Money(exact(40), 'EUR', 2),
    },
  ],
};
const batting = (): PartOnPage => ({ ...back(''), calculator: twoPackages });
const sheet = (parts: PartOnPage[], fabrics: FabricOnPage[] = [], fields: object = {}) => {
  const { gathered, pieces } = gather(parts, new Fabrics(fabrics, undefined, { units: 'in' }), isColour);
  const reckoning = reckon(fields, gathered);
  return { reckoning, pieces, notes: reckoning.notes.map((note) => t.say(note)).join('\n') };
};
const answerOf = ({ reckoning }: ReturnType<typeof sheet>) => reckoning.own ?? expect.fail('refused');

describe('what parts take', () => {
  test('is gathered as values, and said in the words of each calculator', () => {
    const all = sheet(
      [back('A'), back('A', { width: 20, length: 40 }), batting()],
      [{ letter: 'A', name: 'Sand' }],
    );
    const answer = answerOf(all);
    // 2 × 66 + 48 in
    expect(answer.fabric.equals(180)).toBe(true);
    expect(t.say(answer.summary)).toBe('1 fabric, 2 twin packages.');
    expect(listLines(answer).map(({ uses }) => t.say(uses))).toEqual(['backing, backing', 'batting']);
    expect(all.pieces.map(({ cut }) => t.say(cut.piece))).toContain('backing panel');
    const result = told(all.reckoning, worksheetFields, t);
    expect(JSON.stringify(result)).not.toContain('used');
  });

  test('takes nothing while something is wrong, and says so', () => {
    const { notes, reckoning } = sheet([back('A', { width: '' })]);
    expect(notes).toContain('Backing is not on the list yet: something in it is wrong.');
    expect(reckoning.own?.fabrics).toEqual([]);
  });

  test('is priced as its part was, and a price in another currency is left out', () => {
    const price = (price: string, currency?: string) => sheet([back('A', { price })], [], { currency });
    expect(answerOf(price('10 EUR')).total?.currency).toBe('EUR');
    expect(price('10 EUR', 'USD').notes).toContain('is in EUR, but prices here are in USD');
    expect(answerOf(price('10 EUR', 'USD')).total).toBeUndefined();
  });

  test('counts for a yard if its shop cuts by inches, also if the worksheet buys by the metre', () => {
    const own = { price: '9.144', increment: '1 in' };
    const answer = answerOf(sheet([back('A', own)], [], { increment: '1 m' }));
    expect(answer.fabrics[0]?.price?.value.equals(10)).toBe(true);
  });
});

describe('the lists', () => {
  const kits = answerOf(sheet([back('A', { price: 10 }), batting()], [], { kits: 3, currency: 'EUR' }));
  const said = (cell: unknown): unknown =>
    cell instanceof Message ? t.say(cell) : cell instanceof Purchase ? t.bought(cell) : cell;

  test('multiply what is bought by the piece, and count bolts', () => {
    expect(shopping(kits).rows.map((row) => said(row.at(-1)))).toEqual([
      '1 bolt',
      '6 twin packages',
      undefined,
    ]);
    const { lead, large } = headline(kits);
    expect(t.say(lead)).toBe('For 3 kits');
    expect(t.say(large)).toMatch(/^€/);
  });

  test('give a spreadsheet an amount and its unit', () => {
    const [, , cloth, packages] = worksheetCells(kits, [], [], { units: 'in' });
    expect(said(cloth?.[5])).toBe('yd');
    expect(packages?.[4]).toMatchObject({ unit: 'package' });
    expect(said(packages?.[5])).toBe('twin packages');
  });
});

describe('plain input', () => {
  const plain = (input: WorksheetInput | null) => reckonPlain(input);

  test('with a part that takes no cloth is reckoned where a bolt is too short', () => {
    const part = (title: string, need: string) => ({ title, need, fabric: 'A', width: '40' });
    const { own, notes } = plain({
      kits: 2,
      bolt: '40 in',
      parts: [part('Backing', '100'), part('Binding', '0')],
    });
    expect(own?.fabrics[0]?.bolts).toBeUndefined();
    expect(notes.map((note) => note.code)).toContain('longerThanBolt');
  });

  test('plans no pieces whose number it cannot read: too few would be bought', () => {
    const pieces = [{ width: '2', length: '40', count: '9' as unknown as number, turn: true }];
    const part = { title: 'Sashing', need: '50', fabric: 'A', width: '40', pieces };
    const { own } = plain({ parts: [part, part] });
    expect(own?.fabrics[0]?.need.equals(100)).toBe(true);
  });

  test('never throws, with anything in it', () => {
    for (const odd of [
      null,
      {},
      [],
      7,
      'x',
      { need: {} },
      { need: '9', pieces: [null, { count: 'x', width: '1', length: '1' }] },
    ]) {
      const list = [odd, odd];
      const input = { fabrics: list, parts: list, items: list, troubles: list, unfinished: odd, named: odd };
      expect(() => plain(JSON.parse(JSON.stringify(input)) as WorksheetInput)).not.toThrow();
    }
  });
});

describe('sizes', () => {
  const flowing = (more: Partial<FlowingPart>): FlowingPart => ({
    calculator: backing,
    input: {},
    ...more,
  });
  const finishing: Calculator<BackingAnswer> = {
    ...backing,
    name: 'borders',
    finishes: ({ need }) => need,
  };

  test('flow from the part that finishes the quilt to those after it, as exact numbers', () => {
    const given = new Map<FlowingPart, Flow>();
    const first = flowing({ calculator: finishing });
    const last = flowing({});
    const fabrics = new Fabrics([{ letter: 'A', fabricWidth: '42' }], undefined, { units: 'in' });
    const { size } = flow({ width: '58', length: '147.32 cm' }, [last, first], fabrics, (part, flow) => {
      given.set(part, flow);
      return backing.reckon(flow.values);
    });
    expect(isSame(size, { width: exact(66), length: exact(66) })).toBe(true);
    const values = given.get(last);
    expect(values && t.say(values.from['width'] ?? expect.fail())).toBe('from the borders');
    expect(isSame(values?.values['width'], exact(66))).toBe(true);
  });

  test('say what cloth the list lacks for the blocks', () => {
    const blocks = { written: { count: 20, block: exact(12) }, now: { count: 30, block: exact(12) } };
    const fabrics = new Fabrics([], undefined, { units: 'in' });
    const caution = (parts: FlowingPart[]) =>
      flow({}, parts, fabrics, () => backing.reckon({ width: 9, length: 9 })).caution;
    const top = flowing({ blocks });
    expect(caution([top])?.code).toBe('noClothForBlocks');
    const said = caution([top, flowing({ isCutList: true })]);
    expect(said && t.say(said)).toContain('This list has no cloth for 30 blocks of 12 in yet');
    // What follows the top's blocks has them in any size.
    const larger = { written: { count: 20, block: exact(12) }, now: { count: 20, block: exact(14) } };
    const list = flowing({ isCutList: true, placed: { count: undefined, fills: false, block: undefined } });
    expect(caution([flowing({ blocks: larger }), list])).toBe(undefined);
    expect(caution([flowing({ blocks: larger }), list, flowing({ isCutList: true })])?.code).toBe(
      'listForOtherBlocks',
    );
    // An only block has as many as the top.
    expect(caution([top, list])).toBe(undefined);
  });
});
