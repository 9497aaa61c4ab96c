import type { HTTPRequest, Page } from 'puppeteer-core';
import { readFileSync } from 'node:fs';
import { ROOT } from '../tools/run.mjs';
import type { site, Visit, Visited } from './site.js';

/** A script of a made page: its code, and how long the network takes over it, or what it waits for. */
export interface Served {
  code: string;
  late?: number | Promise<void> | 'painted';
}

export const dist = (file: string, late: Served['late'] = 0): Served => ({
  code: readFileSync(`${ROOT}dist/${file}`, 'utf8'),
  late,
});

/** Until a reader sees words on the page. */
export const painted = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length);

/** An open page on which every layout shift is counted from its first moment. */
export interface Watched extends Visited {
  /** Every shift of the page so far, once it has come to rest. */
  shifts(): Promise<number[]>;
}

/** Opens a page made of this HTML and these scripts, by their paths. */
export const openMade = async (
  open: ReturnType<typeof site>['open'],
  html: string,
  scripts: Record<string, Served>,
  visit: Visit = {},
  waitUntil: 'load' | 'domcontentloaded' = 'load',
): Promise<Watched> => {
  const visited = await open('/dist/third-party-licenses.txt', visit);
  const { page, faults } = visited;
  page.on('console', (message) => message.type() === 'warn' && faults.push(message.text()));
  await page.setRequestInterception(true);
  const respond = async (request: HTTPRequest): Promise<void> => {
    const { pathname } = new URL(request.url());
    const script = scripts[pathname];
    if (pathname === '/made.html')
      return request.respond({ contentType: 'text/html; charset=utf-8', body: html });
    if (!script) return request.continue();
    const { late = 0 } = script;
    if (typeof late === 'number') await new Promise((done) => setTimeout(done, late));
    else await (late === 'painted' ? painted(page) : late);
    return request.respond({ contentType: 'text/javascript; charset=utf-8', body: script.code });
  };
  page.on('request', (request) => void respond(request));
  await page.evaluateOnNewDocument(() => {
    const shifts: number[] = [];
    Object.assign(window, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto(new URL('/made.html', page.url()).href, { waitUntil });
  const shifts = async (): Promise<number[]> => {
    // Observers hear of a frame's shifts after it; plans made in the background come later still.
    await page.evaluate(() => new Promise((done) => setTimeout(done, 600)));
    return page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
  };
  return { ...visited, shifts };
};
