import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { site, whole, type Visited } from './site.js';

const { open, openWith } = site();

const RECIPES = [
  ['post', 'Put it in a post'],
  ['shop', 'Sell by the eighth'],
  ['batting', 'My own batting list'],
  ['german', 'In German'],
  ['metric', 'For a metric page'],
  ['lock', 'Lock what readers may not change'],
  ['kit', 'A kit for a class'],
  ['working', 'The working open from the start'],
  ['whole', 'A whole quilt, one shopping list'],
  ['sew-along', 'Run a sew-along'],
  ['colours', 'In your own colours'],
] as const;

/** One page, which nothing of all this changes. */
let recipes: Visited;
beforeAll(async () => {
  recipes = await open('/recipes.html');
  await whole(recipes.page);
});
afterAll(async () => {
  expect(recipes.faults).toEqual([]);
  await recipes.page.close();
});

const snippetOf = (page: Page, selector: string): Promise<string> =>
  page.$eval(`${selector} pre`, (at) => at.textContent);

/** What all calculators in a place hold and say, as text, without what only the first of a page says. */
const held = (page: Page, place: string): Promise<string[]> =>
  page.$$eval(`${place} *`, (all) =>
    (all as HTMLElementTagNameMap['quilt-top'][])
      .filter((at) => 'result' in at)
      .map((at) => {
        const section = at.shadowRoot!.querySelector('section')!;
        // An announcement for screen readers comes a second after a plan is ready.
        const announced = section.querySelector<HTMLElement>('.unseen')?.innerText ?? '';
        const shown = section.innerText.replace(announced, '').trimEnd();
        return `${JSON.stringify(at.result)} ${shown}`;
      })
      .map((text) => text.replace(/\s*(Amounts are for planning|Die Mengen dienen der Planung)[^\n]*/, '')),
  );

describe('the recipes', () => {
  it('are those that the list at the top leads to', async () => {
    const { page } = recipes;
    expect(
      await page.$$eval('.recipe', (all) => all.map((at) => [at.id, at.querySelector('h2')!.innerText])),
    ).toEqual(RECIPES.map((recipe) => [...recipe]));
    expect(
      await page.$$eval('.contents a', (all) => all.map((at) => [at.hash.slice(1), at.innerText])),
    ).toEqual(RECIPES.map((recipe) => [...recipe]));
  });

  it.each(RECIPES)('%s: the snippet is what runs beside it', async (id) => {
    const { page } = recipes;
    const snippet = await snippetOf(page, `#${id}`);
    const line = await snippetOf(page, '#loader');
    expect(snippet.includes(line)).toBe(id === 'post');
    const live = await held(page, `#${id} .live`);
    expect(live.length).toBeGreaterThan(0);
    // On another page, with nothing else but the line for every page, its files where the build put them.
    const text = (id === 'post' ? '' : line) + snippet;
    const pasted = await openWith(`<main class="live">${text.replace('/quilt-reckoner/', '/dist/')}</main>`);
    await whole(pasted.page);
    // In the same room, so that it is laid out the same.
    expect(await held(pasted.page, 'main')).toEqual(live);
    expect(pasted.faults).toEqual([]);
    await pasted.page.close();
  });

  it('have an answer each, with nothing wrong', async () => {
    const { page } = recipes;
    const results = await page.$$eval('.live *', (all) =>
      (all as HTMLElementTagNameMap['quilt-top'][])
        .filter((at) => 'result' in at)
        .map(({ localName, result }) => `${localName}: ${result.errors?.[0]?.message ?? result.buy!.text}`),
    );
    expect(results.length).toBeGreaterThan(RECIPES.length);
    for (const result of results) expect(result).toMatch(/: \d/);
  });

  it('copy by the keyboard what they show', async () => {
    const { page } = recipes;
    await page
      .browserContext()
      .overridePermissions(new URL(page.url()).origin, ['clipboard-read', 'clipboard-sanitized-write']);
    await page.bringToFront();
    for (const id of ['#loader', '#post', '#shop']) {
      await page.focus(`${id} .copying button`);
      await page.keyboard.press('Enter');
      await page.waitForFunction((id) => document.querySelector(`${id} [role=status]`)!.textContent, {}, id);
      expect(await page.$eval(`${id} .copying [role=status]`, (at) => at.textContent)).toBe('Copied.');
      expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(await snippetOf(page, id));
    }
  });

  it('do what their words say', async () => {
    const { page } = recipes;
    const shadow = (id: string): string =>
      `#${id} .live quilt-${{ german: 'binding', metric: 'backing' }[id]!} >>> `;
    // The shop: the form sends the amount to buy.
    await page.$eval('#shop form button', (at) => (at as HTMLElement).click());
    const yards = await page.$eval('#shop quilt-backing', (at) => at.value);
    expect(await page.$eval('#sent', (at) => at.textContent)).toBe(`The form sends yards=${yards}`);
    // Geometry: 3 3/4 yd is 3.75.
    expect(yards).toBe('3.75');
    // The cheapest package that is large enough for 66 × 78 in: the middle one of 72 × 90.
    expect(await page.$eval('#batting quilt-batting', (at) => at.result.buy!.text)).toContain('middle');
    expect(await page.$eval(`${shadow('german')}[part~=answer]`, (at) => at.textContent)).toMatch(
      /Kaufen\s+\d,\d\sm\s/,
    );
    expect(await page.$eval(`${shadow('metric')}[part~=amount]`, (at) => at.textContent)).toMatch(/\d\sm$/);
    // What is locked has no cell.
    const cells = await page.$$eval('#lock quilt-borders >>> input', (all) =>
      all.map((at) => at.dataset.row),
    );
    expect(cells).toContain('width');
    expect(cells).not.toContain('borders');
    expect(await page.$eval('#kit quilt-worksheet', (at) => at.shadowRoot!.textContent)).toMatch(
      /For 30 kits/,
    );
    // Shown, not only there.
    expect(await page.$eval('#working quilt-binding >>> [data-row=need]', (at) => at.checkVisibility())).toBe(
      true,
    );
  });
});
