import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawn, DRAWN_NAMES, type Drawn, type DrawnName } from './drawn.js';

type Input = Record<string, unknown>;

/** Room for what a computer's own numbers lose. */
const NEAR = 1e-6;

/** Every box and dimension is a number of inches, none below nothing, and lies on the picture. */
const isSound = ({ width, height, boxes, shapes = [], lines = [], dimensions }: Drawn): void => {
  expect([width, height].every((side) => side > 0 && side < 1e6)).toBe(true);
  for (const box of boxes) {
    expect(Math.min(box.x, box.y, box.width, box.height), JSON.stringify(box)).toBeGreaterThanOrEqual(-NEAR);
    expect(box.x + box.width, JSON.stringify(box)).toBeLessThanOrEqual(width + NEAR);
    expect(box.y + box.height, JSON.stringify(box)).toBeLessThanOrEqual(height + NEAR);
  }
  for (const { side, from, to } of dimensions) {
    expect(to).toBeGreaterThanOrEqual(from);
    expect(from).toBeGreaterThanOrEqual(-NEAR);
    expect(to).toBeLessThanOrEqual((/left|right/.test(side) ? height : width) + NEAR);
  }
  const points = [...shapes.flatMap((shape) => shape.points), ...lines.flatMap(({ from, to }) => [from, to])];
  for (const [x, y] of points) {
    expect(Math.min(x, y)).toBeGreaterThanOrEqual(-NEAR);
    expect(x).toBeLessThanOrEqual(width + NEAR);
    expect(y).toBeLessThanOrEqual(height + NEAR);
  }
};

const side = fc.constantFrom('4', '17 1/2', '58', '70', '101 3/8', '150 cm', '240');
const small = fc.constantFrom('0', '1/8', '1/4', '1', '2', '4 1/2', '12');
const flag = fc.boolean();
const measures = (...ids: string[]): fc.Arbitrary<Input> =>
  fc.record(Object.fromEntries(ids.map((id) => [id, side])), { requiredKeys: [] });
const inputs: Record<DrawnName, fc.Arbitrary<Input>> = {
  backing: fc.record({
    width: side,
    length: side,
    overage: small,
    fabricWidth: side,
    seam: small,
    repeat: small,
    oneWay: flag,
    piecedStrip: flag,
    shrinkage: fc.constantFrom('0', '7'),
    measured: measures('washedWidth'),
  }),
  batting: fc.record({
    width: side,
    length: side,
    overage: small,
    roll: fc.constantFrom('', '45', '96, 120'),
  }),
  binding: fc.record({
    width: side,
    length: side,
    fabricWidth: side,
    stripWidth: small,
    cut: fc.constantFrom('straight', 'bias'),
    join: fc.constantFrom('diagonal', 'straight'),
    shrinkage: fc.constantFrom('0', '7'),
    measured: measures('washedWidth', 'perimeterReckoned'),
  }),
  borders: fc.record({
    width: side,
    length: side,
    borders: fc.constantFrom('2', '2, 4 1/2', '12, 1/4, 5'),
    corners: fc.constantFrom('sides-first', 'ends-first', 'squares', 'mitred', 'mitred, squares'),
    grain: fc.constantFrom('across', 'along'),
    target: fc.constantFrom('', '100 x 120'),
    measured: measures(
      'border1Sides',
      'border1Ends',
      'border2Sides',
      'border2Ends',
      'border3Ends',
      'border1TopWidth',
    ),
  }),
  block: fc.record({
    chart: fc.constantFrom(
      'A B A; B A B; A B A',
      'A/B B\\A; B in A A/B/A/C',
      'B A B 2x1 | A 1x3\nB A B 1x2 left | C\nC',
    ),
    block: side,
    count: fc.integer({ min: 1, max: 9 }),
    method: fc.constantFrom('two', 'eight', 'four'),
  }),
  top: fc.record({
    block: side,
    across: fc.integer({ min: 1, max: 12 }),
    down: fc.integer({ min: 1, max: 12 }),
    sashing: small,
    cornerstones: flag,
    frame: flag,
    set: fc.constantFrom('straight', 'on-point'),
    measured: measures('finishedWidth', 'finishedLength'),
  }),
  cutting: fc.record({
    list: fc.constantFrom(
      'A | square | 3 1/2 | 48\nA | half-square triangles | 3 finished | 24',
      'A | strip | 2 1/2 x 60 | 3\nB | quarter-square triangles | 4 finished | 9',
    ),
    sheet: fc.constantFrom('', 'fat-quarter', '18 x 70'),
    oneWay: flag,
    fabricWidth: side,
  }),
};

describe('a drawing has no size below nothing, and nothing lies beside it', () => {
  test.each(DRAWN_NAMES)('%s', (name) => {
    let pictures = 0;
    fc.assert(
      fc.property(inputs[name], (input) => {
        const all = drawn(name, input);
        all.forEach(isSound);
        pictures += all.length;
      }),
      { numRuns: 150 },
    );
    expect(pictures).toBeGreaterThan(30);
  });
});

describe('borders that were measured', () => {
  const QUILT = { width: 58, length: 72, borders: '2, 5' };

  test('a measure that is too short for the borders before it leaves a top of size 0, not less', () => {
    const [picture] = drawn('borders', { ...QUILT, measured: { border2Ends: '4' } });
    isSound(picture!);
    expect(picture!.boxes.find(({ label }) => label === 'quilt top')).toMatchObject({ width: 0 });
  });

  test('the top is drawn as the measure has it', () => {
    // Geometry: 61 − 2 × 1/4 − 2 × 2 = 56 1/2 in.
    const [picture] = drawn('borders', { ...QUILT, borders: '2', measured: { border1Ends: '61' } });
    expect(picture!.boxes.find(({ label }) => label === 'quilt top')).toMatchObject({
      width: 56.5,
      height: 72,
    });
    expect(picture!.dimensions.map(({ text }) => text)).toContain('quilt top 56 1/2 in');
  });
});

describe('words stay clear of lines', () => {
  test('in a back, the words of a narrow strip are inside the quilt, one for each piece of the strip', () => {
    // Geometry: two panels of 42 in reach 83 of 92 in; the strip of 74 in takes two pieces of 42 in.
    const [picture] = drawn('backing', { width: 66, length: 84, fabricWidth: 42, piecedStrip: true });
    expect(picture!.boxes.filter(({ label }) => label === 'strip')).toMatchObject([
      { x: 0, y: 82.5, width: 41.5, room: { x: 4, y: 82.5, width: 37.5, height: 5.5 } },
      { x: 41.5, y: 82.5, width: 32.5, room: { x: 41.5, y: 82.5, width: 28.5, height: 5.5 } },
    ]);
  });
});

describe('binding', () => {
  test('its dimensions are exact, however many strips there are', () => {
    // Geometry: 9 strips of 2 1/3 in are 21 in.
    const [picture] = drawn('binding', {
      width: 72,
      length: 86,
      stripWidth: '2 1/3',
      mark: '1/3',
      fabricWidth: '40 1/3',
    });
    const texts = picture!.dimensions.map(({ text }) => text);
    expect(texts).toEqual(['40 1/3 in', '21 in', '2 1/3 in']);
  });
});
