import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { site, writeIn } from './site.js';

const { open } = site();
const TAGS = ['quilt-top', 'quilt-borders', 'quilt-batting', 'quilt-backing', 'quilt-binding'] as const;

interface Printed {
  buy: string;
  summary: string;
  cuts: string[];
  notes: string[];
}

/** The author's own words inside an element, in the parts they are printed in. */
const printed = (page: Page, tag: string): Promise<Printed> =>
  page.$eval(tag, (element) => {
    const text = (at: Element): string => at.textContent.replace(/\s+/g, ' ').trim();
    return {
      buy: text(element.querySelector('.buy')!),
      summary: text(element.querySelector('.summary')!),
      cuts: [...element.querySelectorAll('li')].map(text),
      notes: [...element.querySelectorAll('.note')].map(text),
    };
  });

describe('the tutorial', () => {
  it.each(TAGS)('prints inside %s exactly what the element reckons', async (tag) => {
    const { page, faults } = await open('/tutorial.html');
    const live = await page.$eval(tag, (element) => {
      const {
        buy,
        summary,
        cuts = [],
        notes = [],
      } = element.result as Extract<typeof element.result, { cuts: unknown }>;
      return {
        buy: `Buy ${buy.text}`,
        summary,
        cuts: cuts.map(({ count, piece, text }) => `${count} × ${piece}, ${text}`),
        notes: [...notes],
      };
    });
    expect(await printed(page, tag)).toEqual(live);
    // No number is printed anywhere else in there, so all of them were compared.
    const loose = await page.$eval(tag, (element) => {
      const copy = element.cloneNode(true) as Element;
      for (const at of copy.querySelectorAll('.buy, .summary, li, .note')) at.remove();
      return copy.textContent;
    });
    expect(loose).not.toMatch(/\d/);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('hands each step the size that the step before ends with', async () => {
    const { page } = await open('/tutorial.html');
    const sizes = await page.evaluate(() => {
      const at = (tag: string): { width: string; length: string; result: { finished?: unknown } } =>
        document.querySelector<
          HTMLElement & { width: string; length: string; result: { finished?: unknown } }
        >(tag)!;
      const given = (tag: string): unknown => ({ width: at(tag).width, length: at(tag).length });
      return {
        top: [at('quilt-top').result.finished, given('quilt-borders')],
        rest: [
          at('quilt-borders').result.finished,
          ...['quilt-batting', 'quilt-backing', 'quilt-binding'].map(given),
        ],
      };
    });
    // 4 × 12 + 5 × 2 by 5 × 12 + 6 × 2; then 2 × (2 + 5) more each way.
    for (const size of sizes.top) expect(size).toEqual({ width: '58', length: '72' });
    for (const size of sizes.rest) expect(size).toEqual({ width: '72', length: '86' });
    await page.close();
  });

  it('uses a changed size in the steps after it, and keeps what the reader measured there before', async () => {
    const { page, faults } = await open('/tutorial.html');
    const write = (tag: string, row: string, text: string): Promise<void> =>
      writeIn(page, `${tag} >>> input[data-row=${row}]`, text);
    const sizes = (): Promise<string[]> =>
      page.evaluate(() =>
        ['borders', 'batting', 'backing', 'binding'].map((name) => {
          const { width, length } = document.querySelector<HTMLElement & { width: string; length: string }>(
            `quilt-${name}`,
          )!;
          return `${width} × ${length}`;
        }),
      );
    // Five blocks of 12 in and six sashings of 2 in: 72; with 2 × (2 + 5) more each way 86.
    await write('quilt-top', 'across', '5');
    expect(await sizes()).toEqual(['72 × 72', '86 × 86', '86 × 86', '86 × 86']);
    // A top measured at 71 in is 85 with its borders, whatever the blocks say.
    await write('quilt-borders', 'width', '71');
    expect(await sizes()).toEqual(['71 × 72', '85 × 86', '85 × 86', '85 × 86']);
    // A change that does not change the size hands nothing on. An unreadable one does not either.
    await write('quilt-top', 'fabricWidth', '42');
    await write('quilt-top', 'down', 'many');
    expect(await sizes()).toEqual(['71 × 72', '85 × 86', '85 × 86', '85 × 86']);
    await write('quilt-binding', 'width', '84 1/2');
    await write('quilt-borders', 'fabricWidth', '42');
    expect(await sizes()).toEqual(['71 × 72', '85 × 86', '85 × 86', '84 1/2 × 86']);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('teaches without scripts: every step with its sum, its cuts and its cautions', async () => {
    const { page, faults } = await open('/tutorial.html', { scripts: false, width: 320 });
    const words = (await page.$eval('body', (body) => body.innerText)).replace(/\s+/g, ' ');
    for (const tag of TAGS) {
      const { buy, summary, cuts, notes } = await printed(page, tag);
      for (const line of [buy, summary, ...cuts, ...notes]) expect(words).toContain(line);
    }
    expect(words).toMatch(/close the rotary cutter after every cut/);
    expect(words).toMatch(/Babies sleep most safely/);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('lets its reader change what is hers, and keeps what is the pattern’s', async () => {
    const { page, faults } = await open('/tutorial.html');
    for (const [tag, locked, free] of [
      ['quilt-top', 'block', 'across'],
      ['quilt-borders', 'borders', 'width'],
      ['quilt-backing', 'overage', 'fabricWidth'],
    ]) {
      expect(await page.$(`${tag} >>> span[data-row=${locked}]`)).not.toBe(null);
      expect(await page.$(`${tag} >>> input[data-row=${free}]`)).not.toBe(null);
    }
    const before = await page.$eval('quilt-backing', ({ result }) => result.buy!.text);
    await writeIn(page, 'quilt-backing >>> input[data-row=fabricWidth]', '106');
    expect(await page.$eval('quilt-backing', ({ result }) => result.buy!.text)).not.toBe(before);
    expect(faults).toEqual([]);
    await page.close();
  });
});
