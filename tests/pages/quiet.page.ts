import { readFileSync } from 'node:fs';
import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { NAMES } from '../calculators.js';
import { filesIn } from '../tools/files.mjs';
import { ROOT } from '../tools/run.mjs';
import { site } from './site.js';

const { openWith } = site();

/** So many lines that the plan is made in the background. */
const LONG_LIST = Array.from(
  { length: 12 },
  (_, at) =>
    `<tr><td>${at % 2 ? 'A' : 'B'}</td><td>piece ${at}</td><td>${2 + at / 4} in</td><td>25</td></tr>`,
).join('');

const EVERYTHING = `
  <quilt-backing width="58" length="70"></quilt-backing>
  <quilt-batting width="58" length="70"></quilt-batting>
  <quilt-sleeve width="58"></quilt-sleeve>
  <quilt-block block="6" chart="A B; B A"></quilt-block>
  <quilt-cutting sheet="fat-quarter"><table>
    <tr><th>Fabric</th><th>Piece</th><th>Cut size</th><th>How many</th></tr>${LONG_LIST}
  </table></quilt-cutting>
  <quilt-worksheet currency="EUR" kits="12">
    <quilt-fabric letter="A" name="Slate Roof" price="14.25" swatch="#48505c"></quilt-fabric>
    <quilt-top block="12" across="4" down="5" sashing="2" fabric="A"></quilt-top>
    <quilt-borders borders="2, 4" fabric="A"></quilt-borders>
    <quilt-binding fabric="A" cut="bias"></quilt-binding>
  </quilt-worksheet>`;

/** What a page did besides showing itself. */
interface Doings {
  requests: string[];
  /** Ways to talk to somebody that were called, by name. */
  calls: string[];
  kept: Record<string, unknown>;
  /** New names on the window and on shared objects, and nodes in the page that nobody wrote there. */
  names: string[];
  elements: string[];
}

/** Watches a page from before its first script; reloads it so. */
const watch = async (page: Page): Promise<() => Promise<Doings>> => {
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.evaluateOnNewDocument(() => {
    // The print dialog would wait for somebody. A sheet is printed from a frame, and the page counts.
    window.print = () => {
      const counter = top as unknown as Record<symbol, number>;
      counter[Symbol.for('printed')] = (counter[Symbol.for('printed')] ?? 0) + 1;
      dispatchEvent(new Event('afterprint'));
    };
    // A browser without a window is not always let at the clipboard.
    Object.assign(navigator.clipboard, { writeText: () => Promise.resolve() });
    const calls: string[] = [];
    const note = (owner: object, name: string): void => {
      const own = Reflect.get(owner, name) as ((...given: unknown[]) => unknown) | undefined;
      if (!own) return;
      Reflect.set(
        owner,
        name,
        new Proxy(own, {
          apply: (work, self, given) => (
            calls.push(name),
            Reflect.apply<unknown, unknown[], unknown>(work, self, given)
          ),
          construct: (work, given) => (calls.push(name), Reflect.construct(work, given) as object),
        }),
      );
    };
    const talk =
      'fetch XMLHttpRequest WebSocket EventSource Worker SharedWorker BroadcastChannel open postMessage eval';
    for (const name of talk.split(' ')) note(window, name);
    note(Navigator.prototype, 'sendBeacon');
    const shared = (): string[] =>
      Object.entries({
        window,
        document,
        Node,
        Element,
        HTMLElement,
        Array,
        Object,
        String,
        Promise,
        navigator,
      }).flatMap(([owner, value]) =>
        [value, (value as { prototype?: object }).prototype ?? {}].flatMap((at) =>
          Object.getOwnPropertyNames(at).map((name) => `${owner}.${name}`),
        ),
      );
    const elements = (): string[] =>
      [...document.documentElement.children, ...document.head.children, ...document.body.children].map(
        ({ localName }) => localName,
      );
    const before = new Set(shared());
    let written: string[];
    addEventListener('DOMContentLoaded', () => (written = elements()));
    Object.assign(window, {
      [Symbol.for('doings')]: () => ({
        calls,
        // The browser's driver has names of its own.
        names: shared().filter(
          (name) =>
            !before.has(name) &&
            !name.endsWith('ariaQuerySelector') &&
            !name.endsWith('ariaQuerySelectorAll'),
        ),
        elements: elements().filter((name, at) => name !== written[at]),
      }),
    });
  });
  const session = await page.createCDPSession();
  await session.send('Browser.setDownloadBehavior', { behavior: 'deny' });
  await page.reload();
  return async () => {
    const kept = await page.evaluate(async () => ({
      local: { ...localStorage },
      session: { ...sessionStorage },
      cookie: document.cookie,
      databases: (await indexedDB.databases()).map(({ name }) => name),
      caches: await caches.keys(),
      workers: (await navigator.serviceWorker.getRegistrations()).length,
      address: location.search + location.hash,
      name: window.name,
    }));
    const own = await page.evaluate(() => {
      const told = (window as unknown as Record<symbol, () => Pick<Doings, 'calls' | 'names' | 'elements'>>)[
        Symbol.for('doings')
      ]!;
      return told();
    });
    return { requests, kept, ...own };
  };
};

const NOTHING_KEPT = {
  ...{ local: {}, session: {}, cookie: '', databases: [], caches: [], workers: 0, address: '', name: '' },
};

/** Once a calculator has an answer that no plan will change. */
const answered = (page: Page, tag: string): Promise<unknown> =>
  page.waitForFunction(
    (tag) => {
      const { result } = document.querySelector<HTMLElement & { result?: { buy?: object } }>(tag) ?? {};
      return result?.buy && !JSON.stringify(result).includes('being planned');
    },
    {},
    tag,
  );

/** Uses everything there is to use: cells, choices, folds, keys, copying, files, paper, and a form’s reset. */
const useAll = async (page: Page): Promise<void> => {
  for (const name of NAMES) {
    const sheet = `quilt-${name} >>> `;
    await answered(page, `quilt-${name}`);
    const press = (words: string): Promise<void> =>
      page.$eval(
        `quilt-${name}`,
        (at, words) => {
          const buttons = [...at.shadowRoot!.querySelectorAll('button')];
          buttons.find(({ textContent }) => textContent.trim().startsWith(words))!.click();
        },
        words,
      );
    await press('Show the working');
    await press('Change settings');
    // The first cell that holds something.
    await page.$eval(`quilt-${name}`, (at) =>
      [...at.shadowRoot!.querySelectorAll<HTMLInputElement>('input[type=text]')]
        .find(({ value }) => value)!
        .focus(),
    );
    await page.keyboard.press('End');
    await page.keyboard.type(' ');
    await page.keyboard.down('Alt');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.up('Alt');
    await page.keyboard.press('Enter');
    const box = await page.$(`${sheet}input[type=checkbox]`);
    await box?.evaluate((at) => (at as HTMLElement).click());
    await answered(page, `quilt-${name}`);
    await press('Copy or download');
    await press('Copy table');
    await page.waitForFunction(
      (tag) =>
        document.querySelector(tag)!.shadowRoot!.querySelector('[role=status]')!.textContent === 'Copied.',
      {},
      `quilt-${name}`,
    );
    await press('Download CSV');
    await press('Print');
    await press('Hide settings');
  }
  // Each sheet prints once what its paper needs is loaded, and its frame goes away after that.
  await page.waitForFunction(
    (sheets) =>
      (top as unknown as Record<symbol, number>)[Symbol.for('printed')] === sheets &&
      !document.querySelector('iframe'),
    {},
    NAMES.length,
  );
};

const LOADS: [string, string, string[]][] = [
  [
    'the module',
    '<script type="module" src="/dist/quilt-reckoner.js"></script>',
    ['/dist/quilt-reckoner.js'],
  ],
  [
    'the classic script',
    '<script src="/dist/quilt-reckoner.classic.js"></script>',
    ['/dist/quilt-reckoner.classic.js'],
  ],
  [
    'each element’s own script',
    filesIn('dist')
      .filter((path) => /^dist\/quilt-(?!reckoner)[a-z]+\.js$/.test(path))
      .map((path) => `<script type="module" src="/${path}"></script>`)
      .join(''),
    filesIn('dist')
      .filter((path) =>
        /^dist\/(chunks\/(?!spreadsheet-|picture-|words-).+|quilt-(?!reckoner)[a-z]+)\.js$/.test(path),
      )
      .map((path) => `/${path}`),
  ],
];

/** What draws the whole quilt is loaded when somebody asks for it, and she does. */
const PICTURE = filesIn('dist')
  .filter((path) => path.startsWith('dist/chunks/picture-'))
  .map((path) => `/${path}`);

describe('a page with all the elements, all used', () => {
  it.each(LOADS)(
    '%s: asks for nothing but its own files, keeps nothing, and adds no name',
    async (_, script, own) => {
      const { page, faults } = await openWith(script + EVERYTHING);
      const doings = await watch(page);
      await useAll(page);
      const { requests, calls, kept, names, elements } = await doings();
      const { origin } = new URL(page.url());
      const asked = requests.filter((url) => !url.startsWith('data:') && !url.startsWith(`blob:${origin}/`));
      const files = ['/made.html', ...own, ...PICTURE];
      expect([...new Set(asked)].sort()).toEqual(files.map((path) => origin + path).sort());
      expect(calls).toEqual([]);
      expect(kept).toEqual(NOTHING_KEPT);
      expect(names).toEqual([]);
      expect(elements).toEqual([]);
      expect(faults).toEqual([]);
      await page.close();
    },
  );

  it('is watched well: a page that does all of it is caught at each', async () => {
    const { page } = await openWith(
      `${LOADS[0]![1]}<p>Words</p><script>
        addEventListener('load', async () => {
          localStorage.a = 1; sessionStorage.a = 1; document.cookie = 'a=1'; name = 'a'; location.hash = 'a';
          indexedDB.open('a'); await caches.open('a');
          fetch('/dist/reckon.js'); navigator.sendBeacon('/dist/reckon.js', 'a'); eval('1');
          window.made = 1; Array.prototype.made = 1; document.body.append(document.createElement('hr'));
          document.title = 'done';
        });
      </script>`,
    );
    const doings = await watch(page);
    await page.waitForFunction(() => document.title === 'done');
    await page.waitForFunction(async () => (await indexedDB.databases()).length);
    const { requests, calls, kept, names, elements } = await doings();
    expect(requests.some((url) => url.endsWith('/dist/reckon.js'))).toBe(true);
    expect(calls).toEqual(['fetch', 'sendBeacon', 'eval']);
    for (const [key, value] of Object.entries(NOTHING_KEPT))
      if (key !== 'workers') expect((kept as typeof NOTHING_KEPT)[key as 'local'], key).not.toEqual(value);
    expect(names).toEqual(['window.made', 'Array.made']);
    expect(elements).toEqual(['hr']);
    await page.close();
  });
});

describe('the scripts that are shipped', () => {
  const scripts = filesIn('dist').filter((path) => /\.(js|html)$/.test(path));
  const NEVER =
    /\b(fetch|eval|importScripts|import)\s*\(|\bnew Function\b|\b(XMLHttpRequest|WebSocket|EventSource|sendBeacon|RTCPeerConnection|SharedWorker|serviceWorker|BroadcastChannel|localStorage|sessionStorage|indexedDB|cookieStore|caches)\b|\.cookie\b|\bnew Worker\b/;

  it('are all looked at', () => expect(scripts.length).toBeGreaterThan(15));

  /** What writes spreadsheets, and other languages, are loaded when they are asked for, from beside the script; the quick page has them inside. */
  const LATE =
    /import\((new URL\("(chunks\/)?(spreadsheet|picture|words)-[\w-]+\.js",|'\.\/(spreadsheet|picture)-file\.js'\)|'\.\.\/words\/[\w-]+\/[\w-]+\.js'\))/g;
  /** Its library would have a worker press a file of a megabyte; these have a few pages. */
  const hasZip = (path: string): boolean => /spreadsheet-|quick\.html$/.test(path);

  it.each(scripts)('%s names no way to send, to keep, or to run text', (path) => {
    let own = readFileSync(ROOT + path, 'utf8').replace(LATE, '');
    // To load what a page needs is all that the loader is for.
    if (path.endsWith('quilt-loader.js')) own = own.replace(/import\(new URL\([^()]*\)\.href\)/g, '');
    expect(NEVER.exec(hasZip(path) ? own.replace('new Worker', '') : own)?.[0]).toBeUndefined();
  });

  it.each([
    'fetch(a)',
    'eval (a)',
    'new Function("a")',
    'import("a")',
    'document.cookie="a"',
    'localStorage.a',
    'new Worker(a)',
  ])('would be caught at %s', (code) => expect(code).toMatch(NEVER));
});
