import { readFileSync } from 'node:fs';
import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../tools/run.mjs';
import { findingsOn } from './axe.js';
import { site, whole } from './site.js';

const { open, openWith } = site();

interface Described {
  tagName?: string;
  cssParts?: { name: string }[];
  cssProperties?: { name: string }[];
}
const { modules } = JSON.parse(readFileSync(`${ROOT}dist/custom-elements.json`, 'utf8')) as {
  modules: { declarations: Described[] }[];
};
const sheets = modules
  .flatMap(({ declarations }) => declarations)
  .filter(({ tagName }) => tagName && tagName !== 'quilt-fabric');
const namesOf = (list: { name: string }[] = []): string[] => list.map(({ name }) => name).sort();
const PROPERTIES = namesOf(sheets[0]?.cssProperties);
const PARTS = namesOf(sheets[0]?.cssParts);

const SCRIPT = '<script type="module" src="/dist/quilt-reckoner.js"></script>';
/** Sheets that between them show every part: with an answer, a cut list, and something wrong. */
const SHEETS = `${SCRIPT}<quilt-backing width="58" length="70"></quilt-backing>
  <quilt-borders width="x" length="70" borders="2" lock="length"></quilt-borders>`;

describe('what a page can style', () => {
  it('is the same for every sheet', () => {
    expect(sheets.length).toBe(9);
    for (const { tagName, cssParts, cssProperties } of sheets) {
      expect(namesOf(cssParts), tagName).toEqual(PARTS);
      expect(namesOf(cssProperties), tagName).toEqual(PROPERTIES);
    }
  });

  it('is what the page of the elements says, and what the elements have', async () => {
    const guide = await open('/elements.html');
    await whole(guide.page);
    const named = (selector: string): Promise<string[]> =>
      guide.page.$$eval(selector, (all) => all.map((at) => at.textContent));
    expect((await named('#properties label')).sort()).toEqual(PROPERTIES);
    expect((await named('#parts th[scope=row]')).sort()).toEqual(PARTS);
    // Each with what it does or is, and each property with what it starts as.
    for (const words of await named('#properties p:first-of-type, #parts td'))
      expect(words).toMatch(/^[A-Z].+\.$/);
    expect((await named('#properties .starts')).length).toBe(PROPERTIES.length);
    await guide.page.close();
    const { page, faults } = await openWith(SHEETS);
    const used = await page.$$eval('quilt-backing, quilt-borders', (all) =>
      all.flatMap(({ shadowRoot }) =>
        [...shadowRoot!.querySelectorAll('[part]')].flatMap(({ part }) => [...part]),
      ),
    );
    expect([...new Set(used)].sort()).toEqual(PARTS);
    expect(faults).toEqual([]);
    await page.close();
  });
});

describe('the themed page', () => {
  it.each([320, 768, 1280].flatMap((width) => [false, true].map((dark) => [width, dark] as const)))(
    'fits %i px (dark: %s) and axe finds nothing',
    async (width, dark) => {
      const { page, faults } = await open('/themed.html', { width, dark });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      expect(await findingsOn(page)).toEqual([]);
      expect(faults).toEqual([]);
      await page.close();
    },
  );

  it('has no script of its own, and other clothes on the same calculators', async () => {
    const themed = await open('/themed.html');
    const plain = await open('/');
    const look = (page: Page): Promise<string[]> =>
      page.$eval('quilt-backing >>> [part=cell]', (at) => {
        const { fontFamily, color, borderTopStyle, backgroundColor } = getComputedStyle(at);
        return [fontFamily, color, borderTopStyle, backgroundColor];
      });
    const [one, other] = [await look(themed.page), await look(plain.page)];
    for (const [at, value] of one.entries()) expect(value).not.toBe(other[at]);
    expect(await themed.page.$$eval('script', (all) => all.map((at) => at.getAttribute('src')))).toEqual([
      '../dist/quilt-reckoner.js',
    ]);
    const words = readFileSync(`${ROOT}demo/themed.html`, 'utf8').replace(/\s+/g, ' ');
    const amount = await themed.page.$eval('quilt-backing', (at) => at.result.buy!.text);
    expect(words).toContain(`Buy ${amount} of cloth`);
    await themed.page.close();
    await plain.page.close();
  });
});
