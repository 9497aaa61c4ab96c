import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { site, whole, type Visited } from './site.js';

const { open } = site();
const RULES = ['backing', 'binding', 'bias', 'borders', 'batting', 'top', 'block', 'cutting', 'sleeve'];

const arithmetic = async (): Promise<Visited> => {
  const visited = await open('/arithmetic.html');
  await whole(visited.page);
  return visited;
};

/** Every place in the words, with what stands there, and what the calculator beside it says. */
const placesIn = (page: Page): Promise<{ row: string; words: string; said: string }[]> =>
  page.$$eval('[data-row], [data-how]', (all) =>
    (all as HTMLElement[])
      // In a calculator's own rows nothing of it is in the page's document.
      .map((at) => {
        const { row, how, of } = at.dataset;
        const section = of ? document.getElementById(of)! : at.closest('.rule')!;
        const { result } = section.querySelector<HTMLElementTagNameMap['quilt-top']>('.live > *')!;
        const found = result.working.find(({ id }) => id === (row ?? how));
        return {
          row: `${section.id} ${row ?? how}`,
          words: at.textContent.replaceAll('\u00a0', ' '),
          said: (row ? found?.value : found?.how) ?? '',
        };
      }),
  );

const valueIn = (page: Page, section: string, row: string): Promise<string> =>
  page.$eval(
    `#${section} .live > *`,
    (at, row) =>
      (at as HTMLElementTagNameMap['quilt-top']).result.working.find(({ id }) => id === row)!.value,
    row,
  );

describe('the arithmetic', () => {
  it('gives the numbers of the calculators in its words', async () => {
    const { page, faults } = await arithmetic();
    const places = await placesIn(page);
    expect(places.length).toBeGreaterThan(40);
    for (const { row, words, said } of places) {
      expect(said, row).not.toBe('');
      expect(words, row).toBe(said);
    }
    expect(faults).toEqual([]);
    await page.close();
  });

  it('has an example with its working open, words and sources for each rule', async () => {
    const { page } = await arithmetic();
    const sections = await page.$$eval('.rule', (all) =>
      all.map((at) => ({
        id: at.id,
        open: at.querySelector('.live > *')!.getAttribute('working'),
        rows: [
          ...at.querySelector('.live > *')!.shadowRoot!.querySelectorAll<HTMLElement>('tbody tr'),
        ].filter((row) => row.checkVisibility()).length,
        sources: [...at.querySelectorAll<HTMLElement>('.sources li')].map(({ innerText }) => innerText),
      })),
    );
    expect(sections.map(({ id }) => id)).toEqual(RULES);
    for (const { id, open, rows, sources } of sections) {
      expect(open, id).toBe('open');
      expect(rows, id).toBeGreaterThan(2);
      expect(sources.length, id).toBeGreaterThan(1);
      // A title and who published it, or that there is no source.
      for (const source of sources)
        expect(source).toMatch(
          /“.+”( chart| \(FAQ\))?, \p{L}|: (geometry|common practice)\.$|worked example|European Journal|sizes\.com/u,
        );
    }
    await page.close();
  });

  it('follows what a reader types, and gives no number where there is none', async () => {
    const { page } = await arithmetic();
    const wide = '#backing [data-how=needWidth]';
    const said = (): Promise<string> => page.$eval(wide, (at) => at.textContent.replaceAll('\u00a0', ' '));
    expect(await said()).toBe('58 + 2 × 4 = 66 in');
    const cell = 'quilt-backing >>> [data-row=width]';
    const type = async (text: string): Promise<void> => {
      await page.$eval(cell, (at) => {
        (at as HTMLInputElement).focus();
        (at as HTMLInputElement).select();
      });
      await page.keyboard.type(text);
      await page.keyboard.press('Tab');
    };
    await type('60');
    expect(await said()).toBe('60 + 2 × 4 = 68 in');
    await type('wide');
    expect(await said()).toBe('…');
    await page.close();
  });

  it('types no number that a calculator works out', async () => {
    const { page } = await arithmetic();
    const typed = await page.$$eval('.rule', (all) =>
      all.flatMap((section) => {
        const prose = section.querySelector('.pair > div')!.cloneNode(true) as HTMLElement;
        for (const at of prose.querySelectorAll('[data-row], [data-how], .sources')) at.remove();
        const words = prose.textContent.replace(/\s+/g, ' ');
        const { result } = section.querySelector<HTMLElementTagNameMap['quilt-top']>('.live > *')!;
        return result.working
          .filter(({ role, value }) => role !== 'given' && /\d \S/.test(value))
          .filter(({ value }) => new RegExp(`(?<![\\d/]\\s?)${value}`).test(words))
          .map(({ id, value }) => `${section.id} ${id}: ${value}`);
      }),
    );
    expect(typed).toEqual([]);
    await page.close();
  });

  it('agrees with the figures of the sources that it names', async () => {
    const { page } = await arithmetic();
    // Castilleja Cotton, June 2013: 50 × 60 in, 40 in cloth, 2 in strips take 6.
    expect(await valueIn(page, 'binding', 'strips')).toBe('6');
    // [P7]: 250 in of 2 in bias by area, a 23 in square. By whole rounds of the tube (geometry): 8 × 23 1/2 × √2 ≈ 265.9.
    expect(await valueIn(page, 'bias', 'byArea')).toBe('23 in');
    expect(await valueIn(page, 'bias', 'square')).toBe('24 in');
    // [P2]: for blocks of 12 in, squares of 18 1/4 and 9 3/8 in.
    expect(await valueIn(page, 'top', 'sideSquare')).toBe('18 1/4 in');
    expect(await valueIn(page, 'top', 'cornerSquare')).toBe('9 3/8 in');
    // [P3]: 30 squares of 3 1/2 in from one piece of 18 × 22 in.
    expect(await valueIn(page, 'cutting', 'fabric-A')).toMatch(/^1 sheet/);
    // [P14]: a queen mattress is 60 × 80 in.
    expect(await valueIn(page, 'batting', 'mattress')).toBe('60 × 80 in');
    await page.close();
  });
});
