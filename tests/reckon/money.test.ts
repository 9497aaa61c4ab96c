import { describe, expect, it } from 'vitest';
import { reckonBacking, reckonBatting, reckonWorksheet } from '../../src/reckon.js';
import { answersOf, errorsOf, row } from './asked.js';

const backing = answersOf(reckonBacking);
const quilt = { width: 58, length: 70 };
// 3 3/4 yd of backing, as README has it: × 12.50 = 46.875, × 12 = 45.
const costOf = (price: unknown, more: object = {}): string | undefined =>
  backing({ ...quilt, price, ...more }).cost?.text;

describe('a price with its currency', () => {
  it.each([
    ['12.50 EUR', {}, '€46.88'],
    ['12.50EUR', {}, '€46.88'],
    ['eur 12.50', {}, '€46.88'],
    ['€12.50', {}, '€46.88'],
    ['12.50 €', {}, '€46.88'],
    ['$12', {}, '$45.00'],
    ['＄12', {}, '$45.00'],
    ['£12', {}, '£45.00'],
    ['12 CHF', {}, 'CHF 45.00'],
    ['¥1250', {}, '¥4,688'],
    ['€ 12.50', { currency: 'EUR' }, '€46.88'],
    ['12.50 eur', { currency: 'eur' }, '€46.88'],
    ['$12', { currency: 'CAD' }, 'CA$45.00'],
    ['12.50', { currency: 'EUR' }, '€46.88'],
    ['12.50', {}, '46.88'],
    // a sign that is nobody's here: the number holds, and no currency is made up
    ['12.50 ₿', {}, '46.88'],
  ])('%j beside %j comes to %s', (price, more, cost) =>
    expect(costOf(price, more)?.replace(/\u00a0/g, ' ')).toBe(cost),
  );

  it('takes dollars from the page’s region, and the decimal comma from its language', () => {
    expect(costOf('$12', { lang: 'en-AU' })).toBe(
      new Intl.NumberFormat('en-AU', { style: 'currency', currency: 'AUD' }).format(45),
    );
    for (const price of ['12,50 EUR', '12,50 €', '€ 12,50', 'EUR 12,50'])
      expect(costOf(price, { lang: 'de' }), price).toBe(
        new Intl.NumberFormat('de', { style: 'currency', currency: 'EUR' }).format(46.88),
      );
  });

  it('shows which currency holds, and leaves the price as it was written', () => {
    const result = backing({ ...quilt, price: '12.50 EUR' });
    expect(row(result, 'price').value).toBe('12.50 EUR');
    expect(row(result, 'currency').value).toBe('EUR');
  });

  it.each([
    ['12.50 EUR', 'USD', '“12.50 EUR” is in EUR, but prices here are in USD. Write it in USD, like 12.50.'],
    ['€12.50', 'usd', '“€12.50” is in EUR, but prices here are in USD. Write it in USD, like 12.50.'],
    ['12 USD', 'CAD', '“12 USD” is in USD, but prices here are in CAD. Write it in CAD, like 12.50.'],
  ])('%j beside %s is told', (price, currency, message) =>
    expect(errorsOf(reckonBacking)({ ...quilt, price, currency })).toEqual(['price', message]),
  );

  it.each(['12 yds', '12.50 EUR USD', '12 E UR', 'EUR', '1 EUR 2', '12.50 per yard'])(
    '%j is refused',
    (price) =>
      expect(errorsOf(reckonBacking)({ ...quilt, price })[1]).toContain(
        'is not a number. Write it like 12.50',
      ),
  );

  // As shops write a thousand in Switzerland, and 12.50 in France: the first was 1 foot and 200 1/2 inches, the other 1250.
  it.each([
    // a sign and a code of two currencies
    '€ 12 USD',
    '12 EUR £',
    "1'200.50",
    '1’200',
    "12'",
    '12"',
    '12$50',
    '12€50',
    '€12€50',
  ])('%j is refused, not misread', (price) =>
    expect(errorsOf(reckonBacking)({ ...quilt, price })).toEqual([
      'price',
      `“${price}” is not a number. Write it like 12.50 or 1250.`,
    ]),
  );

  it('holds for a package of batting', () => {
    const result = answersOf(reckonBatting)({
      ...quilt,
      packages: 'twin 72 x 90 @ 29 EUR; large 90 x 108 @ €35',
    });
    expect(result.cost?.text).toBe('€29.00');
    expect(result.packages.map(({ priceText }) => priceText)).toEqual(['€29.00', '€35.00']);
    expect(errorsOf(reckonBatting)({ ...quilt, packages: 'twin 72 x 90 @ 29 EUR', currency: 'USD' })).toEqual(
      ['packages', '“29 EUR” is in EUR, but prices here are in USD. Write it in USD, like 12.50.'],
    );
  });
});

describe('prices on a worksheet', () => {
  const worksheet = answersOf(reckonWorksheet);
  const parts = [
    { title: 'Backing', fabric: 'A', need: '36' },
    { title: 'Binding', fabric: 'B', need: '18' },
  ];

  it('set its currency, whichever names one', () => {
    const fabrics = [
      { letter: 'A', price: '10' },
      { letter: 'B', price: '12 EUR' },
    ];
    const result = worksheet({ fabrics, parts });
    // 1 yd at 10 and 1/2 yd at 12
    expect(result.total?.text).toBe('€16.00');
    expect(result.fabrics.map(({ cost }) => cost?.text)).toEqual(['€10.00', '€6.00']);
    const ofPart = worksheet({ parts: [{ ...parts[0]!, price: '€10' }] });
    expect(ofPart.total?.text).toBe('€10.00');
    expect(
      worksheet({ items: [{ title: 'Batting', text: '1 package', cost: '29.00 EUR' }] }).total?.text,
    ).toBe('€29.00');
  });

  it('that contradict each other are told, and never added', () => {
    const fabrics = [
      { letter: 'A', price: '10 USD' },
      { letter: 'B', price: '12 EUR' },
    ];
    const { total, notes, soFar } = worksheet({ fabrics, parts });
    expect([total?.text, soFar]).toEqual(['$10.00', true]);
    expect(notes).toContain(
      'The price of fabric B: “12 EUR” is in EUR, but prices here are in USD. Write it in USD, like 12.50.',
    );
  });
});
