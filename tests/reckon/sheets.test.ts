import { describe, expect, test } from 'vitest';
import { block } from '../../src/calculators/block/block.js';
import { cutting } from '../../src/calculators/cutting/cutting.js';
import { isMessage, type Message } from '../../src/measure/message.js';
import type { Picture } from '../../src/ledger/picture.js';
import { reckonBlock, reckonCutting } from '../../src/reckon.js';
import { answersOf, errorsOf, row } from './asked.js';

const cut = answersOf(reckonCutting);
const sewn = answersOf(reckonBlock);

/** The captions of the drawings. */
const captions = (pictures: Picture[]): Message[] =>
  pictures.flatMap(({ caption }) => (isMessage(caption) ? [caption] : []));

describe('a block cut from sheets', () => {
  const nine = { chart: 'A B A; B A B; A B A', block: 9 };

  // Geometry: 9 ÷ 3 + 1/2 = 3 1/2 in; 5 × 5 squares of it fit 18 × 20 in (17 1/2 in each way), so 100 take 4 sheets, 80 take 4.
  test('takes whole ones of each fabric', () => {
    const result = sewn({ ...nine, count: 20, sheet: 'fat-quarter', price: '3.20' });
    expect(result.fabrics.map(({ fabric, sheets, buy }) => [fabric, sheets, buy.text])).toEqual([
      ['A', 4, '4 fat quarters'],
      ['B', 4, '4 fat quarters'],
    ]);
    expect(result.buy).toMatchObject({ amount: '8', unit: 'sheet', text: '8 fat quarters' });
    expect(result.summary).toBe(
      '20 blocks of 9 in. A: 4 fat quarters; B: 4 fat quarters. We count on 20 × 18 in of each fat quarter.',
    );
    expect(result.cost).toMatchObject({ amount: '25.60' });
    expect(result.fabric).toBe('0');
    expect(result.working.some(({ id }) => id === 'fabricWidth')).toBe(false);
    expect(row(result, 'fabric-A')).toMatchObject({ value: '4 fat quarters' });
  });

  // Geometry: patches of 2 × 1 cells of 5 in are cut 10 1/2 × 5 1/2 in. Upright, 18 × 20 in hold 1 across and 3 down. If they may be
  // turned, 20 × 18 in hold these 3, and in the 9 1/2 in beside them one more, turned.
  test('does not turn pieces of a one-way print', () => {
    const long = { chart: '| A 2x1 |; | A 2x1 |', block: 10, count: 2, sheet: '18 x 20' };
    expect(sewn({ ...long, oneWay: true }).sheets).toBe(2);
    expect(sewn(long).sheets).toBe(1);
  });

  test('compares the ways to make triangles in sheets', () => {
    const result = sewn({ chart: 'A/B', block: 6, count: 9, sheet: 'fat-quarter' });
    // Geometry: 9 units two at a time are 5 squares of 6 7/8 in, 4 on a sheet; eight at a time 2 squares of 13 3/4 in, 1 on a sheet.
    expect(result.fabrics.map(({ sheets }) => sheets)).toEqual([2, 2]);
    expect(sewn({ chart: 'A/B', block: 6, count: 10, sheet: 'fat-quarter', method: 'eight' }).sheets).toBe(4);
    const other = sewn({ chart: 'A/B', block: 3, count: 40, sheet: 'fat-eighth' });
    // Geometry: 20 squares of 3 7/8 in, 2 × 5 on 9 × 20 in: 2 sheets each. 5 squares of 7 3/4 in, 2 on a sheet: 3 each.
    expect(row(other, 'halvesOtherwise')).toMatchObject({
      value: '6',
      how: 'eight at a time: A 3 fat eighths, B 3 fat eighths',
    });
  });
});

describe('a list whose fabrics are bought in different ways', () => {
  // Geometry: 25 squares of 3 1/2 in fit one fat quarter. 40 rectangles of 4 × 10 in are 4 across 40 in: 10 strips, 40 in.
  const list = 'A | square | 3 1/2 | 30\nB | rail | 4 x 10 | 40';
  const mixed = cut({ list, sheets: { A: 'fat-quarter' } });

  test('plans each on its own cloth', () => {
    const [a, b] = mixed.fabrics;
    expect([a?.sheets, a?.need, a?.width, a?.height]).toEqual([2, '0', '20', '18']);
    expect([b?.sheets, b?.need, b?.width]).toEqual([undefined, '40', '40']);
  });

  test('says both in the answer, the summary and the rows', () => {
    expect(mixed.buy.text).toBe('1 1/8 yd and 2 fat quarters');
    expect(mixed.summary).toBe('A: 2 fat quarters; B: 1 1/8 yd. We count on 20 × 18 in of each fat quarter.');
    expect([mixed.fabric, mixed.spare, mixed.sheets]).toEqual(['40', '1/2', 2]);
    expect(row(mixed, 'fabric-A').value).toBe('2 fat quarters');
    expect(row(mixed, 'fabric-B').value).toBe('40 in');
  });

  test('draws the sheets of one and the length of the other', () => {
    const { own } = cutting.reckon({ list, sheets: { A: 'fat-quarter' } });
    expect(captions(own ? cutting.draw(own) : []).map(({ code }) => code)).toEqual([
      'laidOnSome',
      'laidOnSome',
      'laidOn',
    ]);
  });

  test('takes its price for the cloth by length, and says so', () => {
    const priced = cut({ list, sheets: { A: 'fat-quarter' }, price: '8' });
    // 1 1/8 yd at 8
    expect(priced.cost).toMatchObject({ amount: '9.00' });
    expect(priced.fabrics.map(({ cost }) => cost)).toEqual([undefined, '9.00']);
    expect(priced.notes).toContain(
      'This price is only for the cloth that you buy by length, not for the sheets.',
    );
    const allOnSheets = cut({ list: 'A | square | 3 1/2 | 30', sheets: { A: 'fat-quarter' }, price: '3' });
    expect(allOnSheets.cost).toMatchObject({ amount: '6.00' });
  });

  test('counts sheets of two sizes apart', () => {
    const { buy, summary } = cut({ list, sheets: { A: 'fat-quarter', B: '20 x 30' } });
    expect(buy.text).toBe('2 fat quarters and 3 sheets, 20 × 30 in');
    expect(summary).toBe(
      'A: 2 fat quarters; B: 3 sheets, 20 × 30 in. We count on 20 × 18 in of each fat quarter.',
    );
  });

  test('cuts all from its own sheets if it names some', () => {
    const own = cut({ list, sheet: 'fat-quarter', sheets: { A: 'fat-eighth' } });
    expect(own.buy.text).toBe(cut({ list, sheet: 'fat-quarter' }).buy.text);
  });

  test('takes lines without a letter from the fabric that the whole list names', () => {
    const plain = '| square | 3 1/2 | 30';
    expect(cut({ list: plain, sheets: { A: 'fat-quarter' }, letters: ['A', 'B'] }).sheets).toBe(2);
    expect(cut({ list: plain, sheets: { A: 'fat-quarter' } }).sheets).toBe(undefined);
  });

  test('says which fabric’s sheets it cannot read', () => {
    expect(errorsOf(reckonCutting)({ list, sheets: { A: 'a lot' } })).toEqual([
      'sheet',
      'What fabric A is bought in: “a lot” is not a sheet of cloth. Choose one from the list, or write a size like 12 x 40.',
    ]);
  });

  test('is the same in a block', () => {
    const blocks = sewn({ chart: 'A B A; B A B; A B A', block: 9, count: 20, sheets: { A: 'fat-quarter' } });
    expect(blocks.fabrics.map(({ sheets }) => sheets)).toEqual([4, undefined]);
    // Geometry: 80 squares of 3 1/2 in, 11 across 40 in: 8 strips, 28 in.
    expect(blocks.summary).toBe(
      '20 blocks of 9 in. A: 4 fat quarters; B: 7/8 yd. We count on 20 × 18 in of each fat quarter.',
    );
    const { own } = block.reckon({ chart: 'A B; B A', block: 9, sheets: { A: 'fat-quarter' } });
    expect(own && block.takes?.(own, []).map(({ sheets }) => sheets?.count)).toEqual([1, undefined]);
  });
});
