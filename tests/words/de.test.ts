import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { backing } from '../../src/calculators/backing/backing.js';
import { batting } from '../../src/calculators/batting/batting.js';
import { binding } from '../../src/calculators/binding/binding.js';
import { block } from '../../src/calculators/block/block.js';
import { borders } from '../../src/calculators/borders/borders.js';
import type { Calculator, CalculatorName } from '../../src/calculators/calculator.js';
import { cutting } from '../../src/calculators/cutting/cutting.js';
import { sleeve } from '../../src/calculators/sleeve/sleeve.js';
import { top } from '../../src/calculators/top/top.js';
import type { Input } from '../../src/ledger/ledger.js';
import type { Style } from '../../src/measure/format.js';
import { Message } from '../../src/measure/message.js';
import * as headless from '../../src/reckon.js';
import { Fabrics } from '../../src/workbook/fabrics.js';
import { gather } from '../../src/workbook/gather.js';
import { reckonPlain } from '../../src/workbook/plain.js';
import { reckon } from '../../src/workbook/reckon.js';
import { leftoverList } from '../../src/workbook/leftover-list.js';
import { headline, makesList, shopping } from '../../src/workbook/shopping.js';
import { weekByWeek } from '../../src/workbook/weeks.js';
import { de } from '../../src/words/de/de.js';
import { RECKON } from '../reckon/by-name.js';
import { faultIn, inEnglish, inGerman, NAMES, numbersIn } from './german.js';
import { INPUTS } from './inputs.js';
import { messagesIn, textsIn } from './messages.js';
import { SELDOM } from './values.js';

const CALCULATORS = { backing, batting, binding, block, borders, cutting, sleeve, top } as Partial<
  Record<CalculatorName, Calculator>
>;

const inputsOf = (name: CalculatorName): fc.Arbitrary<Input> => INPUTS[name] ?? fc.constant({});
/** Layouts take long to plan. */
const RUNS: Partial<Record<CalculatorName, number>> = { block: 150, cutting: 200, top: 150, worksheet: 150 };

/** Everything that is shown of what was reckoned. */
const shownOf = (name: CalculatorName, input: Input): { shown: unknown[]; style: Style } => {
  const calculator = CALCULATORS[name];
  if (!calculator) {
    const { own, ...reckoning } = reckonPlain(input);
    return { shown: [reckoning, own, own && shopping(own), own && headline(own)], style: reckoning.style };
  }
  const reckoning = calculator.reckon(input);
  const { own, style } = reckoning;
  if (!own) return { shown: [reckoning], style };
  const { draw, lists, headline: large, instead } = calculator;
  return { shown: [reckoning, draw(own), lists?.(own), large?.(own), instead?.(own)], style };
};

/** What a quilt's worksheet with these parts says. */
const worksheetOf = (parts: [CalculatorName, Input, string?][], fields: object = {}): unknown[] => {
  const onPage = parts.flatMap(([name, input, fabric]) => {
    const calculator = CALCULATORS[name];
    return calculator
      ? [{ calculator, reckoning: calculator.reckon({ shared: true, ...input }), fabric }]
      : [];
  });
  const declared = [
    { letter: 'A', name: 'Sand', price: '12', swatch: 'sandig', atHand: '1 Fat Quarter, 20 x 60, viel' },
    { letter: 'B', fabricWidth: '60', sheet: 'viel' },
  ];
  const { gathered } = gather(onPage, new Fabrics(declared, undefined, { units: 'in' }), () => false);
  const reckoning = reckon(fields, gathered);
  const { own } = reckoning;
  return [
    reckoning,
    own && shopping(own),
    own && weekByWeek(own),
    own && leftoverList(own, reckoning.style),
    own && makesList(own),
    own && headline(own),
  ];
};

const QUILT = { width: 58, length: 70 };
const WEEKLY = { sheet: 'fat quarter', list: 'A | Quadrat | 6 | 5\nB | Kante | 2 x 6 | 9' };
const WORKSHEETS: [parts: [CalculatorName, Input, string?][], fields?: object][] = [
  [[]],
  [
    [
      ['cutting', { ...WEEKLY, week: 2 }],
      ['cutting', { ...WEEKLY, list: 'A | Eck | 6 | 4', week: 1 }],
      ['block', { chart: 'A B; B A', block: 11, sheet: 'fat quarter', week: 1, name: 'Stern' }],
    ],
  ],
  [[['backing', QUILT, 'A']]],
  [
    [
      ['backing', QUILT, 'A'],
      ['sleeve', { width: 58, label: '4 x 6' }],
    ],
  ],
  [
    [
      ['borders', { ...QUILT, borders: '2; 4 1/2' }, 'A'],
      ['binding', QUILT, 'A'],
      ['backing', { ...QUILT, fabricWidth: 60 }, 'A'],
      ['batting', QUILT],
      ['cutting', { list: 'A | Quadrat | 5 | 40', sheet: 'fat quarter' }, 'A'],
      ['top', { block: 12, across: 3, down: 4, sashing: 2 }, 'A C'],
      ['binding', { width: 'x' }, 'B'],
    ],
    { kits: 12, bolt: '6 yd', increment: 'thirds' },
  ],
  [
    [
      ['binding', QUILT, 'Blau Grau'],
      ['backing', { ...QUILT, price: '3 USD' }],
    ],
    { currency: 'EUR' },
  ],
];

/** What a person wrote is not looked at. */
const OWN = /^(ownWords|caution|saidBy)$/;
const isOwn = ({ code, values }: Message): boolean =>
  !code || OWN.test(code) || ('text' in values && !values.text);

/** Which sentences were said, and how much longer than English each was. */
const said = new Set<string>();
const ratios: number[] = [];

const check = (shown: unknown, name: CalculatorName, style: Style): void => {
  for (const message of messagesIn(shown)) {
    const german = inGerman(name, style).say(message);
    const english = inEnglish(name, { ...style, comma: false }).say(message);
    if (isOwn(message)) continue;
    expect(faultIn(german), message.code).toBe(undefined);
    said.add(`${name}.${message.code}`);
    if (english.length > 20) ratios.push(german.length / english.length);
  }
};

beforeAll(() => headless.learn(de));

describe('what is said in German', () => {
  test.each(NAMES)('of the %s, whatever is asked, is whole and has no English in it', (name) => {
    fc.assert(
      fc.property(inputsOf(name), (input) => {
        const { shown, style } = shownOf(name, input);
        check(shown, name, { ...style, comma: true });
      }),
      { numRuns: RUNS[name] ?? 400 },
    );
  });

  test('of a quilt with many parts is so too, in the words of each', () => {
    for (const [parts, fields] of WORKSHEETS)
      check(worksheetOf(parts, fields), 'worksheet', { units: 'in', comma: true });
  });

  test('by the face, or seldom, is so too', () => {
    for (const [name, group] of SELDOM)
      for (const [code, values] of Object.entries(group))
        check(new Message(code, values ?? {}), name, { units: 'cm', comma: true });
  });

  test('without values to fill in is so too, as are labels, hints and choices', () => {
    for (const [path, text] of textsIn(de)) expect(faultIn(text), path).toBe(undefined);
    expect(de.calculators.borders.entries.borders(2)).toBe('Rand 2');
  });

  test('is nearly all tried here', () => {
    const made = NAMES.flatMap((name) =>
      Object.entries<unknown>(de.calculators[name].sentences)
        .filter(([code, sentence]) => typeof sentence === 'function' && !OWN.test(code))
        .map(([code]) => `${name}.${code}`),
    );
    const left = made.filter((code) => !said.has(code));
    expect(left.length / made.length, left.join(' ')).toBeLessThan(0.06);
  });

  test('is not much longer than in English', () => {
    const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
    expect(mean).toBeLessThan(1.6);
  });
});

/** What no reader sees, or what somebody wrote. */
const UNSEEN = /(^|\.)(id|input|role|unit|direction|corners|plan|fabric|letter|amount|inches|from\.\d+)$/;
/** Messages and hints may have examples in them, which are metric in German. */
const hasExamples = (path: string, english: string): boolean =>
  /^(errors|notes)\./.test(path) ||
  NAMES.some((name) => Object.values(inEnglish(name, { units: 'in' }).words.hints).includes(english));

const checkText = (path: string, german: string, english: string): void => {
  if (UNSEEN.test(path)) return expect(german, path).toBe(english);
  if (path.endsWith('.label')) expect(german.trim(), path).not.toBe('');
  if (german === english) return;
  expect(faultIn(german), path).toBe(undefined);
  if (!hasExamples(path, english))
    expect(numbersIn(german, 'de'), `${path}: ${german}`).toEqual(numbersIn(english, 'en'));
};

describe('a result in German', () => {
  test.each(NAMES)('of the %s has English’s numbers, and a label for every row', (name) => {
    fc.assert(
      fc.property(inputsOf(name), (input) => {
        const [german = [], english = []] = ['de', 'en'].map((lang) =>
          textsIn(RECKON[name]({ ...input, lang })),
        );
        expect(german.map(([path]) => path)).toEqual(english.map(([path]) => path));
        german.forEach(([path, text], at) => checkText(path, text, english[at]?.[1] ?? ''));
      }),
      { numRuns: RUNS[name] ?? 300 },
    );
  });

  test('counts in the plural, in every kind of German', () => {
    expect(headless.reckonBacking({ ...QUILT, lang: 'de' })).toHaveProperty(
      'summary',
      '2 Bahnen, 1 Naht quer zum Quilt, für eine Rückseite von 66 × 78 in.',
    );
    const { summary } = headless.reckonBacking({ ...QUILT, fabricWidth: 20, lang: 'de-AT' }) as {
      summary: string;
    };
    expect(summary).toMatch(/^4 Bahnen, 3 Nähte /);
  });
});
