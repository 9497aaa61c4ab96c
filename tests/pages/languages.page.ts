import { describe, expect, it } from 'vitest';
import { site } from './site.js';

const { openWith } = site();

const SCRIPTS: [string, string][] = [
  ['quilt-reckoner.js', '<script type="module" src="/dist/quilt-reckoner.js?v=2"></script>'],
  ['quilt-reckoner.classic.js', '<script src="/dist/quilt-reckoner.classic.js" defer></script>'],
  [
    'quilt-backing.js and quilt-worksheet.js',
    ['backing', 'worksheet']
      .map((name) => `<script type="module" src="/dist/quilt-${name}.js"></script>`)
      .join(''),
  ],
];

const BACKING = '<quilt-backing width="58" length="70"></quilt-backing>';

describe('a page in German', () => {
  it.each(SCRIPTS)('from %s: asks for the German words, and shows them', async (_, script) => {
    const { page, faults } = await openWith(
      `${script}<div lang="de-AT">${BACKING}<quilt-worksheet>${BACKING}</quilt-worksheet></div>`,
    );
    const shown = (tag: string): Promise<string> =>
      page.$eval(tag, (at) => at.shadowRoot!.querySelector('section')!.textContent);
    await page.waitForFunction(() =>
      ['quilt-backing', 'quilt-worksheet'].every((tag) =>
        document.querySelector(tag)?.shadowRoot?.textContent.includes('Kaufen'),
      ),
    );
    // Geometry: 2 × 40 − 2 × 1/2 = 79 ≥ 78 in across; two panels of 66 in are 132 in, 3 3/4 yd.
    expect(await shown('quilt-backing')).toMatch(/Kaufen\s+3\s3\/4\syd/);
    expect(await shown('quilt-worksheet')).toContain('Rückseite');
    expect(await shown('quilt-worksheet')).not.toMatch(/Shopping|Backing|Fabric/);
    const marked = await page.$$eval('quilt-backing, quilt-worksheet', (all) =>
      all.map((at) => at.shadowRoot!.querySelector('section')!.lang),
    );
    expect(marked).toEqual(['de', 'de', 'de']);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('goes back to English where its language does', async () => {
    const { page } = await openWith(`${SCRIPTS[0]![1]}<div lang="de">${BACKING}</div>`);
    const says = (word: string): Promise<unknown> =>
      page.waitForFunction(
        (word) =>
          document
            .querySelector('quilt-backing')
            ?.shadowRoot?.querySelector('.buy')
            ?.textContent.includes(word),
        {},
        word,
      );
    await says('Kaufen');
    await page.$eval('div', (at) => (at.lang = 'en'));
    await says('Buy');
    await page.close();
  });
});

describe('a page in British English', () => {
  it('says wadding', async () => {
    const { page, faults } = await openWith(
      `${SCRIPTS[0]![1]}<quilt-batting lang="en-GB" width="58" length="70"></quilt-batting>`,
    );
    await page.waitForFunction(() =>
      document.querySelector('quilt-batting')?.shadowRoot?.textContent.includes('Wadding width'),
    );
    expect(faults).toEqual([]);
    await page.close();
  });
});

describe('a page in English', () => {
  it('asks for no other words', async () => {
    const { page } = await openWith(`${SCRIPTS[0]![1]}${BACKING}`);
    await page.waitForFunction(() => document.querySelector('quilt-backing')?.shadowRoot?.textContent);
    const asked = await page.evaluate(() =>
      performance.getEntriesByType('resource').map(({ name }) => new URL(name).pathname),
    );
    expect(asked.filter((path) => path.includes('words-'))).toEqual([]);
    await page.close();
  });
});
