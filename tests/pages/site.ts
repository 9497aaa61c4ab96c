import { type Browser, type Page } from 'puppeteer-core';
import { afterAll, beforeAll } from 'vitest';
import { settling } from '../hosts/reading.js';
import { findFirefox } from '../tools/browsers.mjs';
import { launchChromium, launchFirefox } from '../tools/launch.mjs';
import { serve } from '../tools/serve.mjs';

export interface Visit {
  width?: number;
  height?: number;
  dark?: boolean;
  /** Without scripts the page shows what the author wrote inside the elements. */
  scripts?: boolean;
  /** Warnings are faults too. */
  warnings?: boolean;
  /** A script that runs before any of the page's own. */
  before?: string;
}

/** A page, and everything that went wrong on it: errors thrown, errors logged, files not found. */
export interface Visited {
  page: Page;
  faults: string[];
}

/** Once every sheet on a page is drawn, every plan made, and nothing changes any more; batting may be `spoilt` then. */
export const atRest = (page: Page, spoilt = false): Promise<unknown> => page.evaluate(settling(spoilt));

/** The languages whose words are a file of their own, which comes after the English ones are shown. */
const WITH_FILES = ['de', 'en-GB'];

/** The same, on a page whose scripts come by and by, and that says while it is busy. */
export const whole = async (page: Page): Promise<void> => {
  await page.waitForFunction(() => !document.querySelector(':not(:defined), [aria-busy=true]'));
  await page.waitForFunction(
    (languages) =>
      languages.every((language) =>
        [...document.querySelectorAll(`:lang(${language})`)].every((at) => {
          const sheet = at.shadowRoot?.querySelector<HTMLElement>('section.sheet');
          return !sheet || sheet.lang === language;
        }),
      ),
    {},
    WITH_FILES,
  );
  await atRest(page);
};

type Engine = 'Chromium' | 'Firefox';

/** The browsers here that a driver opens whole pages in. Firefox's has no emulated media and no pages without scripts. */
export const DRIVEN: Engine[] = findFirefox() ? ['Chromium', 'Firefox'] : ['Chromium'];

/** The demo site and a browser, for the tests of one file or of one part of it. Open pages are closed after them. */
export const site = (engine: Engine = 'Chromium') => {
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serve>>;

  beforeAll(async () => {
    server = await serve();
    browser = await (engine === 'Chromium' ? launchChromium() : launchFirefox());
  });
  afterAll(async () => {
    await browser.close();
    server.close();
  });

  /** The whole address of a path of the site. */
  const addressOf = (path: string): string => new URL(path, server.address).href;

  /** Opens a path of the site (`/dist/quick.html`), or any whole address (`file:///…`). */
  const open = async (
    path: string,
    { width = 1280, height = 900, dark = false, scripts = true, warnings = false, before = '' }: Visit = {},
  ): Promise<Visited> => {
    // On a busy machine, Firefox's driver has been seen to lose a new tab before it says which one it is.
    const page = await browser
      .newPage()
      .catch((lost: unknown) => (engine === 'Firefox' ? browser.newPage() : Promise.reject(lost as Error)));
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(String(error)));
    const kinds = warnings ? ['error', 'warn'] : ['error'];
    page.on('console', (message) => kinds.includes(message.type()) && faults.push(message.text()));
    page.on('requestfailed', (request) => {
      // A browser asks for a page's icon by itself, and may be closed before it has it.
      if (!request.url().endsWith('/favicon.ico')) faults.push(`${request.url()} failed`);
    });
    page.on(
      'response',
      (response) => response.status() >= 400 && faults.push(`${response.url()}: ${response.status()}`),
    );
    if (engine === 'Chromium') {
      await page.setJavaScriptEnabled(scripts);
      await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: dark ? 'dark' : 'light' }]);
    }
    if (before) await page.evaluateOnNewDocument(before);
    await page.setViewport({ width, height });
    await page.goto(addressOf(path), { waitUntil: 'load' });
    return { page, faults };
  };

  /** A page of the site's own that holds this body, or is this document; `faults` then also has every warning. */
  const openWith = async (
    body: string,
    headers: Record<string, string> = {},
    visit: Visit = {},
  ): Promise<Visited> => {
    const visited = await open('/dist/third-party-licenses.txt', visit);
    const { page, faults } = visited;
    page.on('console', (message) => message.type() === 'warn' && faults.push(message.text()));
    await page.setRequestInterception(true);
    page.on('request', (request) => {
      const isMade = new URL(request.url()).pathname === '/made.html';
      const html = body.startsWith('<!doctype')
        ? body
        : `<!doctype html><html lang="en"><title>A page</title><link rel="icon" href="data:,"><body>${body}</body></html>`;
      void (isMade
        ? request.respond({ contentType: 'text/html; charset=utf-8', headers, body: html })
        : request.continue());
    });
    await page.goto(new URL('/made.html', page.url()).href, { waitUntil: 'load' });
    return visited;
  };

  return { open, openWith, addressOf };
};

/** Opens everything that the element of this selector has folded away. */
export const unfold = (page: Page, selector: string): Promise<void> =>
  page.$eval(selector, async (at) => {
    const sheet = at as HTMLElement & { updateComplete?: unknown };
    for (const button of sheet.shadowRoot!.querySelectorAll<HTMLElement>('button[aria-expanded=false]'))
      button.click();
    await sheet.updateComplete;
  });

/** The same for the element of this cell, if the cell is folded away. */
export const reveal = async (page: Page, cell: string): Promise<void> => {
  if (await page.$eval(cell, (at) => !!at.closest('.folded')))
    await unfold(page, cell.split(' >>> ').slice(0, -1).join(' >>> '));
};

/**
 * Writes a text in a cell over what stands there, all at once as a paste does, and leaves it by this key: what each letter on its way
 * does is for the tests that type (`tests/face/typing.browser.ts`, `keyboard.engines.ts`). Without the mouse: of many sheets those far
 * off take their height when they come near, and a click might go beside the cell.
 */
export const writeIn = async (
  page: Page,
  cell: string,
  text: string,
  key: 'Enter' | 'Tab' = 'Enter',
): Promise<void> => {
  await reveal(page, cell);
  await page.$eval(
    cell,
    (at, text) => {
      (at as HTMLInputElement).focus();
      (at as HTMLInputElement).select();
      document.execCommand('insertText', false, text);
    },
    text,
  );
  await page.keyboard.press(key);
};
