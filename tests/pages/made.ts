import type { HTTPRequest, Page } from 'puppeteer-core';
import { readFileSync } from 'node:fs';
import { ROOT } from '../tools/run.mjs';
import { atRest, type site, type Visit, type Visited } from './site.js';

/** What a script of a made page waits for on its way: the page shown without it, or many turns in which it could be. */
type Late = Promise<void> | 'painted' | 'paintable';

export interface Served {
  code: string;
  late?: Late | undefined;
}

export const dist = (file: string, late?: Late): Served => ({
  code: readFileSync(`${ROOT}dist/${file}`, 'utf8'),
  late,
});

/** Until a reader sees words on the page. */
export const painted = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length);

/** Many turns of the page's own, between which it could have shown something. */
const manyTurns = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    for (let turn = 0; turn < 50; turn++) await new Promise((done) => setTimeout(done));
  });

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
    const { late } = script;
    if (late === 'painted') await painted(page);
    else if (late === 'paintable') await manyTurns(page);
    else await late;
    return request.respond({ contentType: 'text/javascript; charset=utf-8', body: script.code });
  };
  page.on('request', (request) => void respond(request));
  await page.evaluateOnNewDocument(() => {
    const shifts: number[] = [];
    const note = (entries: PerformanceEntryList): void =>
      void shifts.push(...entries.map((entry) => (entry as unknown as { value: number }).value));
    const observer = new PerformanceObserver((list) => note(list.getEntries()));
    observer.observe({ type: 'layout-shift', buffered: true });
    const shiftsSoFar = (): number[] => {
      note(observer.takeRecords());
      return shifts;
    };
    Object.assign(window, { shiftsSoFar });
  });
  await page.goto(new URL('/made.html', page.url()).href, { waitUntil });
  const shifts = async (): Promise<number[]> => {
    await atRest(page);
    // A frame's shifts are known after it.
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    return page.evaluate(() => (window as unknown as { shiftsSoFar(): number[] }).shiftsSoFar());
  };
  return { ...visited, shifts };
};
