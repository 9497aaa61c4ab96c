import { readFileSync } from 'node:fs';
import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { TEST_LIMIT } from '../config/limits.mjs';
import { once } from '../tools/once.mjs';
import { ROOT } from '../tools/run.mjs';
import { pageOf, POLICIES, SCRIPT, SHEETS, STRICT, WITHOUT_SCRIPTS } from '../hosts/hostile-pages.js';
import { keptBy, readingOf, useAll, type Reading } from '../hosts/reading.js';
import { faint } from './axe.js';
import { picture } from './picture.js';
import { atRest, site, type Visited } from './site.js';

const { openWith } = site();
const LISTENING = readFileSync(`${ROOT}tests/hosts/listening.js`, 'utf8');
const calmReading = once(async (body: string): Promise<Reading> => {
  const { page } = await openWith(pageOf(body));
  await atRest(page, true);
  const reading = await page.evaluate(readingOf);
  await page.close();
  return reading;
});

describe('A strict content security policy', () => {
  const heardOn = (page: Page): Promise<string[]> =>
    page.evaluate(() => (window as unknown as { faults: string[] }).faults);
  /** The page under this policy. It records violations before any script runs. */
  const under = (policy: string, script: string): Promise<Visited> => {
    return openWith(pageOf(SHEETS, { script }), { 'content-security-policy': policy }, { before: LISTENING });
  };

  it.each(POLICIES)('lets %s work, and has nothing to report', async (what, policy, script) => {
    const { page, faults } = await under(policy, script);
    await atRest(page, true);
    await picture(page, `policy ${what} 1280`);
    expect(await page.evaluate(readingOf)).toEqual(await calmReading(SHEETS));
    await page.evaluate(useAll);
    expect(
      await page.$eval(
        'quilt-worksheet',
        (at) => getComputedStyle(at.shadowRoot!.querySelector('td.swatch > *')!).backgroundColor,
      ),
    ).toBe('rgb(72, 80, 92)');
    expect(await heardOn(page)).toEqual([]);
    expect(await page.evaluate(keptBy)).toEqual({ cookies: '', stored: 0, databases: 0, globals: [] });
    expect(faults).toEqual([]);
    await page.close();
  });

  it('is in force: what it forbids is reported', async () => {
    const { page } = await under(STRICT, SCRIPT);
    await page.evaluate(() => {
      try {
        document.body.innerHTML = '<b></b>';
      } catch {
        document.body.setAttribute('style', 'color: red');
      }
    });
    await page.waitForFunction(() => (window as unknown as { faults: string[] }).faults.length >= 2);
    expect((await heardOn(page)).join()).toMatch(/require-trusted-types-for.*style-src/);
    await page.close();
  });
});

describe('A page whose scripts are blocked', () => {
  it.each([320, 1280])('is easily read at %d px', async (width) => {
    const { html, policy } = WITHOUT_SCRIPTS;
    const { page } = await openWith(html, { 'content-security-policy': policy }, { width });
    await picture(page, `scripts blocked ${width}`);
    expect(await faint(page, 5)).toEqual([]);
    await page.close();
  });
});

describe('A page that swaps its content without reloading', () => {
  it('fetches the next one, puts it in with its scripts, and leaves nothing behind', async () => {
    const { page, faults } = await openWith(pageOf(SHEETS));
    await atRest(page, true);
    const before = await page.evaluate(readingOf);
    await page.evaluate(async () => {
      for (let turn = 0; turn < 12; turn++) {
        document.querySelector('quilt-backing')!.focus();
        const html = await (await fetch(location.href)).text();
        const next = new DOMParser().parseFromString(html, 'text/html');
        document.title = next.title;
        document.body.replaceWith(document.adoptNode(next.body));
        // Such pages run the scripts they find again; one that is still loading would keep its page alive.
        for (const { src, type } of next.scripts)
          await new Promise((loaded) => {
            const again = Object.assign(document.createElement('script'), { src: `${src}?${turn}`, type });
            again.onload = loaded;
            document.body.append(again);
          });
      }
    });
    await atRest(page, true);
    expect(await page.evaluate(readingOf)).toEqual(before);
    const kind = await page.evaluateHandle(() => customElements.get('quilt-backing')!.prototype as object);
    const living = async (): Promise<number> => {
      const objects = await page.queryObjects(kind);
      return objects.evaluate((all) => (all as unknown as unknown[]).length);
    };
    // Of the 13, the one on the page and the last few are left. The browser frees the others in its own time.
    await expect.poll(living, { timeout: TEST_LIMIT, interval: 250 }).toBeLessThanOrEqual(4);
    expect(faults).toEqual([]);
    await page.close();
  });
});
