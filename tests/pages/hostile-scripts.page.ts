import { readFileSync } from 'node:fs';
import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../tools/run.mjs';
import { faint, pageOf, picture, readingOf, SCRIPT, settle, SHEETS } from './hostile.js';
import { site, type Visited } from './site.js';

const { openWith } = site();
const CLASSIC = '<script src="/dist/quilt-reckoner.classic.js" defer></script>';
const TAGS = ['backing', 'borders', 'cutting', 'batting', 'fabric', 'top', 'binding', 'worksheet'];
const ONE_BY_ONE = TAGS.map((name) => `<script type="module" src="/dist/quilt-${name}.js"></script>`).join(
  '',
);

const calmReading = async (): Promise<Awaited<ReturnType<typeof readingOf>>> => {
  const { page } = await openWith(pageOf(SHEETS));
  await settle(page);
  const reading = await readingOf(page);
  await page.close();
  return reading;
};

/** Everything a reader can set off: typing, folding, choosing, copying, the file, the print. */
const useAll = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const sheets = [
      ...document.querySelectorAll<HTMLElement & { updateComplete: Promise<boolean> }>('*'),
    ].filter((at) => 'result' in at);
    for (const sheet of sheets) {
      const root = sheet.shadowRoot!;
      const input = root.querySelector<HTMLInputElement>('input[type=text]')!;
      sheet.focus();
      input.value = `${input.value} `;
      input.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
      await sheet.updateComplete;
      for (const button of root.querySelectorAll('button')) button.click();
      await sheet.updateComplete;
    }
    await new Promise((done) => setTimeout(done, 200));
  });

/** What is kept in the browser, and what the window has that it had not before the scripts. */
const keptBy = (page: Page): Promise<Record<string, unknown>> =>
  page.evaluate(async () => ({
    cookies: document.cookie,
    stored: localStorage.length + sessionStorage.length + (await caches.keys()).length,
    databases: (await indexedDB.databases()).length,
    // Frames for printing stand in the window by number.
    globals: Object.getOwnPropertyNames(window).filter(
      (name) => !(window as unknown as { names: Set<string> }).names.has(name) && !/^\d+$/.test(name),
    ),
  }));

describe('A strict content security policy', () => {
  const STRICT = "default-src 'self'; require-trusted-types-for 'script'";
  const violationsOf = (page: Page): Promise<string[]> =>
    page.evaluate(() => (window as unknown as { violations: string[] }).violations);
  /** The page under this policy; what breaks it is written down before any script runs. */
  const under = (policy: string, script: string): Promise<Visited> => {
    const before = `addEventListener('securitypolicyviolation', ({ violatedDirective, sample, sourceFile }) =>
      (window.violations ??= []).push([violatedDirective, sample, sourceFile].join(' ')));
      window.violations = [];
      window.names = new Set(Object.getOwnPropertyNames(window)).add('names');`;
    return openWith(pageOf(SHEETS, { script }), { 'content-security-policy': policy }, { before });
  };

  it.each([
    ['the module', STRICT, SCRIPT],
    ['the classic script', STRICT, CLASSIC],
    ['one script an element', STRICT, ONE_BY_ONE],
    ['the module, where Lit’s own policy is the only one', `${STRICT}; trusted-types lit-html`, SCRIPT],
    [
      'the classic script, with nothing but scripts allowed',
      "default-src 'none'; script-src 'self'",
      CLASSIC,
    ],
  ])('lets %s work, and has nothing to report', async (what, policy, script) => {
    const { page, faults } = await under(policy, script);
    await settle(page);
    await picture(page, `policy ${what} 1280`);
    expect(await readingOf(page)).toEqual(await calmReading());
    await useAll(page);
    expect(
      await page.$eval(
        'quilt-worksheet',
        (at) => getComputedStyle(at.shadowRoot!.querySelector('td.swatch > *')!).backgroundColor,
      ),
    ).toBe('rgb(72, 80, 92)');
    expect(await violationsOf(page)).toEqual([]);
    expect(await keptBy(page)).toEqual({ cookies: '', stored: 0, databases: 0, globals: [] });
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
    await page.waitForFunction(() => (window as unknown as { violations: string[] }).violations.length >= 2);
    expect((await violationsOf(page)).join()).toMatch(/require-trusted-types-for.*style-src/);
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
      <quilt-borders borders="2"><p>Sides two of 2 1/2 × 72 1/2 in.</p></quilt-borders></quilt-worksheet>`;

  it.each([320, 1280])('shows what the author wrote inside, at %d px, and nothing else', async (width) => {
    const { page } = await openWith(
      pageOf(FALLBACK, { css: 'body { background: #14161a; color: #ddd8cc }' }),
      { 'content-security-policy': "script-src 'none'" },
      { width },
    );
    await picture(page, `scripts blocked ${width}`);
    const shown = await page.evaluate(() => ({
      text: document.body.innerText.replace(/\s+/g, ' ').trim(),
      defined: document.querySelectorAll(
        'quilt-backing:defined, quilt-cutting:defined, quilt-worksheet:defined',
      ).length,
      hidden: [...document.querySelectorAll('p, td, th, h2')].filter((at) => !at.checkVisibility()).length,
      tooWide: document.documentElement.scrollWidth > innerWidth,
    }));
    expect(shown).toEqual({
      text: 'As the pattern has it: buy 3 3/4 yd of cloth 40 in wide, two panels of 66 in, one seam across. Fabric Piece Cut size How many A square 3 1/2 in 48 Its borders Sides two of 2 1/2 × 72 1/2 in.',
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
    await settle(page);
    await picture(page, `two versions ${name} 1280`);
    const reading = await readingOf(page);
    expect({
      ...reading,
      words: reading.words.map((said) => said.replace('Copy it all', 'Copy table')),
    }).toEqual(await calmReading());
    const buttons = await buttonsOf(page);
    expect(buttons).toHaveLength(7);
    expect(buttons).toEqual(buttons.map((said) => `${said.split(':')[0]!}: ${words(said.split(':')[0]!)}`));
    // What is typed in a part of one version reaches the worksheet of the other.
    await page.evaluate(
      () => ((document.querySelector('quilt-top') as unknown as { across: string }).across = '6'),
    );
    await settle(page);
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
    await settle(page);
    const before = await readingOf(page);
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
    await settle(page);
    expect(await readingOf(page)).toEqual(before);
    const kind = await page.evaluateHandle(() => customElements.get('quilt-backing')!.prototype as object);
    const living = async (): Promise<number> => {
      const objects = await page.queryObjects(kind);
      return objects.evaluate((all) => (all as unknown as unknown[]).length);
    };
    // The one on the page, and at most the last that had the focus; what is left behind goes when the browser comes to it.
    await expect.poll(living, { timeout: 10_000, interval: 250 }).toBeLessThanOrEqual(2);
    expect(faults).toEqual([]);
    await page.close();
  });
});
