import { existsSync, readFileSync } from 'node:fs';
import type { HTTPRequest, Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../tools/run.mjs';
import { site } from './site.js';

const { open } = site();

/** Another origin than the page's, and a folder in it. */
const ELSEWHERE = 'http://scripts.test/some/where/';
const LOADER = `${ELSEWHERE}quilt-loader.js`;
/** What a page's strict policy knows its own scripts by. */
const NONCE = 'made-for-this-answer';

/** What a script of dist/ imports, with all that this imports. */
const importedBy = (name: string): string[] => {
  const code = readFileSync(`${ROOT}dist/${name}`, 'utf8');
  return Array.from(code.matchAll(/(?:from|import)\s?"\.\/([^"]+)"/g), ([, path = '']) => {
    const found = name.startsWith('chunks/') ? `chunks/${path}` : path;
    return [found, ...importedBy(found)];
  }).flat();
};
const neededBy = (...tags: string[]): string[] =>
  [...new Set(tags.flatMap((tag) => [`${tag}.js`, ...importedBy(`${tag}.js`)]))].sort();

const answer = (request: HTTPRequest): Promise<void> => {
  const path = `${ROOT}dist/${new URL(request.url()).pathname.replace('/some/where/', '')}`;
  return request.respond({
    status: existsSync(path) ? 200 : 404,
    contentType: 'text/javascript',
    headers: { 'access-control-allow-origin': '*' },
    body: existsSync(path) ? readFileSync(path) : '',
  });
};

interface Loading {
  page: Page;
  faults: string[];
  /** What was asked for, besides the page and the loader. */
  asked: string[];
}

/** A page with this in it that loads the loader; what this asks for comes only once that many have been asked for. A policy goes with the page. */
const loading = async (body: string, { loader = LOADER, atOnce = 0, policy = '' } = {}): Promise<Loading> => {
  const { page, faults } = await open('/dist/third-party-licenses.txt');
  const asked: string[] = [];
  const held: HTTPRequest[] = [];
  await page.setRequestInterception(true);
  page.on('request', (request) => {
    const url = request.url();
    if (new URL(url).pathname === '/made.html')
      return void request.respond({
        contentType: 'text/html; charset=utf-8',
        headers: policy ? { 'content-security-policy': policy } : {},
        body: `<!doctype html><html lang="en"><title>A page</title><link rel="icon" href="data:,"><script type="module" nonce="${NONCE}" src="${loader}"></script><body>${body}</body></html>`,
      });
    if (!url.startsWith(ELSEWHERE)) return void request.continue();
    if (url === loader) return void answer(request);
    asked.push(url.replace(ELSEWHERE, ''));
    held.push(request);
    if (asked.length >= atOnce) for (const one of held.splice(0)) void answer(one);
  });
  await page.goto(new URL('/made.html', page.url()).href, { waitUntil: 'load' });
  return { page, faults, asked };
};

const defined = (page: Page, ...tags: string[]): Promise<void[]> =>
  page.evaluate(async (tags) => {
    await Promise.all(tags.map((tag) => customElements.whenDefined(tag)));
    return [];
  }, tags);

describe('quilt-loader.js', () => {
  it('loads what the elements of a page need, from another origin, in one round and nothing else', async () => {
    const needed = neededBy('quilt-backing', 'quilt-top');
    const { page, faults, asked } = await loading(
      '<quilt-backing width="58" length="70"></quilt-backing><p><quilt-top></quilt-top></p>',
      { atOnce: needed.length },
    );
    await defined(page, 'quilt-backing', 'quilt-top');
    expect(asked.sort()).toEqual(needed);
    const text = await page.$eval('quilt-backing', (at) => (at as HTMLElement & { value: string }).value);
    expect(text).not.toBe('');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('does so on a page whose policy lets only scripts with its nonce run, and what they load', async () => {
    const needed = neededBy('quilt-backing');
    const { page, faults, asked } = await loading('<quilt-backing width="58" length="70"></quilt-backing>', {
      atOnce: needed.length,
      policy: `script-src 'nonce-${NONCE}'`,
    });
    await defined(page, 'quilt-backing');
    // None comes before all are asked for. If the policy stopped one, the element would never be defined.
    expect(asked.sort()).toEqual(needed);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('loads nothing on a page without them, and what comes later once it comes', async () => {
    const { page, faults, asked } = await loading('<p>Nothing here</p><quilt-pattern></quilt-pattern>');
    expect(asked).toEqual([]);
    await page.evaluate(() => {
      document.querySelector('p')!.replaceWith(document.createElement('quilt-sleeve'));
    });
    await defined(page, 'quilt-sleeve');
    expect(asked.sort()).toEqual(neededBy('quilt-sleeve'));
    await page.evaluate(() => {
      const later = document.createElement('div');
      later.append(document.createElement('quilt-fabric'), document.createElement('quilt-sleeve'));
      document.body.append(later);
    });
    await defined(page, 'quilt-fabric');
    expect(asked.sort()).toEqual(neededBy('quilt-sleeve', 'quilt-fabric'));
    expect(faults).toEqual([]);
    await page.close();
  });

  it('carries over the version on its address to the scripts of the elements', async () => {
    const { page, faults, asked } = await loading('<quilt-backing></quilt-backing>', {
      loader: `${LOADER}?v=2`,
    });
    await defined(page, 'quilt-backing');
    expect(asked.sort()).toEqual([...importedBy('quilt-backing.js'), 'quilt-backing.js?v=2'].sort());
    expect(faults).toEqual([]);
    await page.close();
  });

  it('leaves alone what the page has from elsewhere', async () => {
    const { page, faults, asked } = await loading(
      '<script>customElements.define("quilt-backing", class extends HTMLElement {})</script><quilt-backing></quilt-backing><quilt-fabric></quilt-fabric>',
    );
    await defined(page, 'quilt-fabric');
    expect(asked.sort()).toEqual(neededBy('quilt-fabric'));
    expect(faults).toEqual([]);
    await page.close();
  });
});
