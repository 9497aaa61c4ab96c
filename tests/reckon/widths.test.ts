import { describe, expect, test } from 'vitest';
import { reckonBorders, type BordersInput } from '../../src/reckon.js';
import { reckonTop, type TopInput } from '../../src/reckon.js';
import { answersOf } from './asked.js';

const borders = answersOf(reckonBorders);
const top = answersOf(reckonTop);

describe('a part in several fabrics of different widths', () => {
  const framed: BordersInput = { width: 60, length: 70, borders: '2, 5' };
  const sashed: TopInput = { block: 12, across: 4, down: 5, sashing: 2, cornerstones: true, frame: true };
  const fabricWidths = ['40', '108 in'];

  test('has each border cut from its own', () => {
    const { borders: own, fabric, notes } = borders({ ...framed, fabricWidths });
    const [narrow, wide] = ['40', '108'].map((fabricWidth) => borders({ ...framed, fabricWidth }).borders);
    // Geometry: pieces of 74 in and more take two strips of 40 in each, and one of 108.
    expect(wide![1]!.strips).toBeLessThan(narrow![1]!.strips);
    expect(own).toEqual([narrow![0], wide![1]]);
    expect(own.map(({ cloth }) => cloth)).toEqual([
      { width: '40', sold: '40' },
      { width: '108', sold: '108' },
    ]);
    expect(Number(fabric)).toBe(Number(narrow![0]!.fabric) + Number(wide![1]!.fabric));
    expect(notes.join()).not.toContain('from one cloth');
  });

  test('has sashing and cornerstones cut from their own, and is not said to come from one cloth', () => {
    const several = top({ ...sashed, fabricWidths });
    const [narrow, wide] = ['40', '108'].map((fabricWidth) => top({ ...sashed, fabricWidth }).parts);
    expect(several.parts).toEqual([narrow![0], wide![1]]);
    expect(wide![1]!.fabric).not.toBe(narrow![1]!.fabric);
    expect(several.working.map(({ label }) => label)).not.toContain('Cloth, if all from one');
    expect(several.summary).not.toContain('from one cloth');
  });

  // Worked out here: 2 × 70 1/2 + 2 × 64 1/2 in take 8 strips, joined at 45° with 2 1/2 in for each join. Then each piece of 74 1/2 in
  // takes two strips, joined with 5 1/2 in. 20 and 44 in are 5/8 and 1 1/4 yd.
  test('has each border rounded up by itself, whatever their widths', () => {
    const apart = borders({ ...framed, apart: true });
    const each = apart.borders.map(({ strips, fabric, buy }) => [strips, fabric, buy.text]);
    expect(each).toEqual([
      [8, '20', '5/8 yd'],
      [8, '44', '1 1/4 yd'],
    ]);
    expect([apart.buy.text, apart.buy.amount]).toEqual(['5/8 yd and 1 1/4 yd', '1 7/8']);
    expect(borders(framed).buy.text).toBe('1 7/8 yd');
  });

  // 8 strips of 2 1/2 in are 20 in, and 9 of 5 1/2 in are 49 1/2 in: 1 3/8 yd to the last thread.
  test('says of which border little cloth is left over', () => {
    const { notes } = borders({ ...framed, width: 58, length: 72 });
    expect(notes.join(' ')).toContain(
      'For different cloths, buy 5/8 yd for border 1, 1 3/8 yd for border 2 (nothing to spare).',
    );
    const apart = borders({ ...framed, width: 58, length: 72, apart: true });
    expect(apart.notes.join(' ')).toContain(
      'That is 5/8 yd for border 1, 1 3/8 yd for border 2 (nothing to spare).',
    );
    // Where other parts share its cloth, what is left over is for them.
    const shared = borders({ ...framed, width: 58, length: 72, apart: true, shared: true });
    expect(shared.notes.join(' ')).toContain('That is 5/8 yd for border 1, 1 3/8 yd for border 2.');
  });

  test('has its own cloth for each kind of piece of a top too where both are equally wide', () => {
    const one = top(sashed);
    const apart = top({ ...sashed, apart: true });
    expect(apart.parts).toEqual(one.parts);
    // What each takes by itself, added up: each from its own cloth.
    expect(Number(apart.fabric)).toBe(one.parts.reduce((all, { fabric }) => all + Number(fabric), 0));
    expect(one.working.map(({ label }) => label)).toContain('Cloth, if all from one');
    expect(apart.working.map(({ label }) => label)).not.toContain('Cloth, if all from one');
    expect(apart.summary).not.toContain('from one cloth');
  });

  test('uses the last width for all further parts, and the usual one if there is none', () => {
    const three = { ...framed, borders: '2, 2, 2' };
    const widthsOf = (fabricWidths: unknown): string[] =>
      borders({ ...three, fabricWidths }).borders.map(({ cloth }) => cloth.sold);
    expect(widthsOf(['44', '', '50'])).toEqual(['44', '40', '50']);
    expect(widthsOf(['44', '50'])).toEqual(['44', '50', '50']);
    for (const none of [undefined, null, [], '108', 108, {}])
      expect(widthsOf(none)).toEqual(['40', '40', '40']);
  });

  test('shrinks each in the wash, and takes none wider than was measured', () => {
    const washed = borders({ ...framed, fabricWidths, shrinkage: 5 }).borders.map(({ cloth }) => cloth);
    // 95 % of 40 and of 108
    expect(washed).toEqual([
      { width: '38', sold: '40' },
      { width: '102 3/5', sold: '108' },
    ]);
    const measured = borders({ ...framed, fabricWidths, shrinkage: 5, measured: { washedWidth: '37' } });
    expect(measured.borders.map(({ cloth }) => cloth.width)).toEqual(['37', '37']);
  });

  test('says which width cannot be read', () => {
    for (const { errors = [] } of [
      reckonBorders({ ...framed, fabricWidths: ['40', 'wide'] }),
      reckonTop({ ...sashed, fabricWidths: ['40', 'wide'] }),
    ]) {
      expect(errors.map(({ input }) => input)).toEqual(['fabricWidth']);
      expect(errors[0]!.message).toMatch(/^Cloth 2: “wide” is not a length/);
    }
  });
});
