import { beforeAll, expect, test } from 'vitest';
import {
  reckonBacking,
  reckonBatting,
  reckonBinding,
  reckonBorders,
  reckonSleeve,
} from '../../src/reckon.js';
import { enGB } from '../../src/words/en-gb/en-gb.js';
import { learn } from '../../src/words/languages.js';

beforeAll(() => learn(enGB));

const QUILT = { width: '58', length: '70' };
const said = (lang: string): string =>
  JSON.stringify([
    reckonBatting({ ...QUILT, lang }),
    reckonBatting({ ...QUILT, lang, roll: '96', price: 'x' }),
    reckonBacking({ ...QUILT, lang, increment: 'wide', price: '9' }),
  ]);

test('a British page says wadding, metres before yards, and examples in centimetres', () => {
  expect(said('en-GB')).toMatch(/Wadding width.*Price of a metre or yard.*10 cm, 25 cm, 50 cm or 1\/8 yd/);
  expect(said('en-GB')).not.toMatch(/batting(?!Fields)/i);
});

test('a British reader is told of wider cloth in centimetres', () => {
  const size = { width: 60, length: 60, lang: 'en-GB', units: 'cm' };
  const wrong = [
    reckonBacking({ ...size, fabricWidth: 2, seam: 1 }),
    reckonBacking({ ...size, width: 400, fabricWidth: '3', seam: '1' }),
    reckonBinding({ ...size, fabricWidth: 5, stripWidth: 6 }),
    reckonBinding({ ...size, fabricWidth: 5, stripWidth: 6, cut: 'bias' }),
    reckonBorders({ ...size, borders: '' }),
    reckonBorders({ ...size, borders: 40, fabricWidth: 44, join: 'diagonal' }),
    reckonSleeve({ ...size, fabricWidth: 1 }),
  ].map(({ errors }) => errors?.map(({ message }) => message).join(' ') ?? '');
  expect(wrong.filter(Boolean).length).toBeGreaterThan(4);
  expect(wrong.join(' ')).toContain('wider cloth, like 105 cm');
  expect(wrong.join(' ')).not.toMatch(/\d in\b/);
});

test('other English is as it was, and the numbers are the same', () => {
  expect(said('en')).toMatch(/Batting width/);
  const numbers = (lang: string): unknown => {
    const { buy, fabric, need } = reckonBatting({ ...QUILT, lang, roll: '96' }) as Record<string, unknown>;
    return { buy, fabric, need };
  };
  expect(numbers('en-GB')).toEqual(numbers('en-US'));
});
