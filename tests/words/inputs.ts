import fc from 'fast-check';
import type { Input } from '../../src/ledger/ledger.js';

const length = (least: number, most: number) =>
  fc.integer({ min: least * 8, max: most * 8 }).map((eighths) => `${eighths}/8`);
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined, freq: 2 });
/** Mostly values that work, and some that do not. */
const orWrong = <T>(value: fc.Arbitrary<T>) =>
  fc.oneof(
    { weight: 30, arbitrary: value },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        ...['', '0', '-5', 'abc', '1/0', '4 5', 'cm 5', '(2', '1 5/4', '2 in * 2 in', '1e9', '9'.repeat(200)],
        ...['99999999999999', '60x72', "60'", '5; 0; 5', '5;;5', '0.03', '2.5', '$5', '1/100', '9999'],
      ),
    },
  );

const shop = {
  units: fc.constantFrom('in', 'in', 'cm', 'furlong'),
  shown: maybe(fc.constantFrom('in', 'cm')),
  shrinkage: orWrong(fc.constantFrom(0, 0, 3, '4.5')),
  increment: orWrong(fc.constantFrom('1/8 yd', '1/4 yd', 'thirds', '10 cm', '25 cm', '1/16 in')),
  price: maybe(orWrong(fc.constantFrom('12', '7 EUR', '8 USD'))),
  currency: fc.constantFrom(undefined, undefined, 'EUR', 'euros'),
  shared: fc.constantFrom(undefined, undefined, true),
};
const cloth = { fabricWidth: orWrong(fc.oneof(length(3, 108), fc.constantFrom('40', '40', '44', '108'))) };
const quilt = { width: orWrong(length(6, 130)), length: orWrong(length(6, 130)) };
const overage = maybe(orWrong(length(0, 8)));
const seam = maybe(orWrong(length(0, 1)));
const mark = maybe(orWrong(fc.constantFrom('1/8', '1/4 in', '1 mm')));
const join = fc.constantFrom(undefined, 'diagonal', 'straight', 'bent');
const flag = fc.boolean();
const sheet = fc.constantFrom(
  ...['fat quarter', 'fat quarter', 'square-10', '18 x 20', '44 x 18', 'x', '0 x 9'],
);
/** What fabrics are bought in, if that is not cloth by length. */
const sheets = fc.constantFrom(
  ...[undefined, undefined, { B: 'fat-quarter' }, { A: 'fat-eighth', B: '18 x 20' }, { A: 'x' }],
);
const measured = (...rows: string[]) =>
  fc.option(
    fc.tuple(fc.constantFrom(...rows), orWrong(length(1, 90))).map(([row, value]) => ({ [row]: value })),
    { nil: undefined, freq: 1 },
  );

const LISTS = [
  'A | Quadrat | 3 1/2 | 12\nB | Kante | 2 1/2 x 6 1/2 | 40',
  'A | HST | 3 finished | 24\nB | QST | 4 finished | 9\nB | Kante | 2 1/3 x 30 | 7',
  'Quadrat | 3 1/2',
  'A | Quadrat | 0 | 12',
  'A | Quadrat | 3 | viele',
  'A | Quadrat | 3 | 9999999',
  'A | Quadrat | 3 |',
  'A | Quadrat | 3 | 0',
  'Stoff | Teil\nA | Quadrat',
  'Stoff | Teil | Zuschnitt\nA | Quadrat | 3',
  'A | riesig | 300 x 300 | 2',
  'A | lang | 50 x 30 | 9\nB | Streifen | 35 x 4 | 9',
  'A',
  '',
  'A | viel | 1/2 | 999999',
  Array.from({ length: 501 }, () => 'A | q | 1 | 1').join('\n'),
];

const CHARTS = [
  'A B A; B A B; A B A',
  'A/B A A\\B; A B in A A; A\\B A A/B',
  'A | B A B 2x1 | A\nB A B 1x2 left | A 2x2 | B A C 1x2 right\n-\nA | B A B 2x1 down | A',
  'A/B/A/C A; B A in C',
  'A A A; A A',
  'A | | B',
  'rot A; A A',
  '| A/B 2x1 |; A | A',
  '| A/B/C/D 2x1 |; A | A',
  '| A in B 2x1 |; A | A',
  '| B A B |',
  'A 0x2 | A; A | A',
  'B A B 2x1; A',
  'B A B 1x2 | A; A',
  'B A B 1x2 up | A; A',
  Array(25).fill('A').join(';'),
  Array.from({ length: 4 }, (_, row) => Array.from({ length: 8 }, (_, at) => `A${row * 8 + at}`)),
  [[{ text: 'A', rowspan: '2' }, { text: 'B' }]],
  [[{ text: 'A' }, { text: 'B', rowspan: '2' }], [{ text: 'C', colspan: '2' }]],
  '',
  ' ; ',
];

const part = fc.record({
  title: fc.constantFrom('Rand 1', 'Einfassung', 'Kante', ''),
  fabric: fc.constantFrom('A', 'A', 'B', 'C', ''),
  need: fc.oneof(
    { weight: 20, arbitrary: length(0, 200) },
    { weight: 1, arbitrary: fc.constantFrom('-3', 'x') },
  ),
  width: fc.constantFrom('40', '40', '42'),
  pieces: maybe(
    fc.array(
      fc.record({
        piece: fc.constant('Streifen'),
        width: length(1, 20),
        length: length(1, 30),
        count: fc.integer({ min: 1, max: 9 }),
        turn: flag,
      }),
      { minLength: 1, maxLength: 2 },
    ),
  ),
  price: fc.constantFrom(undefined, undefined, '9', '9 USD'),
  sheet: fc.constantFrom(undefined, undefined, undefined, 'fat quarter', '30 x 30', 'x', '0 x 9'),
  week: fc.constantFrom(undefined, 1, 2),
});

/** Inputs of every calculator, in English and German alike: no number in them has a comma. */
export const INPUTS: Record<string, fc.Arbitrary<Input>> = {
  backing: fc.record({
    ...quilt,
    ...shop,
    ...cloth,
    overage,
    seam: maybe(orWrong(length(0, 4))),
    repeat: maybe(orWrong(length(0, 30))),
    oneWay: flag,
    piecedStrip: flag,
    measured: measured('washedWidth'),
  }),
  binding: fc.record({
    ...quilt,
    ...shop,
    ...cloth,
    perimeter: fc.constantFrom(undefined, undefined, '200', '0'),
    stripWidth: maybe(orWrong(fc.oneof(length(1, 12), fc.constant('2 1/3')))),
    finished: maybe(orWrong(fc.oneof(length(0, 6), fc.constant('3/8')))),
    fold: fc.constantFrom('double', 'single'),
    cut: fc.constantFrom('straight', 'bias'),
    join,
    seam: maybe(orWrong(length(0, 4))),
    mark,
  }),
  borders: fc.record({
    ...quilt,
    ...shop,
    ...cloth,
    borders: fc.oneof(
      { weight: 8, arbitrary: fc.array(length(0, 12), { maxLength: 3 }).map((all) => all.join('; ')) },
      { weight: 1, arbitrary: fc.constantFrom('50', '2;;3', '1;1;1;1;1;1;1;1;1;1;1;1;1', 'x') },
    ),
    corners: fc.constantFrom(
      'sides-first',
      'ends-first',
      'squares',
      'mitred',
      'squares; mitred; mitred',
      'round',
    ),
    target: fc.constantFrom(undefined, undefined, '60 x 80', '150 x 150', '5', '6 x 6'),
    grain: fc.constantFrom('across', 'along'),
    join,
    seam,
    mark,
    fabricWidths: fc.constantFrom(undefined, undefined, ['40', '20'], ['44', 'x']),
    measured: measured('border1Sides', 'border1TopWidth', 'border2Ends'),
  }),
  batting: fc.record({
    ...quilt,
    ...shop,
    bed: fc.constantFrom('none', 'none', 'none', 'crib', 'twin', 'king', 'hammock'),
    overage,
    roll: fc.constantFrom(undefined, undefined, '96', '45; 60', '10', '2', 'x'),
    packages: fc.constantFrom(
      ...[undefined, undefined, undefined, 'groß 90 x 100 @ 29', '60 x 72 @ 12; 80 x 96 @ 19 EUR'],
      ...['x', '90 x 0', 'groß 90 x 100 @ teuer', Array.from({ length: 60 }, () => '90 x 90').join(';')],
    ),
  }),
  block: fc.record({
    ...shop,
    ...cloth,
    chart: fc.constantFrom(...CHARTS, ...CHARTS.slice(0, 4), ...CHARTS.slice(0, 4)),
    block: orWrong(length(1, 24)),
    count: orWrong(fc.integer({ min: 1, max: 40 })),
    method: fc.constantFrom(undefined, 'eight', 'four', 'two one', 'eight-four', 'strips', 'three'),
    name: fc.constantFrom(undefined, undefined, 'Sturm'),
    sheet: maybe(sheet),
    sheets,
    oneWay: flag,
    week: fc.constantFrom(undefined, '3', '0'),
    seam,
    mark,
    widths: fc.constantFrom(undefined, undefined, { B: '20' }, { B: 'x' }),
    caution: fc.constantFrom(undefined, 'Vorsicht'),
  }),
  sleeve: fc.record({
    ...shop,
    ...cloth,
    width: orWrong(length(1, 120)),
    stripWidth: fc.constantFrom(undefined, '6 1/2 in', '9 in', '1/4 in', 'x'),
    short: fc.constantFrom(undefined, '0', '2 in'),
    label: fc.constantFrom(undefined, '4 x 6 in', '90 x 6 in', 'x'),
    seam: fc.constantFrom(undefined, '1/2 in', '2 in'),
  }),
  top: fc.record({
    ...shop,
    ...cloth,
    bed: fc.constantFrom(undefined, undefined, undefined, 'crib', 'queen', '140x200'),
    target: fc.constantFrom(undefined, undefined, undefined, '60 x 80', '400 x 400'),
    block: orWrong(length(2, 20)),
    across: orWrong(fc.integer({ min: 1, max: 7 })),
    down: orWrong(fc.integer({ min: 1, max: 7 })),
    set: fc.constantFrom('straight', 'on-point', 'askew'),
    sashing: fc.oneof(
      { weight: 1, arbitrary: fc.constant('0') },
      { weight: 3, arbitrary: orWrong(length(0, 4)) },
    ),
    cornerstones: flag,
    frame: flag,
    seam,
    mark,
    fabricWidths: fc.constantFrom(undefined, undefined, ['40', '20', '42']),
  }),
  cutting: fc.record({
    ...shop,
    ...cloth,
    list: fc.constantFrom(LISTS[0], LISTS[1], LISTS[0], LISTS[1], ...LISTS),
    sheet: maybe(sheet),
    sheets,
    oneWay: flag,
    ruler: maybe(orWrong(length(6, 24))),
    mat: maybe(fc.constantFrom('24 x 36', '9 x 12', '5')),
    seam,
    mark,
    widths: fc.constantFrom(undefined, undefined, { B: '20' }, { B: 'x' }),
    caution: fc.constantFrom(undefined, 'Vorsicht'),
  }),
  worksheet: fc.record({
    units: shop.units,
    increment: shop.increment,
    currency: shop.currency,
    kits: fc.constantFrom(undefined, undefined, 1, 12),
    bolt: fc.constantFrom(undefined, '2 yd', '15 yd'),
    fabrics: fc.subarray([
      { letter: 'A', name: 'Sand', price: '12', fabricWidth: '40', atHand: '2 fat quarters, 1 yd, viel' },
      { letter: 'B', price: 'teuer', atHand: '' },
      { letter: 'A' },
      { letter: 'C', sheet: 'x', price: '3', atHand: '1 yd' },
      { letter: '' },
      { letter: 'D', fabricWidth: 'x' },
    ]),
    parts: fc.array(part, { maxLength: 4 }),
    items: fc.subarray([
      { title: 'Vlies', text: '1 Packung', cost: '20' },
      { title: 'Garn', text: '' },
      { title: 'Patches', fabric: 'A', text: '5 Fat Quarters', cost: 'teuer' },
    ]),
    unfinished: fc.constantFrom([], [], ['Top: bald.']),
    named: fc.constantFrom([], ['D']),
  }),
};
