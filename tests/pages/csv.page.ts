import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import type { Answer } from '../../src/reckon.js';
import type { WorksheetResult } from '../../src/reckon.js';
import { csvOf } from '../../src/face/export.js';
import { readCsv } from '../face/csv.js';
import { atRest, site, unfold } from './site.js';

const { open } = site();

const hasCalc = ((): boolean => {
  try {
    execFileSync('soffice', ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();
const folder = mkdtempSync(join(tmpdir(), 'quilt-csv-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A cell as Calc holds it: a number is one, and not the text of one. */
type Cell = string | number;

const SIGNS: Record<string, string> = { lt: '<', gt: '>', quot: '"', apos: "'", amp: '&' };
/** The text of a cell's paragraphs; the file is indented round them. */
const plain = (xml: string): string =>
  Array.from(xml.matchAll(/<text:p>(.*?)<\/text:p>/gs), ([, inside]) => inside)
    .join('\n')
    .replace(/<text:s\/>/g, ' ')
    .replace(/<[^>]*>/g, '')
    .replace(/&(lt|gt|quot|apos|amp);/g, (_, sign: string) => SIGNS[sign]!);

const ENGLISH = { between: ',', language: 1033 };
const GERMAN = { between: ';', language: 1031 };

/** Opens a CSV in LibreOffice Calc in this language, and returns the text of its cells. */
const inCalc = (csv: string, name: string, { between, language } = ENGLISH): Cell[][] => {
  writeFileSync(join(folder, `${name}.csv`), csv);
  // Commas or semicolons between, double quotes round, UTF-8, from the first line, each column as Calc sees fit.
  const filter = `--infilter=CSV:${between.charCodeAt(0)},34,76,1,,${language}`;
  execFileSync(
    'soffice',
    [
      `-env:UserInstallation=${pathToFileURL(join(folder, 'profile')).href}`,
      ...['--headless', filter, '--convert-to', 'fods', '--outdir', folder],
      join(folder, `${name}.csv`),
    ],
    { stdio: 'ignore', timeout: 120_000 },
  );
  const sheet = readFileSync(join(folder, `${name}.fods`), 'utf8');
  expect(sheet, 'nothing in it is a formula').not.toContain('table:formula');
  const repeated = (tag: string, what: string): number =>
    Number(new RegExp(`number-${what}-repeated="(\\d+)"`).exec(tag)?.[1] ?? 1);
  const read = (tag: string, text: string): Cell => {
    const kind = /office:value-type="(\w+)"/.exec(tag)?.[1];
    const value = Number(/office:value="([^"]*)"/.exec(tag)?.[1]);
    if (kind === 'float') return value;
    if (kind === 'percentage') return `${value * 100} %`;
    // Calc must not turn a cell into a date or into money.
    return kind && kind !== 'string' ? `${kind}: ${plain(text)}` : plain(text);
  };
  return [...sheet.matchAll(/<table:table-row\b([^>]*)>(.*?)<\/table:table-row>/gs)].flatMap(
    ([, row, inside]) => {
      const cells = [
        ...inside!.matchAll(/<table:table-cell\b([^>]*?)(?:\/>|>(.*?)<\/table:table-cell>)/gs),
      ].flatMap(([, tag, text = '']) =>
        Array<Cell>(Math.min(repeated(tag!, 'columns'), 20)).fill(read(tag!, text)),
      );
      return Array.from({ length: Math.min(repeated(row!, 'rows'), 5) }, () => cells);
    },
  );
};

it('the worksheet’s CSV opens in LibreOffice Calc with its shopping list and cut list, numbers as numbers', async ({
  skip,
}) => {
  const { page, faults } = await open('/worksheet.html');
  await atRest(page);
  const result = await page.$eval(
    'quilt-worksheet',
    (at) => (at as unknown as { result: WorksheetResult }).result,
  );
  const cuts = await page.$$eval(
    'quilt-top, quilt-borders, quilt-backing, quilt-binding, quilt-batting, quilt-cutting',
    (all) => all.flatMap((at) => (at as unknown as { result: Answer }).result.cuts),
  );
  await unfold(page, 'quilt-worksheet');
  const csv = await page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        HTMLAnchorElement.prototype.click = function click(this: HTMLAnchorElement) {
          void fetch(this.href).then(async (file) =>
            resolve(new TextDecoder('utf-8', { ignoreBOM: true }).decode(await file.arrayBuffer())),
          );
        };
        const buttons = [
          ...document.querySelector('quilt-worksheet')!.shadowRoot!.querySelectorAll('button'),
        ];
        buttons.find((at) => at.textContent.trim() === 'Download CSV')!.click();
      }),
  );
  expect(faults).toEqual([]);
  await page.close();

  const written = readCsv(csv.replace(/^\uFEFF/, ''));
  expect(new Set(written.map(({ length }) => length)).size).toBe(1);
  const cells = hasCalc
    ? inCalc(csv, 'worksheet')
    : written.map((row) => row.map((cell) => (/^-?\d+(\.\d+)?$/.test(cell) ? Number(cell) : cell)));

  // As Calc has them, the cells are those that were written: nothing became a date or a formula.
  for (const [at, row] of written.entries())
    for (const [column, cell] of row.entries()) {
      const number = /^-?\d+(\.\d+)?$/.test(cell) ? Number(cell) : undefined;
      expect(cells[at]?.[column] ?? '', `row ${at + 1}, column ${column + 1}`).toBe(number ?? cell);
    }

  const row = (...starts: string[]): Cell[] =>
    cells.find((cells) => starts.every((start, at) => cells[at] === start)) ??
    expect.fail(`There is no row ${starts.join(', ')}`);
  const heads = row('Fabric', 'Name', 'For', 'Needed (in)');
  const column = (name: string): number => heads.indexOf(name);
  const fourPlaces = (text: string): number => Number(exact(text).valueOf().toFixed(4));
  for (const { letter, name, need, buy, price, cost, parts } of result.fabrics) {
    const line = row(letter, name, parts.map(({ title }) => title.toLowerCase()).join(', '));
    expect(line[column('Needed (in)')]).toBe(fourPlaces(need));
    expect(line[column('Buy')]).toBe(exact(buy.amount).valueOf());
    expect(line[column('Unit')]).toBe('yd');
    expect([line[column('Price')], line[column('Cost')]]).toEqual([
      Number(price!.amount),
      Number(cost!.amount),
    ]);
  }
  for (const { fabric, name, title, text, price, cost } of result.items) {
    const line = row(fabric, name, title.toLowerCase());
    expect(`${line[column('Buy')]} ${line[column('Unit')]}`).toBe(text);
    expect(line[column('Buy')]).toBeTypeOf('number');
    expect([line[column('Price')], line[column('Cost')]]).toEqual([
      Number(price!.amount),
      Number(cost!.amount),
    ]);
  }
  expect(row('Total')[column('Cost')]).toBe(Number(result.total!.amount));

  const from = cells.findIndex(([first]) => first === 'Cut list') + 2;
  const listed = cells.slice(from, from + cuts.length);
  const [fabric, , , piece, count, width, length] = [0, 1, 2, 3, 4, 5, 6];
  expect(cells[from - 1]!.slice(0, 7)).toEqual([
    'Fabric',
    'Name',
    'For',
    'Piece',
    'How many',
    'Width (in)',
    'Length (in)',
  ]);
  const sorted = (rows: Cell[][]): string[] => rows.map((row) => JSON.stringify(row)).sort();
  expect(sorted(listed.map((row) => [row[count]!, row[width]!, row[length]!]))).toEqual(
    sorted(cuts.map((cut) => [cut.count, fourPlaces(cut.width), fourPlaces(cut.length)])),
  );
  for (const row of listed) expect(row[piece]).not.toBe('');
  // Every fabric of the quilt, and the batting, which has none.
  expect(new Set(listed.map((row) => row[fabric]))).toEqual(new Set(['A', 'B', 'C', 'D', 'E', '']));
  skip(!hasCalc, 'LibreOffice is not installed: the CSV was read without it.');
}, 180_000);

it('a CSV in a language with a decimal comma opens in a German LibreOffice Calc in columns, numbers as numbers', ({
  skip,
}) => {
  skip(!hasCalc, 'LibreOffice is not installed.');
  const cells: Cell[][] = [
    ['Row', 'Inches', 'How we worked it out'],
    ['Width; as cut', 66.5, '58 + 2 × 4,25 = 66,5 in, cut'],
    ['say "so"', -12, '＝1+1'],
  ];
  const [heads, first, last] = inCalc(csvOf(cells, true), 'german', GERMAN);
  expect([heads, first].map((row) => row!.slice(0, 3))).toEqual(cells.slice(0, 2));
  expect(last!.slice(0, 3)).toEqual(['say "so"', -12, "'＝1+1"]);
});

it('a CSV is no formula anywhere, whichever separator a spreadsheet takes it to have', ({ skip }) => {
  skip(!hasCalc, 'LibreOffice is not installed.');
  const signs = ['=1+1', '+1+1', '-1+1', '@SUM(A1)', '＝1+1', '＋1+1'];
  const cells = signs.flatMap((sign) =>
    ['', 'Sky;', 'Sky,', 'Sky\t', 'Sky\n', 'Sky; ', 'a;"', '\t', ' '].map((before) => [
      'x',
      before + sign,
      'y',
    ]),
  );
  for (const comma of [false, true])
    for (const between of [',', ';', '\t'])
      inCalc(csvOf(cells, comma), `signs-${comma}-${between.charCodeAt(0)}`, { ...GERMAN, between });
});
