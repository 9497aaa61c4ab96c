import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { HOSTILE, pageOf, PREFERS_DARK, SHEETS, type Hostile } from '../hosts/hostile-pages.js';
import { misfits, readingOf, type Reading } from '../hosts/reading.js';
import { faint } from './axe.js';
import { picture } from './picture.js';
import { atRest, site, type Visited } from './site.js';

const { openWith } = site();

/** Settings of the browser, outside the page. */
interface Emulated extends Hostile {
  dark?: boolean;
  media?: Record<string, string>;
  paper?: boolean;
}

const EMULATED: Record<string, Emulated> = {
  'dark by preference': { ...PREFERS_DARK, dark: true },
  'forced colours': { media: { 'forced-colors': 'active' } },
  'forced colours, dark': { media: { 'forced-colors': 'active', 'prefers-color-scheme': 'dark' } },
  'the page on paper': { widths: [720], paper: true },
};

/** Chromium's own way, since the driver's does not know forced colours. */
const setMedia = async (page: Page, media: Record<string, string>): Promise<void> => {
  const cdp = await page.createCDPSession();
  const features = Object.entries(media).map(([name, value]) => ({ name, value }));
  await cdp.send('Emulation.setEmulatedMedia', { features });
};

/** What is read on the calm page; every other page has to read the same. */
const calm = new Map<number, Reading>();

describe.each(Object.entries({ ...HOSTILE, ...EMULATED } as Record<string, Emulated>))(
  'A page: %s',
  (name, { css, html, body = SHEETS, dark = false, media, paper = false, widths = [320, 1280], then }) => {
    /** One page, which becomes as wide as each test wants it; hostile.others.ts opens it at each width anew. */
    let visited: Visited;
    beforeAll(async () => {
      const [width = 320] = widths;
      const written = pageOf(body, { ...(css && { css }), ...(html && { html }) });
      visited = await openWith(written, {}, { width, dark });
      const { page } = visited;
      if (then) await page.evaluate(then);
      if (media) await setMedia(page, media);
      if (paper) await page.emulateMediaType('print');
    });
    afterAll(() => visited.page.close());

    it.each(widths)('reads as on a calm page, with nothing cut off or faint, at %d px', async (width) => {
      const { page, faults } = visited;
      await page.setViewport({ width, height: 900 });
      await atRest(page, true);
      await picture(page, `${name} ${width}`);
      const reading = await page.evaluate(readingOf);
      expect(reading.words.length).toBeGreaterThan(200);
      if (name === 'calm') calm.set(width, reading);
      if (!paper) expect(reading).toEqual(calm.get(width));
      expect(await page.evaluate(misfits)).toEqual([]);
      expect(await faint(page)).toEqual([]);
      expect(faults).toEqual([]);
    });
  },
);
