import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, describe, expect, it } from 'vitest';
import type { CuttingResult } from '../../src/reckon.js';
import type { WorksheetResult } from '../../src/reckon.js';
import { QUILT } from '../hosts/quilt-parts.js';
import { settling } from '../hosts/reading.js';
import { findPoppler, findWebKitPrinter } from '../tools/browsers.mjs';
import { findFont, TEXT_FONTS } from '../tools/fonts.mjs';
import { once } from '../tools/once.mjs';
import { ROOT } from '../tools/run.mjs';
import { printFromWebKit } from '../tools/webkit-paper.mjs';
import { DRIVEN, site, type Visited, whole } from './site.js';

const SCRIPT = '<script type="module" src="/dist/quilt-reckoner.js"></script>';
const FORMATS = ['A4', 'Letter'] as const;
type Format = (typeof FORMATS)[number];
const CM = 96 / 2.54;
const MARGINS = { top: '1cm', bottom: '1cm', left: '1cm', right: '1cm' };

const folder = mkdtempSync(join(tmpdir(), 'quilt-paper-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** With borders whose strips take the longest words. */
const GIVEN = 'width="58" length="72" borders="2, 5" block="12" across="4" down="5"';

/** A sheet on a page, and the page's body. */
interface Sheet {
  what: string;
  tag: string;
  body: string;
}

const ONE_PAGE = ['backing', 'binding', 'borders', 'batting', 'top'].map((name): Sheet => ({
  what: name,
  tag: `quilt-${name}`,
  body: `${SCRIPT}<p>The page around it</p><quilt-${name} ${GIVEN}></quilt-${name}>`,
}));

const LETTERS = Array.from({ length: 14 }, (_, at) => String.fromCharCode(65 + at));
const LARGE = `<quilt-worksheet width="60" length="80">
  ${LETTERS.map((letter) => `<quilt-fabric letter="${letter}" name="Colour number ${letter} of the whole range" price="12"></quilt-fabric>`).join('')}
  <quilt-cutting list="${LETTERS.flatMap((letter) => Array.from({ length: 5 }, (_, at) => `${letter} | patch number ${at + 1} of the block | ${2 + at} x ${3 + at} | ${4 + at}`)).join('\n')}"></quilt-cutting>
  <quilt-backing fabric="A"></quilt-backing><quilt-binding fabric="B"></quilt-binding>
</quilt-worksheet>`;
const TOGETHER = `<quilt-worksheet><quilt-cutting list="C | rail | 31 x 2 1/2 | 6"></quilt-cutting><quilt-cutting list="C | square | 2 1/2 | 18"></quilt-cutting></quilt-worksheet>`;
/** What a week is cut from takes many words. */
const WEEKS = `<quilt-worksheet>
  <quilt-fabric letter="A" name="Sea Fog"></quilt-fabric>
  <quilt-fabric letter="B" name="Rust" sheet="fat-quarter"></quilt-fabric>
  ${[1, 2, 3].map((week) => `<quilt-block name="Harbour" week="${week}" count="4" block="12" chart="A/B B A\\B; B A B; A\\B B A/B"></quilt-block>`).join('')}
</quilt-worksheet>`;
const WORKSHEETS = Object.entries({
  'a whole quilt': QUILT,
  'fourteen fabrics': LARGE,
  'parts cut together': TOGETHER,
  'fat quarters of several weeks': WEEKS,
}).map(([what, worksheet]): Sheet => ({ what, tag: 'quilt-worksheet', body: SCRIPT + worksheet }));

/** Waits until everything on a page is drawn and planned. */
const SETTLE = settling(false);

/** Takes the copy for printing out of its frame, as HTML with its styles and the text of its cells. */
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

const chromium = site();
const firefox = DRIVEN.includes('Firefox') ? site('Firefox') : chromium;
type Site = typeof chromium;

/** Opens a page, and waits until everything on it is drawn and planned. */
const openSettled = async ({ openWith }: Site, body: string): Promise<Visited> => {
  const visited = await openWith(body);
  await visited.page.evaluate(SETTLE);
  return visited;
};

/** The copy of a sheet that would be printed, made once in each browser. */
const copyFrom = (from: Site): ((sheet: Sheet) => Promise<string>) =>
  once(async ({ body, tag }: Sheet) => {
    const { page, faults } = await openSettled(from, body);
    const copy = await page.evaluate(printCopy, tag);
    expect(faults).toEqual([]);
    await page.close();
    return copy;
  });
const copyIn = { Chromium: copyFrom(chromium), Firefox: copyFrom(firefox) };

/** What a worksheet says of its cloth and its cuts: the same in every browser, and so read in one. */
const factsOf = once(async ({ body }: Sheet) => {
  const { page } = await openSettled(chromium, body);
  const { fabrics, items, notes } = await page.$eval(
    'quilt-worksheet',
    (at) => (at as unknown as { result: WorksheetResult }).result,
  );
  const cuts = await page.$$eval('quilt-worksheet *', (all) =>
    all.flatMap((at) => (at as unknown as { result?: CuttingResult }).result?.cuts ?? []),
  );
  await page.close();
  return { fabrics, items, notes, cuts };
});

/** A file to print into, and the size of its paper. */
interface Paper {
  pdf: string;
  format: Format;
}

/** Prints a sheet as a reader would, into files. */
type Print = (sheet: Sheet, papers: Paper[]) => Promise<void>;

const writeOn = async (page: Page, { pdf, format }: Paper): Promise<void> =>
  writeFileSync(pdf, await page.pdf({ format, margin: MARGINS, printBackground: true }));

/** From a browser with a driver: the driver writes the copy that the sheet would print. */
const driven = (engine: 'Chromium' | 'Firefox'): Print => {
  return async (sheet, papers) => {
    const copy = await copyIn[engine](sheet);
    await Promise.all(
      papers.map(async (paper) => {
        const { page } = await (engine === 'Firefox' ? firefox : chromium).openWith(copy);
        await writeOn(page, paper);
        await page.close();
      }),
    );
  };
};

/** From WebKit, as this HTML: a script asks for each print once all sheets are there, and the dialog that comes is answered. */
const printHere = (html: string, tag: string, jobs: (Paper & { ask: string })[]): Promise<void> =>
  printFromWebKit({
    html,
    address: chromium.addressOf('/made.html'),
    jobs: jobs.map(({ ask, ...paper }) => ({
      ...paper,
      script: `await customElements.whenDefined('${tag}'); await ${SETTLE}; ${ask}`,
    })),
  });

/** From WebKit: “Print” is pressed. */
const dialogued: Print = ({ body, tag }, papers) => {
  const html = `<!doctype html><html lang="en"><title>A page</title><body>${body}</body></html>`;
  const ask = `[...document.querySelector('${tag}').shadowRoot.querySelectorAll('button')].find((at) => at.textContent.trim() === 'Print').click();`;
  return printHere(
    html,
    tag,
    papers.map((paper) => ({ ...paper, ask })),
  );
};

/** A page of the demo, without the rule beside its rows, which may run on over the end of a page. */
const TUTORIAL = readFileSync(`${ROOT}demo/tutorial.html`, 'utf8').replace(
  '</head>',
  '<link rel="icon" href="data:,"><style>article > section > * { --quilt-edge: 0 none }</style></head>',
);

/** The words of a page around its calculators, and the words of their rows. */
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

/** The tutorial in a text font of each maker that is here. */
const FONTS = TEXT_FONTS.filter((font, at) => at === 0 || findFont(font));
const setIn = (font: string): string => `document.documentElement.style.fontFamily = "'${font}', serif"`;

/** The tutorial as a reader opens it before she prints, and its words. */
const openTutorial = async (engine: string): Promise<Visited & { said: string[] }> => {
  const visited = await openSettled(engine === 'Firefox' ? firefox : chromium, TUTORIAL);
  // Paper has the working too, be it folded away on the screen or not.
  await visited.page.$$eval('quilt-top, quilt-borders, quilt-batting, quilt-backing, quilt-binding', (all) =>
    Promise.all(all.map((at) => Object.assign(at, { working: 'open' }).updateComplete)),
  );
  return { ...visited, said: await visited.page.evaluate(saidOn) };
};

/** Prints the tutorial on each paper in this font, and returns its words. */
const printTutorial = async (engine: string, papers: (Paper & { font: string })[]): Promise<string[]> => {
  if (engine === 'WebKit')
    await printHere(
      TUTORIAL,
      'quilt-binding',
      papers.map(({ font, ...paper }) => ({ ...paper, ask: `${setIn(font)}; window.print();` })),
    );
  const all = await Promise.all(
    papers.map(async (paper) => {
      const { page, faults, said } = await openTutorial(engine);
      await page.evaluate(setIn(paper.font));
      if (engine !== 'WebKit') await writeOn(page, paper);
      expect(faults).toEqual([]);
      await page.close();
      return said;
    }),
  );
  return all[0]!;
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
  let inked = 0;
  let isBled = false;
  for (let y = 0; y < height!; y++)
    for (let x = 0; x < width!; x++)
      if (isInk(x, y)) {
        inked++;
        isBled ||= Math.min(x, y, width! - 1 - x, height! - 1 - y) < MARGIN - 2;
      }
  return {
    inked,
    isBled,
    runs: { toEnd: runsThrough(height! - MARGIN - 5), fromStart: runsThrough(MARGIN + 1) },
  };
};

/** Words without the breaks of lines. A fraction that the font draws as one sign is written with digits. */
const plain = (text: string): string =>
  text
    .normalize('NFKC')
    .replace(/[\s\u00ad\u2010-]/g, '')
    .replace(/\u2044/g, '/');

/** The words of each page in the order of drawing, which keeps the words of a cell together. */
const drawnIn = (pdf: string): string[] =>
  execFileSync('pdftotext', ['-raw', pdf, '-'], { encoding: 'utf8' }).split('\f').map(plain);

/** Whether these words are on a page, or go on from one page to the next. A drawing may come between. */
const isOn = (pages: string[], words: string): boolean =>
  pages.some((page, at) => {
    if (page.includes(words)) return true;
    const next = pages[at + 1] ?? '';
    return Array.from(words).some(
      (_, cut) => page.includes(words.slice(0, cut)) && next.includes(words.slice(cut)),
    );
  });

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
const areWellMade = (pages: PrintedPage[], which: string, mayCut = false): void => {
  for (const [at, { text, inked, isBled, runs }] of pages.entries()) {
    const where = `page ${at + 1} on ${which}`;
    const lines = text.split('\n').filter((line) => line.trim()).length;
    expect(lines, `lines on ${where}`).toBeGreaterThan(2);
    expect(inked, `ink on ${where}`).toBeGreaterThan(1500);
    expect(isBled, `ink in a margin of ${where}`).toBe(false);
    if (!mayCut)
      expect(runs.toEnd && !!pages[at + 1]?.runs.fromStart, `cut in two after ${where}`).toBe(false);
  }
};

describe('the copy that is printed', () => {
  const copyOf = async (sheet: Sheet): Promise<Page> => {
    const { page } = await chromium.openWith(await copyIn.Chromium(sheet));
    await page.emulateMediaType('print');
    return page;
  };
  const visible = (page: Page, selector: string): Promise<number> =>
    page.$$eval(`div >>> ${selector}`, (all) => all.filter((at) => at.checkVisibility()).length);

  it.each(ONE_PAGE)('of $tag holds its answer and its cells, and no buttons', async (sheet) => {
    const page = await copyOf(sheet);
    expect(await page.$eval('div >>> [part=answer]', (at) => at.textContent)).toMatch(/^\s*(Buy|Finished)/);
    expect(await page.$eval('div >>> table', (at) => getComputedStyle(at).borderCollapse)).toBe('collapse');
    const cell = sheet.tag === 'quilt-top' ? 'block' : 'width';
    expect(await page.$eval(`div >>> [data-row=${cell}]`, (at) => (at as HTMLInputElement).value)).toMatch(
      /^(58|12)\sin$/,
    );
    expect(await visible(page, 'button')).toBe(0);
    await page.close();
  });

  it.each(WORKSHEETS)('of $what has a box for each swatch, and nothing to press', async (sheet) => {
    const page = await copyOf(sheet);
    const boxes = await page.$$eval('div >>> td.swatch', (all) =>
      all.map((at) => at.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)),
    );
    expect(boxes).toHaveLength(sheet.body.match(/<quilt-fabric/g)?.length ?? 1);
    for (const box of boxes) expect(box).toBeGreaterThan(2.5 * CM);
    expect(await visible(page, 'button, div >>> input')).toBe(0);
    await page.close();
  });
});

const PRINTERS = [...DRIVEN, ...(findWebKitPrinter() ? (['WebKit'] as const) : [])];
const NO_POPPLER = 'Poppler is not installed: the pages were not looked at.';

const paperTests = (engine: (typeof PRINTERS)[number]): void => {
  const print = engine === 'WebKit' ? dialogued : driven(engine);
  const papersOf = (what: string): Paper[] =>
    FORMATS.map((format) => ({
      format,
      pdf: join(folder, `${engine}-${what.replaceAll(' ', '-')}-${format}.pdf`),
    }));

  it.for(ONE_PAGE)('$tag takes one page of A4, and one of Letter', async (sheet, { skip }) => {
    const papers = papersOf(sheet.what);
    await print(sheet, papers);
    skip(!findPoppler(), NO_POPPLER);
    for (const { pdf, format } of papers) {
      const pages = pagesOf(pdf);
      expect(pages, format).toHaveLength(1);
      areWellMade(pages, format);
      expect(pages[0]!.text).toMatch(/Buy|Finished/);
      expect(pages[0]!.text).not.toMatch(/The page around it|Copy table/);
    }
  });

  it.for(WORKSHEETS)(
    '$what is a requirement sheet on A4 and on Letter: nothing clipped, no page with one line',
    async (sheet, { skip }) => {
      const { fabrics, items, notes, cuts } = await factsOf(sheet);
      expect(notes.join()).not.toMatch(/not on the list/);
      const papers = papersOf(sheet.what);
      await print(sheet, papers);
      skip(!findPoppler(), NO_POPPLER);
      for (const { pdf, format } of papers) {
        const pages = pagesOf(pdf);
        // Firefox does not break a table with a caption. If it is longer than a page, it is cut off, even through a line.
        areWellMade(pages, format, engine === 'Firefox' && sheet.what === 'fourteen fabrics');
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
          expect(words, format).toContain(plain(said));
      }
    },
  );

  it.for(FONTS)(
    'a page with calculators prints in full on A4 and Letter in %s: all words, no buttons, nothing cut off',
    async (font, { skip }) => {
      const papers = papersOf(`tutorial ${font}`).map((paper) => ({ ...paper, font }));
      const said = await printTutorial(engine, papers);
      expect(said.length).toBeGreaterThan(150);
      skip(!findPoppler(), NO_POPPLER);
      for (const { pdf, format } of papers) {
        const which = `${format}, ${font}`;
        areWellMade(pagesOf(pdf), which);
        const words = drawnIn(pdf);
        expect(
          said.filter((text) => !isOn(words, plain(text))),
          which,
        ).toEqual([]);
        expect(words.join('')).not.toMatch(/Copytable|Morerows/);
        expect(words.join(''), 'the keys of fractions').not.toContain(plain('½⅝¾⅞'));
      }
    },
  );
};
it.for(FORMATS)('the sew-along on %s ends with no page that is nearly empty', async (format, { skip }) => {
  skip(!findPoppler(), NO_POPPLER);
  const { page, faults } = await chromium.open('/sew-along.html');
  await whole(page);
  const paper: Paper = { pdf: join(folder, `sew-along-${format}.pdf`), format };
  await writeOn(page, paper);
  // The rules between the weeks may run on over the end of a page.
  areWellMade(pagesOf(paper.pdf), format, true);
  expect(faults).toEqual([]);
  await page.close();
});

/** Firefox waits a second at each page that it prints, so it prints several at once. */
for (const engine of PRINTERS)
  describe(`on paper from ${engine}`, { concurrent: engine === 'Firefox' }, () => paperTests(engine));

it.for(DRIVEN)('pages from %s are counted, and one that is cut in two is seen', async (engine, { skip }) => {
  skip(!findPoppler(), NO_POPPLER);
  const { page } = await (engine === 'Firefox' ? firefox : chromium).openWith('<p>A line</p>'.repeat(200));
  const paper: Paper = { pdf: join(folder, `${engine}-lines.pdf`), format: 'A4' };
  await writeOn(page, paper);
  expect(pagesOf(paper.pdf).length).toBeGreaterThan(2);
  await page.setContent('<div style="block-size: 60cm; background: teal"></div>');
  await writeOn(page, paper);
  const pages = pagesOf(paper.pdf).map((seen) => ({ ...seen, text: 'a\nb\nc' }));
  expect(() => areWellMade(pages, paper.format)).toThrow(/cut in two/);
  await page.close();
});
