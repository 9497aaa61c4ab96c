import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reckonBacking, type BackingInput, type BackingLayout } from '../../src/reckon.js';
import { answersOf, inches } from './asked.js';

const good = answersOf(reckonBacking);
const wrong = (input: BackingInput) =>
  reckonBacking(input).errors?.map(({ input, message }) => [input, message]);
const quilt = { width: 58, length: 70 };

describe('a quilt of 58 × 70 in', () => {
  // Geometry: 66 × 78 in with 4 in all round. Two panels of 40 in joined with 1/2 in seams cover 79 in: enough for the
  // length, so panels of 66 in lie across: 132 in. Panels along the length cover 66 in and are 78 in long: 156 in.
  const result = good(quilt);

  test('takes the least cloth first', () => {
    expect(result.need).toEqual({ width: '66', length: '78' });
    expect(result.buy).toEqual({ inches: '135', amount: '3 3/4', unit: 'yd', text: '3 3/4 yd' });
    expect(result.fabric).toBe('132');
    expect(result.spare).toBe('3');
    expect(result.layouts[0]).toMatchObject({ panels: 2, direction: 'crosswise', seams: 1, fabric: '132' });
  });

  test('lists every layout; pieced strips come after whole panels', () => {
    // Geometry, lengthwise: one panel of 78 in covers 40; missing 66 − 40 + 1 = 27 in tall, twice 40 − 1 ≥ 78 long.
    // Crosswise: one panel of 66 in; missing 78 − 40 + 1 = 39 in tall, twice: 66 + 78 = 144 in.
    expect(
      result.layouts.map(({ direction, panels, strip, seams, fabric }) => [
        direction,
        panels,
        strip?.count,
        seams,
        fabric,
      ]),
    ).toEqual([
      ['crosswise', 2, undefined, 1, '132'],
      ['lengthwise', 2, undefined, 1, '156'],
      ['lengthwise', 1, 2, 2, '132'],
      ['crosswise', 1, 2, 2, '144'],
    ]);
  });

  test('shows how it was got, from which rows', () => {
    const row = (id: string) => result.working.find((one) => one.id === id)!;
    expect(row('needWidth')).toMatchObject({ how: '58 + 2 × 4 = 66 in', from: ['width', 'overage'] });
    expect(row('panels').how).toBe('2 × 40 − 2 × 1/2 = 79 ≥ 78 in');
    expect(row('panel')).toMatchObject({ how: 'the backing’s width', from: ['needWidth'] });
    expect(row('fabric')).toMatchObject({ how: '2 × 66 = 132 in', from: ['panels', 'panel'] });
  });

  test('names what is left over', () => expect(result.leftover).toEqual({ width: '1', length: '66' }));
});

describe('the cloth', () => {
  test('wide cloth needs no seam, whichever way it lies', () => {
    // Geometry: 106 in covers both 66 and 78; lying across, its length is the quilt's 66 in.
    const { layouts } = good({ ...quilt, fabricWidth: 106 });
    expect(layouts[0]).toMatchObject({ panels: 1, seams: 0, direction: 'crosswise', fabric: '66' });
    expect(layouts[1]).toMatchObject({ panels: 1, seams: 0, direction: 'lengthwise', fabric: '78' });
  });

  test('a repeat makes every joined panel a whole number of repeats, and a single one none', () => {
    // Geometry: 66 in is 5 1/2 repeats of 12, so 6: 72 in each.
    expect(good({ ...quilt, repeat: 12 }).fabric).toBe('144');
    expect(good({ ...quilt, repeat: 50, fabricWidth: 106 }).fabric).toBe('66');
  });

  test('a one-way print lies only along the length, without a pieced strip', () => {
    const { layouts } = good({ ...quilt, oneWay: true, piecedStrip: true });
    expect(layouts).toHaveLength(1);
    expect(layouts[0]).toMatchObject({ direction: 'lengthwise', panels: 2, fabric: '156' });
  });

  test('a pieced strip leads where it is allowed and saves cloth', () => {
    // Geometry: 44 × 90 in, so 52 × 98. Whole panels: 2 × 98 = 196, or three across, 3 × 52 = 156. One panel of 98 in covers
    // 40; missing 52 − 40 + 1 = 13 in; three pieces of 40 reach 118 ≥ 98: 98 + 3 × 13 = 137.
    const size = { width: 44, length: 90 };
    expect(good(size).fabric).toBe('156');
    expect(good({ ...size, piecedStrip: true }).fabric).toBe('137');
    expect(good({ ...size, piecedStrip: true }).layouts[0]).toMatchObject({
      seams: 3,
      strip: { count: 3, height: '13' },
    });
  });

  test('shrinkage buys longer and reckons with narrower cloth', () => {
    // Geometry: 40 × 0.95 = 38 in once washed; 2 × 38 − 1 = 75 < 78, so three across or two of 66 in lengthwise:
    // 2 × 78 ÷ 0.95 = 164 4/19 is less than 3 × 66 ÷ 0.95.
    const result = good({ ...quilt, shrinkage: 5 });
    expect(result.fabric).toBe('164 4/19');
    expect(result.layouts[0]).toMatchObject({ direction: 'lengthwise', panels: 2 });
    // What is cut and what is left is of washed cloth: 75 − 66 = 9 in beside 78.
    expect(result.cuts).toMatchObject([{ width: '38', length: '78' }]);
    expect(result.leftover).toEqual({ width: '9', length: '78' });
    // Geometry: 52 × 98 in; one panel covers 38, missing 52 − 38 + 1 = 15 in; 2 × 38 − 1 = 75 < 98 ≤ 3 × 38 − 2 = 112.
    const strip = good({ width: 44, length: 90, shrinkage: 5, piecedStrip: true });
    expect(strip.cuts).toMatchObject([
      { count: 1, width: '38', length: '98' },
      { count: 3, width: '15', length: '38' },
    ]);
  });

  test('of two layouts that take the same cloth, the one with fewer seams is first', () => {
    // Geometry: 90 × 60 in; three of 60 in lengthwise and two of 90 in crosswise are both 180 in.
    expect(good({ width: 82, length: 52 }).layouts.slice(0, 2)).toMatchObject([
      { direction: 'crosswise', seams: 1, fabric: '180' },
      { direction: 'lengthwise', seams: 2, fabric: '180' },
    ]);
  });

  test('may take up to a hundred panels', () => {
    const narrow = { length: 200, overage: 0, seam: 0, fabricWidth: 1, oneWay: true };
    expect(good({ ...narrow, width: 100 }).layouts[0]!.panels).toBe(100);
    expect(wrong({ ...narrow, width: 101 })!.join()).toMatch(/^fabricWidth,.* takes 101 panels\./);
  });
});

describe('what cannot be', () => {
  test.each<[string, BackingInput, string]>([
    ['nothing written', {}, 'width'],
    ['a seam that eats the cloth', { ...quilt, fabricWidth: 2, seam: 1 }, 'seam'],
    ['cloth that any seam eats', { ...quilt, fabricWidth: 1, seam: '1/2' }, 'fabricWidth'],
    ['cloth that takes hundreds of panels', { ...quilt, fabricWidth: '1.01' }, 'fabricWidth'],
    ['an overage larger than the quilt', { width: 10, length: 11, overage: 12 }, 'overage'],
    ['a negative width', { ...quilt, width: '-5' }, 'width'],
    ['a 3-mile quilt', { ...quilt, width: '190080' }, 'width'],
    ['shrinkage of 3 % as a share', { ...quilt, shrinkage: '0.03' }, 'shrinkage'],
    ['shrinkage of 100 %', { ...quilt, shrinkage: '100 %' }, 'shrinkage'],
    ['a step that is none', { ...quilt, increment: 'sideways' }, 'increment'],
  ])('%s is said at its input', (_, input, key) => {
    const errors = wrong(input)!;
    expect(errors.map(([input]) => input)).toContain(key);
    for (const [, message] of errors) expect(message).toMatch(/^[A-Z“].*[.?]$/);
  });

  test('nothing throws, whatever is written where', () => {
    const keys = fc.constantFrom(
      'width',
      'length',
      'overage',
      'fabricWidth',
      'seam',
      'repeat',
      'oneWay',
      'piecedStrip',
      'shrinkage',
      'increment',
      'price',
      'currency',
      'units',
      'lang',
      'measured',
    );
    const written = fc.oneof(
      fc.anything(),
      fc.string(),
      fc.constantFrom('0', '-1', '1/0', '1e999', 'NaN', '<img onerror>', '9'.repeat(10_000)),
      fc.double(),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(keys, written), { maxLength: 4 }), (changes) => {
        const result = reckonBacking({ ...quilt, ...(Object.fromEntries(changes) as BackingInput) });
        // What was typed stays as it is; what was reckoned never holds such a thing.
        const reckoned = {
          ...result,
          errors: undefined,
          working: result.working.filter(({ role }) => role !== 'given'),
        };
        expect(JSON.stringify(reckoned)).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });
});

/** In eighths of an inch. */
const inputs = fc.record({
  width: fc.integer({ min: 48, max: 1000 }),
  length: fc.integer({ min: 48, max: 1000 }),
  overage: fc.integer({ min: 0, max: 48 }),
  fabricWidth: fc.integer({ min: 120, max: 900 }),
  seam: fc.integer({ min: 0, max: 8 }),
  repeat: fc.constantFrom(0, 0, 32, 100),
  oneWay: fc.boolean(),
  piecedStrip: fc.boolean(),
  shrinkage: fc.constantFrom(0, 0, 3),
});
const written = (input: Record<string, unknown>): BackingInput =>
  Object.fromEntries(
    Object.entries(input).map(([key, value]) => [
      key,
      typeof value === 'number' && key !== 'shrinkage' ? value / 8 : value,
    ]),
  );

/**
 * Lays a layout out on cloth of this length: cuts its pieces one below the other, washes them, sews them side by side, and
 * gives the back that comes out. Pieces that do not fit on the cloth give nothing.
 */
const sewn = (
  layout: BackingLayout,
  cloth: number,
  { fabricWidth, seam, shrinkage }: { fabricWidth: number; seam: number; shrinkage: number },
) => {
  const wash = 1 - shrinkage / 100;
  const pieces = [
    ...Array<number>(layout.panels).fill(inches(layout.panelLength)),
    ...Array<number>(layout.strip?.count ?? 0).fill(inches(layout.strip?.height ?? '0')),
  ];
  if (pieces.reduce((all, piece) => all + piece, 0) > cloth + 1e-9) return { across: 0, along: 0 };
  const width = fabricWidth * wash;
  let across = 0;
  for (let panel = 0; panel < layout.panels; panel += 1) across += width - (panel ? 2 * seam : 0);
  let along = inches(layout.panelLength) * wash;
  if (layout.strip) {
    across += inches(layout.strip.height) * wash - 2 * seam;
    let strip = 0;
    for (let piece = 0; piece < layout.strip.count; piece += 1) strip += width - (piece ? 2 * seam : 0);
    along = Math.min(along, strip);
  }
  return { across, along };
};

describe('for any quilt', () => {
  test('the cloth bought makes the back in every layout, and a step less does not', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const result = good(written(input));
        const need = { width: inches(result.need.width), length: inches(result.need.length) };
        const cloth = {
          fabricWidth: input.fabricWidth / 8,
          seam: input.seam / 8,
          shrinkage: input.shrinkage,
        };
        for (const layout of result.layouts) {
          const [across, along] =
            layout.direction === 'lengthwise' ? [need.width, need.length] : [need.length, need.width];
          const bought = inches(layout.buy.inches);
          const back = sewn(layout, bought, cloth);
          expect(back.across).toBeGreaterThanOrEqual(across - 1e-9);
          expect(back.along).toBeGreaterThanOrEqual(along - 1e-9);
          expect(sewn(layout, bought - 4.5, cloth)).toEqual({ across: 0, along: 0 });
        }
      }),
    );
  });

  test('the answer is the least cloth of all layouts with whole panels, found by trying every number in both directions', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const result = good(written({ ...input, piecedStrip: false }));
        const eighths = { width: input.width + 2 * input.overage, length: input.length + 2 * input.overage };
        const cloth = (input.fabricWidth * (100 - input.shrinkage)) / 100;
        const tried: number[] = [];
        for (const [across, along] of [
          [eighths.width, eighths.length],
          ...(input.oneWay ? [] : [[eighths.length, eighths.width]]),
        ] as [number, number][])
          for (let panels = 1; panels < 200; panels += 1) {
            if (panels * cloth - 2 * input.seam * (panels - 1) < across - 1e-9) continue;
            let cut = (along * 100) / (100 - input.shrinkage);
            if (panels > 1 && input.repeat) cut = Math.ceil(cut / input.repeat - 1e-9) * input.repeat;
            tried.push((panels * cut) / 8);
          }
        expect(inches(result.fabric)).toBeCloseTo(Math.min(...tried), 6);
      }),
    );
  });

  test('inches and centimetres of the same lengths agree', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const metric = Object.fromEntries(
          Object.entries(written(input)).map(([key, value]) => [
            key,
            typeof value === 'number' && key !== 'shrinkage' ? `${(value * 2.54).toFixed(6)} cm` : value,
          ]),
        );
        const [a, b] = [good(written(input)), good({ ...metric, units: 'cm', increment: '1/8 yd' })];
        expect([b.fabric, b.buy, b.layouts[0]!.panels]).toEqual([a.fabric, a.buy, a.layouts[0]!.panels]);
      }),
    );
  });
});
