import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { NAMES, tagOf } from '../calculators.js';
import { findFont } from '../tools/fonts.mjs';
import { site, whole } from './site.js';

/** The pictures that the elements are held against, and where a picture of what differs goes. */
const PICTURES = fileURLToPath(new URL('looks/', import.meta.url));
const DIFFERENCES = join(tmpdir(), 'quilt-reckoner-looks');
/** `LOOKS=renew` takes the pictures anew, after a change that was meant. */
const RENEWS = process.env['LOOKS'] === 'renew';

/** The font that the pictures were taken with. Other letters would differ everywhere. */
const FONT = 'DejaVu Sans';
/** Two versions of a browser soften edges in slightly different ways: so many pixels of a thousand may differ. */
const MAY_DIFFER = 1;

const WORKSHEET = `<quilt-worksheet width="58" length="70" currency="USD">
  <quilt-fabric letter="A" name="Sand" swatch="#d9c7a0" price="12"></quilt-fabric>
  <quilt-fabric letter="B" name="Sea" swatch="#3f6f86" price="11.50"></quilt-fabric>
  <quilt-borders borders="2, 4 1/2" fabric="A"></quilt-borders>
  <quilt-binding fabric="B"></quilt-binding>
  <quilt-backing fabric="B"></quilt-backing>
</quilt-worksheet>`;
const markupOf = (name: string): string => (name === 'worksheet' ? WORKSHEET : tagOf(name));

/** An input that every one of them has, or has in its own way. */
const INPUTS: Record<string, string> = { batting: 'length', worksheet: 'bolt' };
/** A reckoned row that can be typed over. */
const MEASURED: Record<string, Record<string, string>> = {
  binding: { around: '400' },
  borders: { border1Sides: '75' },
  top: { finishedWidth: '54' },
};

/** What a reader may see of an element: how wide, in which colours, and what was done to it. */
const STATES: { state: string; width: number; dark: boolean; given: (name: string) => object }[] = [
  { state: 'as it comes', width: 700, dark: false, given: () => ({}) },
  {
    state: 'wrong on a phone',
    width: 360,
    dark: false,
    given: (name) => ({ [INPUTS[name] ?? 'fabricWidth']: 'wide' }),
  },
  {
    state: 'opened in the dark',
    width: 700,
    dark: true,
    given: (name) => ({ working: 'open', measured: MEASURED[name] }),
  },
];

const { openWith } = site();

const pageOf = (name: string): string => `<!doctype html><html lang="en"><title>A look</title>
  <meta name="viewport" content="width=device-width" /><link rel="icon" href="data:," />
  <style>:root { color-scheme: light dark } body { margin: 0; padding: 8px; font: 16px/1.5 '${FONT}' }</style>
  <body><main>${markupOf(name)}</main><script src="/dist/quilt-reckoner.classic.js"></script></body></html>`;

const look = async (page: Page, name: string, given: object): Promise<PNG> => {
  await page.$eval(`quilt-${name}`, (at, given) => void Object.assign(at, given), given);
  await whole(page);
  const main = await page.$('main');
  return PNG.sync.read(Buffer.from(await main!.screenshot({ captureBeyondViewport: true })));
};

/** Six steps for each colour are enough to compare with, and the file is a third as large. */
const STEP = 51;
const PLAIN = { colorType: 2, filterType: 0, deflateLevel: 9, deflateStrategy: 0 } as const;
const kept = ({ width, height, data }: PNG): Buffer => {
  const picture = new PNG({ width, height });
  data.forEach((value, at) => (picture.data[at] = Math.round(value / STEP) * STEP));
  return PNG.sync.write(picture, PLAIN);
};

/** How many pixels of a thousand differ. A picture of another size differs in all. */
const differing = (now: PNG, before: PNG, path: string): number => {
  const { width, height } = before;
  if (now.width !== width || now.height !== height) return 1000;
  const shown = new PNG({ width, height });
  const pixels = pixelmatch(now.data, before.data, shown.data, width, height, { threshold: 0.15 });
  if (pixels) writeFileSync(path, PNG.sync.write(shown));
  return (1000 * pixels) / (width * height);
};

for (const folder of [DIFFERENCES, ...(RENEWS ? [PICTURES] : [])]) mkdirSync(folder, { recursive: true });

describe.skipIf(!findFont(FONT))(`how each element looks, in ${FONT}`, () => {
  describe.each(NAMES)('%s', (name) => {
    it.each(STATES)('$state', async ({ state, width, dark, given }) => {
      const { page, faults } = await openWith(pageOf(name), {}, { width, dark });
      const now = await look(page, name, given(name));
      const file = `${name}-${state.replaceAll(' ', '-')}.png`;
      const path = join(PICTURES, file);
      if (RENEWS) writeFileSync(path, kept(now));
      expect(existsSync(path), `${path}: there is no picture yet; LOOKS=renew takes it`).toBe(true);
      const before = PNG.sync.read(readFileSync(path));
      const seen = join(DIFFERENCES, file);
      const differ = differing(now, before, seen);
      if (differ > MAY_DIFFER) writeFileSync(seen.replace('.png', '-now.png'), PNG.sync.write(now));
      expect(differ, `it looks otherwise: see ${DIFFERENCES}, or take new pictures`).toBeLessThanOrEqual(
        MAY_DIFFER,
      );
      expect(faults).toEqual([]);
      await page.close();
    });
  });
});
