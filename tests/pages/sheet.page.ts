import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { reveal, site, writeIn } from './site.js';

const { open, openWith } = site();
const TAGS = ['quilt-backing', 'quilt-binding', 'quilt-borders', 'quilt-batting'];
const GIVEN = 'width="58" length="70" borders="2, 4 1/2"';

const script = '<script type="module" src="/dist/quilt-reckoner.js"></script>';

const textOf = (page: Page, selector: string): Promise<string> =>
  page.$eval(selector, (at) => (at as HTMLElement).innerText.replace(/\s+/g, ' ').trim());
const valueOf = (page: Page, selector: string): Promise<string> =>
  page.$eval(selector, (at) =>
    ((at as Partial<HTMLInputElement>).value ?? at.textContent).replaceAll('\u00a0', ' ').trim(),
  );

describe('the page of `npm start`', () => {
  it('reads Buy 3 3/4 yd for the back of a 58 × 70 in quilt, and follows when the width becomes 150 cm', async () => {
    const { page, faults } = await open('/');
    const sheet = 'quilt-backing >>> ';
    expect(await textOf(page, `${sheet}[part=answer]`)).toMatch(/^Buy 3 3\/4 yd 2 panels/);
    await reveal(page, `${sheet}[data-row=needWidth]`);
    expect(await textOf(page, `${sheet}[part=sheet]`)).toContain('58 + 2 × 4 = 66 in');
    const ratio = (): Promise<number> =>
      page.$eval(`${sheet}svg`, (svg) => {
        const boxes = [...svg.querySelectorAll('path[d$=z]')].map((at) => at.getBoundingClientRect());
        const span = (from: number[], to: number[]): number => Math.max(...to) - Math.min(...from);
        return (
          span(
            boxes.map(({ left }) => left),
            boxes.map(({ right }) => right),
          ) /
          span(
            boxes.map(({ top }) => top),
            boxes.map(({ bottom }) => bottom),
          )
        );
      });
    expect(await ratio()).toBeCloseTo(66 / 78, 2);
    await writeIn(page, `${sheet}[data-row=width]`, '150 cm');
    // Geometry: 150 ÷ 2.54 + 8 = 67.055 in; two panels of that are 134.11 in, and 3 3/4 yd are 135.
    expect(await valueOf(page, `${sheet}[data-row=width]`)).toBe('150 cm');
    expect(await valueOf(page, `${sheet}[data-row=needWidth]`)).toBe('≈67 1/16 in');
    expect(await valueOf(page, `${sheet}[data-row=panels]`)).toBe('2');
    expect(await textOf(page, `${sheet}[part=answer]`)).toMatch(/^Buy 3 3\/4 yd/);
    expect(await ratio()).toBeCloseTo((150 / 2.54 + 8) / 78, 2);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('shows the author’s own words until the script runs, and the calculator afterwards', async () => {
    const shown = (page: Page): Promise<boolean[]> =>
      page.$$eval('quilt-backing', (all) => all.map((at) => at.firstElementChild!.checkVisibility()));
    const before = await open('/', { scripts: false });
    expect(new Set(await shown(before.page))).toEqual(new Set([true]));
    expect(await textOf(before.page, 'quilt-backing')).toContain('Buy 3 3/4 yd');
    const after = await open('/');
    expect(new Set(await shown(after.page))).toEqual(new Set([false]));
    await before.page.close();
    await after.page.close();
  });
});

describe('a page', () => {
  const loads: [what: string, scripts: string][] = [
    ['the same script twice', script + script],
    [
      'the script twice over, as from two addresses',
      `${script}<script type="module" src="/dist/quilt-reckoner.js?again"></script>`,
    ],
    ['the module and the classic script', `${script}<script src="/dist/quilt-reckoner.classic.js"></script>`],
    ['the classic script twice', '<script src="/dist/quilt-reckoner.classic.js"></script>'.repeat(2)],
    [
      'all, and one element by itself',
      `<script type="module" src="/dist/quilt-batting.js"></script>${script}`,
    ],
  ];
  it.each(loads)('may load %s', async (_, scripts) => {
    const { page, faults } = await openWith(
      scripts + TAGS.map((tag) => `<${tag} ${GIVEN}></${tag}>`).join(''),
    );
    for (const tag of TAGS) {
      await writeIn(page, `${tag} >>> [data-row=width]`, '60');
      expect(await textOf(page, `${tag} >>> [part=answer]`)).toMatch(/^Buy \d/);
      expect(await valueOf(page, `${tag} >>> [data-row=width]`)).toBe('60 in');
    }
    expect(faults).toEqual([]);
    await page.close();
  });

  it('may hold 50 of them, each with a quilt of its own', async () => {
    const tags = Array.from({ length: 50 }, (_, at) => TAGS[at % 4]!);
    const { page, faults } = await openWith(
      script +
        tags
          .map((tag, at) => `<${tag} length="70" width="${30 + at}" borders="2" name="n${at}"></${tag}>`)
          .join(''),
    );
    const needs = (): Promise<string[]> =>
      page.$$eval(TAGS.join(), (all) =>
        all.map(
          ({ shadowRoot }) =>
            shadowRoot!.querySelector<HTMLInputElement>('[data-row=width]')!.value +
            shadowRoot!.querySelector('[part=answer]')!.textContent.trim(),
        ),
      );
    const before = await needs();
    expect(before.map((text) => /^(\d+) in\s*Buy/.exec(text)?.[1])).toEqual(
      tags.map((_, at) => String(30 + at)),
    );
    await writeIn(page, 'quilt-backing[name=n48] >>> [data-row=width]', '99');
    const after = await needs();
    expect(after.flatMap((text, at) => (text === before[at] ? [] : [at]))).toEqual([48]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('may put one in before the script comes, with properties already set', async () => {
    const { page, faults } = await openWith('<main></main>');
    await page.evaluate(() => {
      const early = document.createElement('quilt-backing');
      Object.assign(early, {
        width: '58',
        length: '70',
        oneWay: true,
        measured: { washedWidth: '38' },
        shrinkage: '3',
      });
      document.querySelector('main')!.append(early);
    });
    await page.addScriptTag({ url: '/dist/quilt-reckoner.js', type: 'module' });
    await page.waitForFunction(() =>
      document.querySelector('quilt-backing')!.shadowRoot?.querySelector('[data-row]'),
    );
    expect(await valueOf(page, 'quilt-backing >>> [data-row=washedWidth]')).toBe('38 in');
    expect(await page.$eval('quilt-backing', (at) => [at.oneWay, at.result.buy !== undefined])).toEqual([
      true,
      true,
    ]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('may forbid inline styles and scripts', async () => {
    const { page, faults } = await openWith(
      script + TAGS.map((tag) => `<${tag} ${GIVEN}></${tag}>`).join(''),
      { 'content-security-policy': "default-src 'self'; img-src data:" },
    );
    for (const tag of TAGS) {
      expect(await textOf(page, `${tag} >>> [part=answer]`)).toMatch(/^Buy \d/);
      expect(await page.$eval(`${tag} >>> table`, (at) => getComputedStyle(at).borderCollapse)).toBe(
        'collapse',
      );
    }
    expect(faults).toEqual([]);
    await page.close();
  });
});

describe('on a phone', () => {
  it.each(TAGS)(
    '%s fits 320 px, fresh and with errors, and offers fraction keys that type where the caret is',
    async (tag) => {
      const { page, faults } = await openWith(
        `<meta name="viewport" content="width=device-width">${script}<main><${tag} ${GIVEN}></${tag}></main>`,
      );
      await page.setViewport({ width: 320, height: 640, isMobile: true, hasTouch: true });
      const fits = (): Promise<boolean> =>
        page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);
      expect(await fits()).toBe(true);
      const cell = `${tag} >>> [data-row=width]`;
      await (await page.$(cell))!.tap();
      const key = (await page.$(`${tag} >>> [role=group] button ::-p-text(½)`))!;
      const { width, height } = (await key.boundingBox())!;
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(24);
      await page.$eval(cell, (at) => (at as HTMLInputElement).setSelectionRange(2, 5));
      await key.tap();
      expect(await valueOf(page, cell)).toBe('58½');
      expect(await page.$eval(cell, (at) => (at.getRootNode() as ShadowRoot).activeElement === at)).toBe(
        true,
      );
      expect(await fits()).toBe(true);
      await writeIn(page, cell, 'a very long text that is no length at all, and goes on');
      await page.$eval(`${tag} >>> button[aria-expanded=false]`, (at) => at.click());
      expect(await fits()).toBe(true);
      expect(faults).toEqual([]);
      await page.close();
    },
  );
});
