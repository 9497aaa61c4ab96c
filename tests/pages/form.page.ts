import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { TEST_LIMIT } from '../config/limits.mjs';
import { findWebKit } from '../tools/browsers.mjs';
import { launchWebKit } from '../tools/launch.mjs';
import { ROOT } from '../tools/run.mjs';
import { DRIVEN, site, writeIn } from './site.js';

const ORDER = `<!doctype html><html lang="en"><title>Order</title><link rel="icon" href="data:,">
<script>addEventListener('unload', () => {})</script>
<script src="/quilt-reckoner.classic.js" defer></script>
<form method="post" action="/order">
  <input name="cloth" value="long-horizon">
  <quilt-backing name="yards" width="58" length="70" max="6 yd"></quilt-backing>
  <fieldset disabled><quilt-binding name="binding" width="58" length="70"></quilt-binding></fieldset>
  <button>Order</button>
</form>
<input id="plain" autocomplete="off">`;

// A shop's own server. It records what was posted. Its page listens to "unload", so that no browser keeps the page in memory.
const posted: string[] = [];
let server: Server;
beforeAll(async () => {
  server = createServer((request, response) => {
    const answer = (type: string, body: string | Buffer): void => {
      response
        .writeHead(200, { 'content-type': `${type}; charset=utf-8`, 'cache-control': 'no-cache' })
        .end(body);
    };
    if (request.method === 'POST') {
      let body = '';
      request.on('data', (part: Buffer) => (body += part.toString()));
      request.on('end', () => {
        posted.push(body);
        answer('text/html', '<!doctype html><title>Thanks</title><link rel="icon" href="data:,">Thank you.');
      });
    } else if (request.url!.endsWith('.js'))
      answer('text/javascript', readFileSync(`${ROOT}dist${request.url!}`));
    else answer('text/html', ORDER);
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
});
afterAll(() => {
  server.closeAllConnections();
  server.close();
});

const address = (): string => `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;

const write = (page: Page, id: string, text: string): Promise<void> =>
  writeIn(page, `quilt-backing >>> [data-row=${id}]`, text);
const valueIn = (page: Page, id: string): Promise<string> =>
  page.$eval(`quilt-backing >>> [data-row=${id}]`, (at) => (at as HTMLInputElement).value);
const send = async (page: Page): Promise<void> => {
  await Promise.all([page.waitForNavigation(), page.click('form > button')]);
};

describe.each(DRIVEN)('a form sent to a server from %s', (engine) => {
  const { open } = site(engine);
  const order = (): ReturnType<typeof open> => open(address());

  it('carries the amount under its name, and nothing of what is disabled', async () => {
    const { page, faults } = await order();
    await write(page, 'width', '150 cm');
    await send(page);
    // 58 × 70 in takes 2 panels of 66 in; 150 cm × 70 in 2 of 67 1/16 in, which is 3 3/4 yd too.
    expect(posted.splice(0)).toEqual(['cloth=long-horizon&yards=3.75']);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('comes back as it was left: what was typed, the answer, and what a reset goes back to', async () => {
    const { page, faults } = await order();
    await write(page, 'width', '61 1/2');
    await write(page, 'overage', '3');
    const answer = await page.$eval('quilt-backing', ({ result }) => JSON.stringify(result));
    await send(page);
    await page.goBack({ waitUntil: 'load' });
    // A page that the browser kept whole would prove nothing.
    expect(
      await page.evaluate(
        () => (performance.getEntriesByType('navigation')[0] as PerformanceNavigationTiming).type,
      ),
    ).toBe('back_forward');
    expect([await valueIn(page, 'width'), await valueIn(page, 'overage')]).toEqual(['61 1/2 in', '3 in']);
    expect(await page.$eval('quilt-backing', ({ result }) => JSON.stringify(result))).toBe(answer);
    await send(page);
    const [first, again] = posted.splice(0);
    expect(again).toBe(first);
    await page.goBack({ waitUntil: 'load' });
    await page.$eval('form', (form) => form.reset());
    expect(await valueIn(page, 'width')).toBe('58 in');
    expect(await page.$eval('quilt-backing', ({ value }) => value)).toBe('3.75');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('comes back with a wrong input too, as it was typed', async () => {
    const { page } = await order();
    await write(page, 'width', 'abc');
    await page.goto('about:blank');
    await page.goBack({ waitUntil: 'load' });
    expect(await valueIn(page, 'width')).toBe('abc');
    expect(await page.$eval('quilt-backing', ({ value, validity }) => [value, validity.badInput])).toEqual([
      '',
      true,
    ]);
    await page.close();
  });
});

/** Clicks the box of a cell, or selects its text. */
const enter = async (id: string): Promise<void> => {
  const backing = document.querySelector('quilt-backing')!;
  const { shadowRoot } = backing;
  if (shadowRoot!.querySelector(`.folded [data-row=${id}]`)) {
    for (const button of shadowRoot!.querySelectorAll<HTMLElement>('[aria-expanded=false]')) button.click();
    await backing.updateComplete;
  }
  const cell = shadowRoot!.querySelector<HTMLInputElement>(`[data-row=${id}]`)!;
  if (cell.type === 'checkbox') cell.click();
  else cell.select();
};
/** What a reader left on the page. What she opened is closed again when she comes back, so only these rows count. */
const left = (): unknown => {
  const { shadowRoot, result, value } = document.querySelector('quilt-backing')!;
  const ids = ['width', 'length', 'overage', 'fabricWidth', 'seam', 'oneWay'];
  const cells = ids.map((id) => shadowRoot!.querySelector<HTMLInputElement>(`[data-row=${id}]`)!);
  return {
    cells: cells.map((cell) => [cell.dataset['row'], cell.type === 'checkbox' ? cell.checked : cell.value]),
    answer: JSON.stringify(result),
    value,
  };
};

// WebKit keeps a page in memory even if it listens to "unload", unless a setting forbids it.
describe.runIf(findWebKit()).each([
  ['made anew', ['--enable-page-cache=false'], false],
  ['that was kept whole', [], true],
])('a form sent to a server from WebKit, on a page %s', (_, told, isKept) => {
  let webKit: Awaited<ReturnType<typeof launchWebKit>>;
  beforeAll(async () => {
    webKit = await launchWebKit(told);
  });
  afterAll(() => webKit.close());

  const until = async (script: () => boolean): Promise<void> => {
    await expect.poll(() => webKit.evaluate(script), { timeout: TEST_LIMIT }).toBe(true);
  };
  const write = async (id: string, text: string): Promise<void> => {
    await webKit.evaluate(enter, id);
    await webKit.type(`${text}\uE007`);
  };
  const fillPlain = (): Promise<void> =>
    webKit.evaluate(() => void (document.querySelector<HTMLInputElement>('#plain')!.value = 'left'));
  const goBack = async (): Promise<void> => {
    await webKit.goBack();
    await until(() => document.title === 'Order' && document.readyState === 'complete');
    // WebKit empties the fields of a page that it kept a moment after it has shown it; ours among them, but for their defaults.
    await until(() => document.querySelector<HTMLInputElement>('#plain')!.value === '');
  };
  const sendAndGoBack = async (): Promise<void> => {
    await fillPlain();
    await webKit.evaluate(() => document.querySelector<HTMLElement>('form > button')!.click());
    await until(() => document.title === 'Thanks');
    await goBack();
  };

  const holding = (...cells: [id: string, held: unknown][]): { cells: unknown } => ({
    cells: expect.arrayContaining(cells),
  });

  it('comes back as it was left, a wrong input too', async () => {
    await webKit.goTo(address());
    await write('width', '61 1/2');
    await write('overage', '3');
    await webKit.evaluate(enter, 'oneWay');
    const before = await webKit.evaluate(left);
    expect(before).toMatchObject(holding(['width', '61 1/2 in'], ['overage', '3 in'], ['oneWay', true]));
    await webKit.evaluate(() => document.documentElement.classList.add('same'));
    await sendAndGoBack();
    expect(await webKit.evaluate(() => document.documentElement.matches('.same'))).toBe(isKept);
    expect(await webKit.evaluate(left)).toEqual(before);
    await sendAndGoBack();
    const [first, again] = posted.splice(0);
    expect(first).toMatch(/^cloth=long-horizon&yards=\d/);
    expect(again).toBe(first);

    await write('width', 'abc');
    await fillPlain();
    await webKit.goTo('about:blank');
    await goBack();
    expect(await webKit.evaluate(left)).toMatchObject({
      value: '',
      ...holding(['width', 'abc'], ['overage', '3 in'], ['oneWay', true]),
    });
    await webKit.evaluate(() => document.querySelector('form')!.reset());
    expect(await webKit.evaluate(left)).toMatchObject({
      value: '3.75',
      ...holding(['width', '58 in'], ['oneWay', false]),
    });
  });
});
