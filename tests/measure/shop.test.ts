import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { english, sentence } from '../sentences.js';
import { ofCloth } from '../../src/ledger/purchase.js';
import { exact, type Exact } from '../../src/measure/exact.js';
import { parseLength, type Reading } from '../../src/measure/parse.js';
import { mixed } from '../../src/measure/format.js';
import { parseStep, stepAbove, toStep, type Step } from '../../src/measure/shop.js';
import { fractions } from './arbitraries.js';

const step = (text: string, reading: Reading = { units: 'in' }): Step => {
  const parsed = parseStep(text, reading);
  if (!parsed.ok) throw new Error(sentence(parsed.problem));
  return parsed.value;
};
/** What is bought, as a result has it. */
const purchase = (
  inches: Exact,
  step: Step,
  comma = false,
): { inches: string; amount: string; unit: string; text: string } => {
  const bought = ofCloth(inches, step);
  const t = english(undefined, { units: 'in', comma });
  const { amount, unit } = bought;
  return { inches: mixed(bought.inches), amount: t.shopAmount(amount, unit), unit, text: t.bought(bought) };
};
const bought = (inches: Exact, text: string): string => purchase(toStep(inches, step(text)), step(text)).text;

const STEPS = ['1/8 yd', '1/4 yd', 'thirds', '1/2 yd', '10 cm', '25 cm', '50 cm', '1 m', '1 in'];

describe('a cutting step', () => {
  test.each<[string, string[], Step['unit']]>([
    ['1/8 yd', ['9/2'], 'yd'],
    ['⅛ yd', ['9/2'], 'yd'],
    ['1/4 Yard', ['9'], 'yd'],
    ['1/3 yd', ['12'], 'yd'],
    ['thirds', ['9/2', '12'], 'yd'],
    [' Thirds ', ['9/2', '12'], 'yd'],
    // 1 cm = 50/127 in.
    ['10 cm', ['500/127'], 'm'],
    ['25 cm', ['1250/127'], 'm'],
    ['50 cm', ['2500/127'], 'm'],
    ['0.1 m', ['500/127'], 'm'],
    ['100 mm', ['500/127'], 'm'],
    ['half', [], 'in'],
    ['9 in', ['9'], 'in'],
    ['1/8 in', ['1/8'], 'in'],
    ['10 yd', ['360'], 'yd'],
    ['9"', ['9'], 'in'],
    ['1’', ['12'], 'in'],
    ['9', ['9'], 'in'],
  ])('%s', (text, sizes, unit) => {
    const parsed = parseStep(text, { units: 'in' });
    expect(parsed.ok).toBe(sizes.length > 0);
    if (!parsed.ok) return;
    expect(parsed.value.sizes.map((size) => size.toFraction())).toEqual(sizes);
    expect(parsed.value.unit).toBe(unit);
  });

  test('without a unit is in centimetres on a metric page, and sold by the metre there', () => {
    expect(step('10', { units: 'cm' })).toEqual(step('10 cm'));
    expect(step('2½', { units: 'cm' }).unit).toBe('m');
    expect(step('9 in', { units: 'cm' }).unit).toBe('in');
    expect(step('9”', { units: 'cm' }).unit).toBe('in');
    expect(step('1/4 yd', { units: 'cm' }).unit).toBe('yd');
    // shown in the other units, it is still the author's
    expect(step('10', { units: 'cm', bare: 'in' })).toEqual(step('10 in'));
    expect(step('10', { units: 'in', bare: 'cm' })).toEqual(step('10 cm'));
  });

  test.each(['', 'abc', '0', '-1/8 yd', '1/16 in', '11 yd', '3 in * 4 in', '1/0 yd', 'x'.repeat(10_000)])(
    '“%s” is refused with steps that work',
    (text) => {
      const parsed = parseStep(text, { units: 'in' });
      if (parsed.ok) return expect.fail(`${text} was read`);
      const examples = /^[A-Z“].*\. Write it like (.+)\.$/s
        .exec(sentence(parsed.problem))?.[1]
        ?.split(/, | or /);
      expect(examples).toHaveLength(4);
      for (const example of examples!) expect(parseStep(example, { units: 'in' }).ok, example).toBe(true);
    },
  );

  test('never throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.boolean(), (text, comma) => {
        expect(parseStep(text, { units: 'cm', comma })).toHaveProperty('ok');
      }),
    );
  });
});

describe('what is bought', () => {
  // Yardage in inches: "Fabric yardage chart", Hooked on Sewing.
  test.each([
    ['4 1/2', '1/8 yd'],
    ['9', '1/4 yd'],
    ['12', '1/3 yd'],
    ['13 1/2', '3/8 yd'],
    ['18', '1/2 yd'],
    ['22 1/2', '5/8 yd'],
    ['24', '2/3 yd'],
    ['27', '3/4 yd'],
    ['31 1/2', '7/8 yd'],
  ])('%s in is %s, and a hair more is the next one', (inches, text) => {
    expect(bought(exact(inches), 'thirds')).toBe(text);
    const above = stepAbove(exact(inches), step('thirds'));
    expect(toStep(exact(inches).add(exact(1, 1000)), step('thirds')).equals(above)).toBe(true);
  });

  test.each([
    ['1', '1/8 yd', '1/8 yd'],
    ['130', '1/8 yd', '3 5/8 yd'],
    ['132', '1/8 yd', '3 3/4 yd'],
    ['132', '1/4 yd', '3 3/4 yd'],
    ['132', 'thirds', '3 2/3 yd'],
    ['127', '1/4 yd', '3 3/4 yd'],
    ['127', '1/8 yd', '3 5/8 yd'],
    // 127 in = 322.58 cm.
    ['127', '10 cm', '3.3 m'],
    ['127', '25 cm', '3.25 m'],
    ['127', '50 cm', '3.5 m'],
    ['127', '9 in', '135 in'],
    ['0', '1/8 yd', '0 yd'],
  ])('%s in at %s is %s', (inches, sizes, text) => expect(bought(exact(inches), sizes)).toBe(text));

  test('is written as people of the page write it, and as data does', () => {
    expect(purchase(exact(135), step('1/8 yd'))).toEqual({
      inches: '135',
      amount: '3 3/4',
      unit: 'yd',
      text: '3 3/4 yd',
    });
    const metre = toStep(exact(127), step('25 cm'));
    expect(purchase(metre, step('25 cm'), true)).toEqual({
      inches: '127 121/127',
      amount: '3.25',
      unit: 'm',
      text: '3,25 m',
    });
  });

  test('in metres has four places, exact where they are enough and never below the need', () => {
    // 1 in is 0.0254 m: half of it 0.0127 m, a third 0.008466… m.
    const metres = (inches: Exact): string => purchase(inches, step('10 cm')).amount;
    expect([metres(exact(1, 2)), metres(exact(1, 3))]).toEqual(['0.0127', '0.0085']);
  });

  const amounts = fractions();
  const shops = fc.constantFrom(...STEPS);

  test('is never short, and by less than one step too much', () => {
    fc.assert(
      fc.property(amounts, shops, (inches, text) => {
        const shop = step(text);
        const amount = toStep(inches, shop);
        expect(amount.gte(inches)).toBe(true);
        for (const size of shop.sizes) expect(amount.sub(inches).lt(size)).toBe(true);
        expect(shop.sizes.some((size) => amount.div(size).d === 1n)).toBe(true);
      }),
    );
  });
  test('has a next step above it and nothing between', () => {
    fc.assert(
      fc.property(amounts, shops, fc.integer({ min: 1, max: 999 }), (inches, text, share) => {
        const shop = step(text);
        const amount = toStep(inches, shop);
        const above = stepAbove(amount, shop);
        expect(above.gt(amount)).toBe(true);
        const between = amount.add(above.sub(amount).mul(share).div(1000));
        expect(toStep(between, shop).equals(above)).toBe(true);
      }),
    );
  });
  test('stays as it is when bought again, and reads back from its text', () => {
    fc.assert(
      fc.property(amounts, shops, (inches, text) => {
        const shop = step(text);
        const amount = toStep(inches, shop);
        expect(toStep(amount, shop).equals(amount)).toBe(true);
        expect(parseLength(purchase(amount, shop).text)).toEqual({ ok: true, value: amount });
        expect(parseLength(purchase(amount, shop, true).text, { comma: true })).toEqual({
          ok: true,
          value: amount,
        });
      }),
    );
  });
});
