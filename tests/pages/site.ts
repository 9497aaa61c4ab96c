import { type Browser, type Page } from 'puppeteer-core';
import { afterAll, beforeAll } from 'vitest';
import { launchChromium } from '../tools/chromium.mjs';
import { serve } from '../tools/serve.mjs';

export interface Visit {
  width?: number;
  height?: number;
  dark?: boolean;
  /** Without scripts the page shows what the author wrote inside the elements. */
  scripts?: boolean;
}

/** A page, and everything that went wrong on it: errors thrown, errors logged, files not found. */
export interface Visited {
  page: Page;
  faults: string[];
}

/** The demo site and a browser, for the tests of one file. Open pages are closed after them. */
export const site = () => {
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serve>>;

  beforeAll(async () => {
    server = await serve();
    browser = await launchChromium();
  });
  afterAll(async () => {
    await browser.close();
    server.close();
  });

  return {
    /** Opens a path of the site (`/dist/quick.html`), or any whole address (`file:///…`). */
    async open(
      path: string,
      { width = 1280, height = 900, dark = false, scripts = true }: Visit = {},
    ): Promise<Visited> {
      const page = await browser.newPage();
      const faults: string[] = [];
      page.on('pageerror', (error) => faults.push(String(error)));
      page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
      page.on('requestfailed', (request) => faults.push(`${request.url()} failed`));
      page.on(
        'response',
        (response) => response.status() >= 400 && faults.push(`${response.url()}: ${response.status()}`),
      );
      await page.setJavaScriptEnabled(scripts);
      await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: dark ? 'dark' : 'light' }]);
      await page.setViewport({ width, height });
      await page.goto(new URL(path, server.address).href, { waitUntil: 'load' });
      return { page, faults };
    },
  };
};
