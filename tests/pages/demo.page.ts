import { readdirSync } from 'node:fs';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../tools/run.mjs';
import { findingsOn } from './axe.js';
import { site, type Visited, whole } from './site.js';

const { open } = site();

const linksOf = (page: Page): Promise<string[]> =>
  page.$$eval('a[href], link[href], script[src]', (all) =>
    all
      .map((at) => (at as HTMLAnchorElement).href || (at as HTMLScriptElement).src)
      .filter((url) => url.startsWith('http')),
  );

/** A frame's page is no page by itself: it has no heading, and the colours are those of the page around it. */
const IN_A_FRAME = 'frame.html';
const PAGES = readdirSync(`${ROOT}demo`).filter(
  (name) => name.endsWith('.html') && ![IN_A_FRAME, 'quick.html'].includes(name),
);

describe.each(PAGES)('the demo page %s', (name) => {
  /** One page, for all but the dark. */
  let visited: Visited;
  beforeAll(async () => {
    visited = await open(`/${name}`, { width: 320, warnings: true });
    await whole(visited.page);
  });
  afterAll(() => visited.page.close());

  const expectSound = async (page: Page, width: number): Promise<void> => {
    expect(await findingsOn(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  };

  it('loads with a clean console, and every link of it leads somewhere, to the very place', async () => {
    const { page, faults } = visited;
    const links = await linksOf(page);
    expect(links.length).toBeGreaterThan(0);
    for (const link of new Set(links)) {
      const response = await fetch(link);
      expect(response.status, link).toBe(200);
      const { hash, pathname } = new URL(link);
      if (hash && pathname.endsWith('.html'))
        expect(await response.text(), link).toContain(`id="${hash.slice(1)}"`);
    }
    expect(faults).toEqual([]);
  });

  it('has nothing that axe finds, and no sideways scroll, 320 px wide', () => expectSound(visited.page, 320));

  it('has nothing that axe finds, and no sideways scroll, 1280 px wide and dark', async () => {
    const { page } = await open(`/${name}`, { width: 1280, dark: true });
    await whole(page);
    await expectSound(page, 1280);
    await page.close();
  });
});

describe('the index', () => {
  it('leads to every demo page', async () => {
    const { page } = await open('/');
    const paths = (await linksOf(page)).map((link) => new URL(link).pathname);
    for (const name of PAGES.filter((name) => name !== 'index.html')) expect(paths).toContain(`/${name}`);
    expect(paths).toContain('/dist/quick.html');
    await page.close();
  });
});
