import { beforeAll, expect, test } from 'vitest';
import { reckonBacking, reckonBatting } from '../../src/reckon.js';
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

test('other English is as it was, and the numbers are the same', () => {
  expect(said('en')).toMatch(/Batting width/);
  const numbers = (lang: string): unknown => {
    const { buy, fabric, need } = reckonBatting({ ...QUILT, lang, roll: '96' }) as Record<string, unknown>;
    return { buy, fabric, need };
  };
  expect(numbers('en-GB')).toEqual(numbers('en-US'));
});
