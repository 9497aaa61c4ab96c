import fc from 'fast-check';
import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import type { WorksheetResult } from '../../src/reckon.js';
import { QUILT } from '../hosts/quilt-parts.js';
import { pasted, TEN, THOUSAND } from '../tools/long-lists.mjs';
import { atRest, site, writeIn } from './site.js';

const { open, openWith } = site();
const TAGS = [
  'quilt-top',
  'quilt-borders',
  'quilt-backing',
  'quilt-binding',
  'quilt-batting',
  'quilt-cutting',
  'quilt-fabric',
  'quilt-worksheet',
];
const script = '<script type="module" src="/dist/quilt-reckoner.js"></script>';

const listOf = (page: Page): Promise<WorksheetResult> =>
  page.$eval('quilt-worksheet', (at) => (at as unknown as { result: WorksheetResult }).result);
const textOf = (page: Page, selector: string): Promise<string> =>
  page.$eval(selector, (at) => (at as HTMLElement).innerText.replace(/\s+/g, ' ').trim());

describe('the page of a whole quilt', () => {
  it('follows from its attributes, from the blocks to the total', async () => {
    const { page, faults } = await open('/worksheet.html');
    await atRest(page);
    // geometry: 4 × 12 + 5 × 2 by 5 × 12 + 6 × 2, and 2 × (2 + 5) more each way with its borders
    expect(await textOf(page, 'quilt-top >>> [part=answer]')).toMatch(/^Finished 58 × 72 in/);
    expect(await textOf(page, 'quilt-binding >>> [part=table]')).toContain('from the borders');
    for (const tag of ['quilt-binding', 'quilt-backing', 'quilt-batting'])
      expect(
        await page.$eval(tag, (at) =>
          ['width', 'length'].map(
            (id) => at.shadowRoot!.querySelector<HTMLInputElement>(`[data-row=${id}]`)!.value,
          ),
        ),
      ).toEqual(['72 in', '86 in']);
    const { fabrics, items, total, notes } = await listOf(page);
    const costs = [...fabrics, ...items].map(({ cost }) => Number(cost!.amount));
    expect(Number(total!.amount)).toBeCloseTo(
      costs.reduce((all, cost) => all + cost),
      2,
    );
    expect(await textOf(page, 'quilt-worksheet >>> [part=answer]')).toMatch(
      new RegExp(`^In all €${total!.amount}`),
    );
    expect(notes.join()).not.toMatch(/not on the list|declared|no price/);
    await writeIn(page, 'quilt-top >>> [data-row=across]', '5');
    await atRest(page);
    expect(
      await page.$eval('quilt-backing >>> [data-row=width]', (at) => (at as HTMLInputElement).value),
    ).toBe('86 in');
    expect((await listOf(page)).total).not.toEqual(total);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('shows the cut list without a script, and a sheet instead of it with one', async () => {
    const shown = (page: Page): Promise<boolean> =>
      page.$eval('quilt-cutting table', (at) => at.checkVisibility());
    const [before, after] = [
      await open('/worksheet.html', { scripts: false }),
      await open('/worksheet.html'),
    ];
    await atRest(after.page);
    expect([await shown(before.page), await shown(after.page)]).toEqual([true, false]);
    await before.page.close();
    await after.page.close();
  });

  it.each([320, 480, 700, 1280])('fits a window of %d px', async (width) => {
    const { page, faults } = await open('/worksheet.html', { width });
    await atRest(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    for (const sheet of await page.$$(TAGS.join()))
      expect(
        await sheet.evaluate(({ shadowRoot }) =>
          [...(shadowRoot?.querySelectorAll('table') ?? [])].every(
            (table) => table.scrollWidth <= table.parentElement!.clientWidth + 1,
          ),
        ),
      ).toBe(true);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('may stand on a page that forbids inline styles and scripts', async () => {
    const { page, faults } = await openWith(script + QUILT, {
      'content-security-policy': "default-src 'self'; img-src data:",
    });
    await atRest(page);
    expect(
      await page.$eval('quilt-worksheet >>> td.swatch > *', (at) => getComputedStyle(at).backgroundColor),
    ).toBe('rgb(217, 199, 163)');
    expect(faults).toEqual([]);
    await page.close();
  });
});

describe('elements that are defined one after the other', () => {
  it('have the same result for any order of their scripts', async () => {
    const outcome = async (scripts: string[]): Promise<unknown> => {
      const { page, faults } = await openWith(QUILT);
      for (const url of scripts) {
        await page.addScriptTag({ url, type: 'module' });
      }
      await atRest(page);
      expect(faults).toEqual([]);
      const { working: _, ...rest } = await listOf(page);
      await page.close();
      return rest;
    };
    const expected = await outcome(['/dist/quilt-reckoner.js']);
    const orders = fc.sample(fc.shuffledSubarray(TAGS, { minLength: TAGS.length }), 6);
    for (const order of orders)
      expect(await outcome(order.map((tag) => `/dist/${tag}.js`)), order.join()).toEqual(expected);
  });
});

describe('a cut list of 1,000 pieces', () => {
  interface Tried {
    /** How often the page got its turn before the plan was shown. */
    turns: number;
    pieces: number;
    events: number;
  }
  /** Gives the element a list as pasting does, and waits for its plan. */
  const plan = async (list: string, interrupt = ''): Promise<Tried> => {
    const { page, faults } = await openWith(
      `${script}<quilt-worksheet><quilt-cutting list="A | square | 3 | 1"></quilt-cutting></quilt-worksheet>`,
    );
    await atRest(page);
    const tried = await page.evaluate(pasted, list, interrupt);
    expect(faults).toEqual([]);
    await page.close();
    return tried;
  };

  // How long the longest task is, tests/bench/holding.mjs prints; that depends on the machine, and this does not.
  it.each(Object.entries(THOUSAND))(
    'of %s is planned step by step, and the page has turns between',
    async (_, list) => {
      const { turns, pieces } = await plan(list);
      expect(pieces).toBe(1000);
      expect(turns).toBeGreaterThan(5);
      expect((await plan(TEN)).turns).toBeLessThan(3);
    },
  );

  it('makes way for the next list that is typed', async () => {
    const { pieces } = await plan(THOUSAND['200 sizes'], 'A | square | 3 | 7');
    expect(pieces).toBe(7);
    const next = await plan(THOUSAND['200 sizes'], THOUSAND['8 sizes']);
    expect(next.pieces).toBe(1000);
    // one when the first list took the place of the cells, one when its own plan is ready; the first list’s plan is never heard of
    expect(next.events).toBe(2);
  });
});
