import { readFileSync } from 'node:fs';
import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../tools/run.mjs';
import { pageOf, POLICIES, SCRIPT, SHEETS, STRICT } from '../hosts/hostile-pages.js';
import { keptBy, readingOf, settle, useAll, type Reading } from '../hosts/reading.js';
import { faint } from './axe.js';
import { picture } from './picture.js';
import { site, type Visited } from './site.js';

const { openWith } = site();
const LISTENING = readFileSync(`${ROOT}tests/hosts/listening.js`, 'utf8');
const calmReading = async (): Promise<Reading> => {
  const { page } = await openWith(pageOf(SHEETS));
  await page.evaluate(settle);
  const reading = await page.evaluate(readingOf);
  await page.close();
  return reading;
};

describe('A strict content security policy', () => {
  const heardOn = (page: Page): Promise<string[]> =>
    page.evaluate(() => (window as unknown as { faults: string[] }).faults);
  /** The page under this policy; what breaks it is written down before any script runs. */
  const under = (policy: string, script: string): Promise<Visited> => {
    return openWith(pageOf(SHEETS, { script }), { 'content-security-policy': policy }, { before: LISTENING });
  };

  it.each(POLICIES)('lets %s work, and has nothing to report', async (what, policy, script) => {
    const { page, faults } = await under(policy, script);
    await page.evaluate(settle);
    await picture(page, `policy ${what} 1280`);
    expect(await page.evaluate(readingOf)).toEqual(await calmReading());
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
  const FALLBACK = `<quilt-backing width="58" length="70" name="back">
      <p><strong>As the pattern has it:</strong> buy 3 3/4 yd of cloth 40 in wide, two panels of 66 in, one seam across.</p>
    </quilt-backing>
    <quilt-cutting><table>
      <tr><th>Fabric</th><th>Piece</th><th>Cut size</th><th>How many</th></tr>
      <tr><td>A</td><td>square</td><td>3 1/2 in</td><td>48</td></tr>
    </table></quilt-cutting>
    <quilt-worksheet><quilt-fabric letter="A"></quilt-fabric><h2>Its borders</h2>
      <quilt-borders borders="2"><p>Sides two of 2 1/2 × 72 1/2 in.</p></quilt-borders></quilt-worksheet>
    <quilt-top block="12" across="4" down="5"><p>20 blocks, 48 × 60 in.</p></quilt-top>
    <quilt-binding width="58" length="70"><p>8 strips.</p></quilt-binding>
    <quilt-batting width="58" length="70"><p>A twin package.</p></quilt-batting>`;

  it.each([320, 1280])('shows what the author wrote inside, at %d px, and nothing else', async (width) => {
    const { page } = await openWith(
      pageOf(FALLBACK, { css: 'body { background: #14161a; color: #ddd8cc }' }),
      { 'content-security-policy': "script-src 'none'" },
      { width },
    );
    await picture(page, `scripts blocked ${width}`);
    const shown = await page.evaluate(() => ({
      text: document.body.innerText.replace(/\s+/g, ' ').trim(),
      defined: [...document.querySelectorAll(':defined')].filter(({ localName }) => localName.includes('-'))
        .length,
      hidden: [...document.querySelectorAll('p, td, th, h2')].filter((at) => !at.checkVisibility()).length,
      tooWide: document.documentElement.scrollWidth > innerWidth,
    }));
    expect(shown).toEqual({
      text: 'As the pattern has it: buy 3 3/4 yd of cloth 40 in wide, two panels of 66 in, one seam across. Fabric Piece Cut size How many A square 3 1/2 in 48 Its borders Sides two of 2 1/2 × 72 1/2 in. 20 blocks, 48 × 60 in. 8 strips. A twin package.',
      defined: 0,
      hidden: 0,
      tooWide: false,
    });
    expect(await faint(page, 5)).toEqual([]);
    await page.close();
  });
});

describe('Two versions of the script', () => {
  const newer = readFileSync(`${ROOT}dist/quilt-reckoner.js`, 'utf8');
  const older = newer.replaceAll('Copy table', 'Copy it all');
  /** An older build that had only these elements. */
  const withOnly = (tags: string[]): string => `{
    const { define } = CustomElementRegistry.prototype;
    customElements.define = (name, made) => ${JSON.stringify(tags)}.includes(name) && define.call(customElements, name, made);
  } ${older}; delete customElements.define;`;
  const buttonsOf = (page: Page): Promise<string[]> =>
    page.evaluate(() =>
      [...document.querySelectorAll('*')].flatMap((at) =>
        [...(at.shadowRoot?.querySelectorAll('button') ?? [])]
          .map((button) => button.innerText)
          .filter((words) => words.startsWith('Copy'))
          .map((words) => `${at.localName}: ${words}`),
      ),
    );

  it('are two: only one says what only one says', () => {
    expect(older).not.toBe(newer);
  });

  it.each([
    ['the older first', [older, newer], () => 'Copy it all'],
    ['the newer first', [newer, older], () => 'Copy table'],
    [
      'an older one that had only some of them, first',
      [withOnly(['quilt-backing', 'quilt-top', 'quilt-fabric']), newer],
      (tag: string) => (/backing|top/.test(tag) ? 'Copy it all' : 'Copy table'),
    ],
    [
      'an older one that had only the worksheet, first',
      [withOnly(['quilt-worksheet']), newer],
      (tag: string) => (tag.includes('worksheet') ? 'Copy it all' : 'Copy table'),
    ],
  ] as const)('work side by side, %s', async (name, scripts, words) => {
    const { page, faults } = await openWith(pageOf(SHEETS, { script: '' }));
    for (const content of scripts) await page.addScriptTag({ content, type: 'module' });
    await page.evaluate(settle);
    await picture(page, `two versions ${name} 1280`);
    const reading = await page.evaluate(readingOf);
    expect({
      ...reading,
      words: reading.words.map((said) => said.replace('Copy it all', 'Copy table')),
    }).toEqual(await calmReading());
    const buttons = await buttonsOf(page);
    expect(buttons).toHaveLength(9);
    expect(buttons).toEqual(buttons.map((said) => `${said.split(':')[0]!}: ${words(said.split(':')[0]!)}`));
    // What is typed in a part of one version reaches the worksheet of the other.
    await page.evaluate(
      () => ((document.querySelector('quilt-top') as unknown as { across: string }).across = '6'),
    );
    await page.evaluate(settle);
    expect(
      await page.$eval(
        'quilt-binding',
        (at) => at.shadowRoot!.querySelector<HTMLInputElement>('[data-row=width]')!.value,
      ),
    ).toBe('82 in');
    expect(faults).toEqual([]);
    await page.close();
  });
});

describe('A page that swaps its content without reloading', () => {
  it('by fetching the next one and putting it in, script and all, leaves nothing behind', async () => {
    const { page, faults } = await openWith(pageOf(SHEETS));
    await page.evaluate(settle);
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
        await new Promise((done) => setTimeout(done, 30));
      }
    });
    await page.evaluate(settle);
    expect(await page.evaluate(readingOf)).toEqual(before);
    const kind = await page.evaluateHandle(() => customElements.get('quilt-backing')!.prototype as object);
    const living = async (): Promise<number> => {
      const objects = await page.queryObjects(kind);
      return objects.evaluate((all) => (all as unknown as unknown[]).length);
    };
    // Of the 13 the one on the page, and the last few; what is left behind goes when the browser comes to it.
    await expect.poll(living, { timeout: 10_000, interval: 250 }).toBeLessThanOrEqual(4);
    expect(faults).toEqual([]);
    await page.close();
  });
});
