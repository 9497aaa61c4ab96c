import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, describe, expect, it } from 'vitest';
import type { CuttingResult } from '../../src/reckon/cutting.js';
import type { WorksheetResult } from '../../src/reckon/worksheet.js';
import { QUILT } from '../hosts/quilt-parts.js';
import { settle } from '../hosts/reading.js';
import { findPoppler, findWebKitPrinter } from '../tools/browsers.mjs';
import { ROOT } from '../tools/run.mjs';
import { printFromWebKit } from '../tools/webkit-paper.mjs';
import { DRIVEN, site } from './site.js';

const SCRIPT = '<script type="module" src="/dist/quilt-reckoner.js"></script>';
const FORMATS = ['A4', 'Letter'] as const;
type Format = (typeof FORMATS)[number];
const CM = 96 / 2.54;
const MARGINS = { top: '1cm', bottom: '1cm', left: '1cm', right: '1cm' };

const folder = mkdtempSync(join(tmpdir(), 'quilt-paper-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** With borders whose strips take the longest words. */
const GIVEN = 'width="58" length="72" borders="2, 5" block="12" across="4" down="5"';
const ONE_PAGE = ['backing', 'binding', 'borders', 'batting', 'top'].map((name) => `quilt-${name}`);

const LETTERS = Array.from({ length: 14 }, (_, at) => String.fromCharCode(65 + at));
const LARGE = `<quilt-worksheet width="60" length="80">
  ${LETTERS.map((letter) => `<quilt-fabric letter="${letter}" name="Colour number ${letter} of the whole range" price="12"></quilt-fabric>`).join('')}
  <quilt-cutting list="${LETTERS.flatMap((letter) => Array.from({ length: 5 }, (_, at) => `${letter} | patch number ${at + 1} of the block | ${2 + at} x ${3 + at} | ${4 + at}`)).join('\n')}"></quilt-cutting>
  <quilt-backing fabric="A"></quilt-backing><quilt-binding fabric="B"></quilt-binding>
</quilt-worksheet>`;
const TOGETHER = `<quilt-worksheet><quilt-cutting list="C | rail | 31 x 2 1/2 | 6"></quilt-cutting><quilt-cutting list="C | square | 2 1/2 | 18"></quilt-cutting></quilt-worksheet>`;
const WORKSHEETS = { 'a whole quilt': QUILT, 'fourteen fabrics': LARGE, 'parts cut together': TOGETHER };

/** Waits until everything on a page is drawn and planned. */
const SETTLE = `(${settle.toString()})(document, false)`;

/** Takes the copy that would be printed out of its frame, as HTML with its styles and what stands in its cells. */
const printCopy = (tag: string): Promise<string> => {
  const getter = Object.getOwnPropertyDescriptor(HTMLIFrameElement.prototype, 'contentWindow')!;
  return new Promise((resolve) => {
    Object.defineProperty(HTMLIFrameElement.prototype, 'contentWindow', {
      get(this: HTMLIFrameElement) {
        const inside = getter.get!.call(this) as Window;
        inside.print = () => {
          const root = inside.document.body.firstElementChild!.shadowRoot!;
          for (const cell of root.querySelectorAll<HTMLInputElement>('input')) {
            cell.setAttribute('value', cell.value);
            cell.toggleAttribute('checked', cell.checked);
          }
          for (const option of root.querySelectorAll('option'))
            option.toggleAttribute('selected', option.selected);
          const style = inside.document.createElement('style');
          style.textContent = root.adoptedStyleSheets
            .flatMap((used) => [...used.cssRules].map((rule) => rule.cssText))
            .join('\n');
          root.append(style);
          resolve(inside.document.body.getHTML({ shadowRoots: [root] }));
        };
        return inside;
      },
    });
    const buttons = [...document.querySelector(tag)!.shadowRoot!.querySelectorAll('button')];
    buttons.find((at) => at.textContent.trim() === 'Print')!.click();
  });
};

/** Prints the sheet of that tag on a page that holds this, as a reader would, into a file. */
type Print = (body: string, tag: string, format: Format, pdf: string) => Promise<void>;

/** From a browser with a driver: the driver writes the copy that the sheet would print. */
const driven = ({ openWith }: ReturnType<typeof site>): Print => {
  return async (body, tag, format, pdf) => {
    const { page, faults } = await openWith(body);
    await page.evaluate(SETTLE);
    const copy = await openWith(await page.evaluate(printCopy, tag));
    writeFileSync(pdf, await copy.page.pdf({ format, margin: MARGINS, printBackground: true }));
    expect(faults).toEqual([]);
    await page.close();
    await copy.page.close();
  };
};

/** A page of the demo, without the rule beside its rows, which may run on over the end of a page. */
const TUTORIAL = readFileSync(`${ROOT}demo/tutorial.html`, 'utf8').replace(
  '</head>',
  '<style>article > section > * { --quilt-edge: 0 none }</style></head>',
);

/** What a page says around its sheets, and what they say in their rows. */
const saidOn = (): string[] => {
  const said = (all: Iterable<HTMLElement>): string[] =>
    [...all].filter((at) => at.checkVisibility()).map((at) => at.innerText);
  const sheets = [...document.querySelectorAll('article *')].flatMap(({ shadowRoot }) => shadowRoot ?? []);
  return [
    // A first letter may be drawn large, and by itself.
    ...said(document.querySelectorAll('article :is(h1, h2, p, li)')).map((text) => text.slice(1)),
    ...sheets.flatMap((sheet) =>
      said(
        sheet.querySelectorAll('.answer p, caption, tbody :is(th, td):not(.refine *, :has(input, select))'),
      ),
    ),
    ...sheets.flatMap((sheet) =>
      [...sheet.querySelectorAll<HTMLInputElement>('[type=text]')].map(({ value }) => value),
    ),
  ];
};

/** From WebKit: “Print” is pressed, and the dialog that comes is answered. */
const dialogued = ({ addressOf }: ReturnType<typeof site>): Print => {
  return (body, tag, format, pdf) => {
    const html = `<!doctype html><html lang="en"><title>A page</title><body>${body}</body></html>`;
    const press = `while (!document.querySelector('${tag}').shadowRoot) await new Promise((done) => setTimeout(done, 20));
      await ${SETTLE};
      [...document.querySelector('${tag}').shadowRoot.querySelectorAll('button')].find((at) => at.textContent.trim() === 'Print').click();`;
    return printFromWebKit({ html, address: addressOf('/made.html'), pdf, format, script: press });
  };
};

interface PrintedPage {
  text: string;
  /** How many pixels have ink. */
  inked: number;
  /** Whether something is in a margin. */
  isBled: boolean;
  /**
   * Whether something deeper than a rule between rows runs up to the very end of the page, or from its start; words that
   * are whole keep a little off.
   */
  runs: { toEnd: boolean; fromStart: boolean };
}

const DPI = 100;
const MARGIN = Math.round(DPI / 2.54);

/** A page of grey values, 255 being white. */
const inkOf = (pgm: Buffer): Omit<PrintedPage, 'text'> => {
  const [, width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.toString('latin1', 0, 40))!.map(Number);
  const start = pgm.length - width! * height!;
  const isInk = (x: number, y: number): boolean => pgm[start + y * width! + x]! < 250;
  const all = (length: number): number[] => Array.from({ length }, (_, at) => at);
  const runsThrough = (top: number): boolean =>
    all(width!).some((x) => [0, 1, 2, 3].every((depth) => isInk(x, top + depth)));
  const inked = all(height!).flatMap((y) =>
    all(width!)
      .filter((x) => isInk(x, y))
      .map((x) => [x, y] as const),
  );
  return {
    inked: inked.length,
    isBled: inked.some(([x, y]) => Math.min(x, y, width! - 1 - x, height! - 1 - y) < MARGIN - 2),
    runs: { toEnd: runsThrough(height! - MARGIN - 5), fromStart: runsThrough(MARGIN + 1) },
  };
};

/** The words of a page in the order they were drawn in, which keeps together what stands in a cell. */
const drawnIn = (pdf: string): string => execFileSync('pdftotext', ['-raw', pdf, '-'], { encoding: 'utf8' });

const pagesOf = (pdf: string): PrintedPage[] => {
  const count = Number(/Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [pdf], { encoding: 'utf8' }))![1]);
  const texts = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' }).split('\f');
  execFileSync('pdftoppm', ['-r', String(DPI), '-gray', pdf, pdf]);
  return Array.from({ length: count }, (_, at) => {
    const number = String(at + 1).padStart(String(count).length, '0');
    return { text: texts[at]!, ...inkOf(readFileSync(`${pdf}-${number}.pgm`)) };
  });
};

/** Nothing in the margins, nothing cut in two by the end of a page unless it may be, and no page with a line or two on it. */
const areWellMade = (pages: PrintedPage[], mayCut = false): void => {
  for (const [at, { text, inked, isBled, runs }] of pages.entries()) {
    expect(text.split('\n').filter((line) => line.trim()).length, `lines on page ${at + 1}`).toBeGreaterThan(
      2,
    );
    expect(inked, `ink on page ${at + 1}`).toBeGreaterThan(1500);
    expect(isBled, `ink in a margin of page ${at + 1}`).toBe(false);
    if (!mayCut)
      expect(runs.toEnd && !!pages[at + 1]?.runs.fromStart, `cut in two after page ${at + 1}`).toBe(false);
  }
};

/** Words without what a line's end may put between them. */
const plain = (text: string): string => text.normalize('NFKC').replace(/[\s\u00ad\u2010-]/g, '');

describe('the copy that is printed', () => {
  const { openWith } = site();
  const copyOf = async (body: string, tag: string): Promise<Page> => {
    const { page, faults } = await openWith(body);
    await page.evaluate(SETTLE);
    const copy = await openWith(await page.evaluate(printCopy, tag));
    await copy.page.emulateMediaType('print');
    expect(faults).toEqual([]);
    await page.close();
    return copy.page;
  };
  const visible = (page: Page, selector: string): Promise<number> =>
    page.$$eval(`div >>> ${selector}`, (all) => all.filter((at) => at.checkVisibility()).length);

  it.each(ONE_PAGE)('of %s holds its answer and its cells, and no buttons', async (tag) => {
    const page = await copyOf(`${SCRIPT}<p>The page around it</p><${tag} ${GIVEN}></${tag}>`, tag);
    expect(await page.$eval('div >>> [part=answer]', (at) => at.textContent)).toMatch(/^\s*(Buy|Finished)/);
    expect(await page.$eval('div >>> table', (at) => getComputedStyle(at).borderCollapse)).toBe('collapse');
    const cell = tag === 'quilt-top' ? 'block' : 'width';
    expect(await page.$eval(`div >>> [data-row=${cell}]`, (at) => (at as HTMLInputElement).value)).toMatch(
      /^(58|12)\sin$/,
    );
    expect(await visible(page, 'button')).toBe(0);
    await page.close();
  });

  it.each(Object.entries(WORKSHEETS))(
    'of %s has a box for each swatch, and nothing to press',
    async (_, body) => {
      const page = await copyOf(SCRIPT + body, 'quilt-worksheet');
      const boxes = await page.$$eval('div >>> td.swatch', (all) =>
        all.map((at) => at.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)),
      );
      expect(boxes).toHaveLength(body.match(/<quilt-fabric/g)?.length ?? 1);
      for (const box of boxes) expect(box).toBeGreaterThan(2.5 * CM);
      expect(await visible(page, 'button, div >>> input')).toBe(0);
      await page.close();
    },
  );
});

const PRINTERS = [...DRIVEN, ...(findWebKitPrinter() ? (['WebKit'] as const) : [])];

describe.each(PRINTERS)('on paper from %s', (engine) => {
  const paper = site(engine === 'Firefox' ? 'Firefox' : 'Chromium');
  const print = engine === 'WebKit' ? dialogued(paper) : driven(paper);
  const NO_POPPLER = 'Poppler is not installed: the pages were not looked at.';

  it.for(ONE_PAGE.flatMap((tag) => FORMATS.map((format) => [tag, format] as const)))(
    '%s takes one page of %s',
    async ([tag, format], { skip }) => {
      const pdf = join(folder, `${engine}-${tag}-${format}.pdf`);
      await print(`${SCRIPT}<p>The page around it</p><${tag} ${GIVEN}></${tag}>`, tag, format, pdf);
      skip(!findPoppler(), NO_POPPLER);
      const pages = pagesOf(pdf);
      expect(pages).toHaveLength(1);
      areWellMade(pages);
      expect(pages[0]!.text).toMatch(/Buy|Finished/);
      expect(pages[0]!.text).not.toMatch(/The page around it|Copy table/);
    },
  );

  it.for(
    Object.entries(WORKSHEETS).flatMap(([what, body]) =>
      FORMATS.map((format) => [what, format, body] as const),
    ),
  )(
    '%s is a requirement sheet on %s: nothing clipped, no page with one line',
    async ([what, format, body], { skip }) => {
      const { page } = await paper.openWith(SCRIPT + body);
      await page.evaluate(SETTLE);
      const { fabrics, items, notes } = await page.$eval(
        'quilt-worksheet',
        (at) => (at as unknown as { result: WorksheetResult }).result,
      );
      const cuts = await page.$$eval('quilt-worksheet *', (all) =>
        all.flatMap((at) => (at as unknown as { result?: CuttingResult }).result?.cuts ?? []),
      );
      await page.close();
      expect(notes.join()).not.toMatch(/not on the list/);
      const pdf = join(folder, `${engine}-${what.replaceAll(' ', '-')}-${format}.pdf`);
      await print(SCRIPT + body, 'quilt-worksheet', format, pdf);
      skip(!findPoppler(), NO_POPPLER);

      const pages = pagesOf(pdf);
      // Firefox breaks no table that has a caption: one longer than a page is cut where the page ends, through a line even.
      areWellMade(pages, engine === 'Firefox' && body === LARGE);
      const words = plain(pages.map(({ text }) => text).join(''));
      // The strips of the cut list, or of the parts that are laid out together.
      expect(words).toMatch(/[Ss]trips,fromthetopofthecloth/);
      for (const said of [
        ...fabrics.flatMap(({ buy, name }) => [buy.text, name]),
        ...items.map(({ text }) => text),
        ...cuts.map(({ text }) => text),
        ...(fabrics.some(({ letter }) => letter) ? ['Fabric key'] : []),
        ...notes.map((note) => note.slice(0, 30)),
      ])
        expect(words).toContain(plain(said));
    },
  );

  it.for(FORMATS)(
    'a page around its sheets is all there on %s: its words and theirs, no buttons, nothing cut',
    async (format, { skip }) => {
      const pdf = join(folder, `${engine}-tutorial-${format}.pdf`);
      const { page, faults } = await paper.openWith(TUTORIAL);
      await page.evaluate(SETTLE);
      const said = await page.evaluate(saidOn);
      expect(said.length).toBeGreaterThan(150);
      if (engine === 'WebKit')
        await printFromWebKit({
          html: TUTORIAL,
          address: paper.addressOf('/made.html'),
          pdf,
          format,
          script: `while (!document.querySelector('quilt-binding').shadowRoot) await new Promise((done) => setTimeout(done, 20));
            await ${SETTLE};
            window.print();`,
        });
      else writeFileSync(pdf, await page.pdf({ format, margin: MARGINS, printBackground: true }));
      expect(faults).toEqual([]);
      await page.close();
      skip(!findPoppler(), NO_POPPLER);
      areWellMade(pagesOf(pdf));
      const words = plain(drawnIn(pdf));
      const isThere = (text: string): boolean => words.includes(plain(text));
      const apart = said.filter((text) => !isThere(text));
      // WebKit breaks a row between two lines where a page ends, so that what stands beside comes between them.
      if (engine === 'WebKit') expect(apart.length).toBeLessThan(5);
      else expect(apart).toEqual([]);
      expect(apart.flatMap((text) => text.split(' ')).filter((word) => !isThere(word))).toEqual([]);
      expect(words).not.toMatch(/Copytable|Morerows|½⅝/);
    },
  );

  it('pages are counted, and one that is cut in two is seen', async ({ skip }) => {
    skip(!findPoppler(), NO_POPPLER);
    const { page } = await paper.openWith('<p>A line</p>'.repeat(200));
    const pdf = join(folder, `${engine}-lines.pdf`);
    writeFileSync(pdf, await page.pdf({ format: 'A4', margin: MARGINS }));
    expect(pagesOf(pdf).length).toBeGreaterThan(2);
    await page.setContent('<div style="block-size: 60cm; background: teal"></div>');
    writeFileSync(pdf, await page.pdf({ format: 'A4', margin: MARGINS, printBackground: true }));
    expect(() => areWellMade(pagesOf(pdf).map((seen) => ({ ...seen, text: 'a\nb\nc' })))).toThrow(
      /cut in two/,
    );
    await page.close();
  });
});
