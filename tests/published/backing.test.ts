import { expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { reckonBacking } from '../../src/reckon.js';

// "Math for Quilters, part 4", TQA News, 22 March 2012: a top no longer than 80 in takes a cross seam and 2 × (width + 6 in); longer, but
// no wider than 80 in, 2 × (length + 6); both over 80 in, 3 × (width + 6). Cloth there is sold as 44 in; 43 1/2 in of it are usable here, so
// that two panels joined with 1/2 in seams cover just 86 in.
test.each([
  [50, 60, 'crosswise', 2],
  [72, 80, 'crosswise', 2],
  [60, 81, 'lengthwise', 2],
  [80, 100, 'lengthwise', 2],
  [81, 90, 'crosswise', 3],
  [90, 108, 'crosswise', 3],
])('a top of %i × %i in, by the published rule', (width, length, direction, panels) => {
  const result = reckonBacking({ width, length, overage: 3, fabricWidth: '43 1/2' });
  const rule = result.errors
    ? undefined
    : result.layouts.find((layout) => layout.direction === direction && !layout.strip);
  expect(rule?.panels).toBe(panels);
  expect(rule?.fabric).toBe(String((direction === 'crosswise' ? width : length) * panels + 6 * panels));
});

// Quilts of Valor Foundation, FAQ "Backing & binding", 13 July 2020: a backing for longarm quilting is 8 in wider and 8 in longer than the top.
test('the default overage is what longarm quilters ask for', () => {
  const result = reckonBacking({ width: 60, length: 80 });
  if (result.errors) throw new Error('refused');
  expect([exact(result.need.width).sub(60).valueOf(), exact(result.need.length).sub(80).valueOf()]).toEqual([
    8, 8,
  ]);
});
