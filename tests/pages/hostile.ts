import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { ROOT } from '../tools/run.mjs';

/** Where people can look at the pages: a picture of each is written into this folder, if there is one. */
const PICTURES = process.env['PICTURES'];
if (PICTURES) mkdirSync(PICTURES, { recursive: true });

export const SCRIPT = '<script type="module" src="/dist/quilt-reckoner.js"></script>';

/** One of each kind of cell: lengths, choices, boxes, a text area, an error over a stale answer, parts of a worksheet. */
export const SHEETS = `
<quilt-backing width="58" length="70" one-way price="12.50" currency="EUR">
  <p>Buy 3 3/4 yd of cloth 40 in wide: two panels of 66 in.</p>
</quilt-backing>
<quilt-borders width="58" length="70" borders="2, 4 1/2" corners="sides-first, squares"></quilt-borders>
<quilt-cutting sheet="fat-quarter">
  <table>
    <tr><th>Fabric</th><th>Piece</th><th>Cut size</th><th>How many</th></tr>
    <tr><td>A</td><td>square</td><td>3 1/2 in</td><td>48</td></tr>
    <tr><td>B</td><td>half-square triangles</td><td>3 in finished</td><td>24</td></tr>
  </table>
</quilt-cutting>
<quilt-batting width="58" length="70"></quilt-batting>
<quilt-worksheet currency="EUR">
  <quilt-fabric letter="A" name="Slate Roof" price="14.25" swatch="#48505c"></quilt-fabric>
  <quilt-top block="12" across="4" down="5" sashing="2"></quilt-top>
  <quilt-binding fabric="A"></quilt-binding>
</quilt-worksheet>`;

/** A whole page around a body, as a strict or a careless author may write it. */
export const pageOf = (
  body: string,
  { css = '', html = '', script = SCRIPT } = {},
): string => `<!doctype html>
<html lang="en" ${html}>
  <head>
    <title>A hostile page</title>
    <meta name="viewport" content="width=device-width" />
    ${css && `<style>${css}</style>`}
    ${script}
  </head>
  <body>${body}</body>
</html>`;

/** Once every sheet is drawn and every plan made; then the batting gets a width that it cannot take. */
export const settle = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    type Sheet = HTMLElement & { result: unknown; updateComplete: Promise<boolean> };
    const sheets = [...document.querySelectorAll<Sheet>('*')].filter((at) => 'updateComplete' in at);
    const drawn = async (): Promise<void> => {
      for (const sheet of sheets) while (!(await sheet.updateComplete));
    };
    await drawn();
    while (JSON.stringify(sheets.map((at) => at.result ?? '')).includes('being planned'))
      await new Promise((done) => setTimeout(done, 20));
    document.querySelector('quilt-batting')?.setAttribute('width', 'wide');
    await drawn();
  });

/** What a reader reads, and what outside code gets. */
export const readingOf = (page: Page): Promise<{ words: string[]; results: string[] }> =>
  page.evaluate(() => {
    const sheets = [...document.querySelectorAll('*')].filter((at) => at.shadowRoot && 'result' in at);
    const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();
    return {
      words: sheets.flatMap((sheet) =>
        [
          ...sheet.shadowRoot!.querySelectorAll<HTMLElement & { value?: string }>(
            'p, tbody th, .how, [part=list] td, caption, [data-row]',
          ),
        ].map((at) => plain(at.matches('input, select, textarea') ? at.value! : at.innerText)),
      ),
      results: sheets.map((sheet) => JSON.stringify((sheet as unknown as { result: unknown }).result)),
    };
  });

/** Where something is cut off, runs out of the sheet or the window, or is too small: a line for each. */
export const misfits = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const named = (at: Element): string =>
      `${((at.getRootNode() as ShadowRoot).host ?? at).localName} ${at.localName}.${at.className} ${at.id} “${at.textContent.trim().slice(0, 30)}”`;
    if (document.documentElement.scrollWidth > innerWidth)
      found.push(`the page is ${document.documentElement.scrollWidth} px wide`);
    const hosts = [...document.querySelectorAll<HTMLElement>('*')].filter(
      (at) => at.shadowRoot && 'result' in at,
    );
    for (const host of hosts) {
      const outer = host.getBoundingClientRect();
      const size = parseFloat(getComputedStyle(host).fontSize);
      if (outer.width < 200) found.push(`${named(host)} is ${outer.width} px wide`);
      for (const at of host.shadowRoot!.querySelectorAll<HTMLElement>('section *:not(svg *):not(option)')) {
        if (!at.checkVisibility() || (at.matches('[role=status]') && !at.textContent)) continue;
        const { left, right, height } = at.getBoundingClientRect();
        if (left < outer.left - 1 || right > outer.right + 1)
          found.push(`${named(at)} runs out of its sheet`);
        const isLine = getComputedStyle(at).display === 'inline';
        if (!isLine && at.scrollWidth > at.clientWidth + 1 && !at.matches('select'))
          found.push(`${named(at)} is cut off: ${at.scrollWidth} > ${at.clientWidth}`);
        if (!isLine && at.scrollHeight > at.clientHeight + 2 && !at.matches('select, textarea'))
          found.push(`${named(at)} is cut off below: ${at.scrollHeight} > ${at.clientHeight}`);
        if (parseFloat(getComputedStyle(at).fontSize) < size * 0.7)
          found.push(`${named(at)} is small: ${getComputedStyle(at).fontSize} where the page has ${size}px`);
        if (at.matches('input, select, button') && height < 24 && !matchMedia('print').matches)
          found.push(`${named(at)} is ${height} px high`);
      }
    }
    return [...new Set(found)];
  });

/** Text that does not stand out from what is behind it, as axe measures it. */
export const faint = async (page: Page, least = 20): Promise<string[]> => {
  await page.evaluate(readFileSync(`${ROOT}node_modules/axe-core/axe.min.js`, 'utf8'));
  return page.evaluate(async (least) => {
    const { axe } = window as unknown as {
      axe: {
        run(
          at: Document,
          options: unknown,
        ): Promise<{
          violations: { nodes: { html: string; failureSummary: string }[] }[];
          passes: { nodes: unknown[] }[];
        }>;
      };
    };
    const { violations, passes } = await axe.run(document, { runOnly: ['color-contrast'] });
    if (!passes[0]?.nodes[least - 1]) return ['axe found no text'];
    return violations.flatMap(({ nodes }) => nodes.map((node) => `${node.html}: ${node.failureSummary}`));
  }, least);
};

export const picture = async (page: Page, name: string): Promise<void> => {
  if (PICTURES)
    await page.screenshot({ path: join(PICTURES, `${name.replace(/\W+/g, '-')}.png`), fullPage: true });
};
