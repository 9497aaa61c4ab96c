import { describe, expect, it } from 'vitest';
import { atRest, site } from './site.js';

const { openWith } = site();

/** So tall, in CSS pixels, may a calculator be as it first shows; from the design, “The face”. */
const TALLEST = [
  { what: 'a mouse, 700 px wide', width: 700, touch: false, height: 700 },
  { what: 'a phone, 360 px wide', width: 360, touch: true, height: 1100 },
];
const SIZE = 'width="58" length="70"';
const CALCULATORS = {
  backing: `<quilt-backing ${SIZE}></quilt-backing>`,
  binding: `<quilt-binding ${SIZE}></quilt-binding>`,
  borders: `<quilt-borders ${SIZE} borders="2, 4 1/2"></quilt-borders>`,
  batting: `<quilt-batting ${SIZE}></quilt-batting>`,
};

describe.each(Object.entries(CALCULATORS))('%s, as it first shows', (name, markup) => {
  it.each(TALLEST)('is no taller than $height px, with $what', async ({ width, touch, height }) => {
    const { page, faults } = await openWith(
      `<!doctype html><html lang="en"><title>A post</title><meta name="viewport" content="width=device-width" />
      <link rel="icon" href="data:," /><style>body { margin: 0; font: 16px/1.5 serif }</style>
      <body>${markup}<script src="/dist/quilt-reckoner.classic.js"></script></body></html>`,
    );
    await page.setViewport({ width, height: 640, hasTouch: touch, isMobile: touch });
    await page.reload({ waitUntil: 'load' });
    await atRest(page);
    const box = await page.$eval(`quilt-${name}`, (at) => {
      const { width, height } = at.getBoundingClientRect();
      return { width, height, answer: at.shadowRoot!.querySelector('[part=amount]')!.textContent };
    });
    expect(box.width).toBe(width);
    expect(box.answer).toMatch(/\d/);
    expect(box.height).toBeLessThanOrEqual(height);
    expect(faults).toEqual([]);
    await page.close();
  });
});
