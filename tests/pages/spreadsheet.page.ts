import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fileOf } from '../../src/face/spreadsheet-file.js';
import type { SheetCell } from '../../src/words/sheet-rows.js';
import { tagOf } from '../calculators.js';
import { readCsv } from '../face/csv.js';
import { ROOT } from '../tools/run.mjs';
import { spread, type Given } from '../words/spreadsheets.js';
import { dist, openMade } from './made.js';
import { atRest, site, unfold } from './site.js';

const { open, openWith } = site();

const hasCalc = ((): boolean => {
  try {
    execFileSync('soffice', ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();
const folder = mkdtempSync(join(tmpdir(), 'quilt-spreadsheet-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// Commas between, quotes round, UTF-8, and numbers with all their digits.
const AS_TEXT = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false';

/** Makes Calc work out a file again when it opens it, as it does after every change. */
const RECKON_AGAIN = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;
beforeAll(() => {
  mkdirSync(join(folder, 'profile/user'), { recursive: true });
  writeFileSync(join(folder, 'profile/user/registrymodifications.xcu'), RECKON_AGAIN);
});

/** Opens spreadsheet files in LibreOffice Calc, and returns the values that it works out. */
const inCalc = (files: string[]): string[][][] => {
  execFileSync(
    'soffice',
    [
      `-env:UserInstallation=${pathToFileURL(join(folder, 'profile')).href}`,
      ...['--headless', '--convert-to', AS_TEXT, '--outdir', folder],
      ...files.map((name) => join(folder, `${name}.xlsx`)),
    ],
    { stdio: 'ignore', timeout: 120_000 },
  );
  return files.map((name) =>
    readCsv(readFileSync(join(folder, `${name}.csv`), 'utf8').replace(/\r?\n/g, '\r\n')),
  );
};

/** A number as Calc writes it; a percentage keeps its sign. */
const numberIn = (text = ''): number => (text.endsWith('%') ? parseFloat(text) / 100 : Number(text || NaN));

const write = async (name: string, file: Blob): Promise<void> =>
  writeFileSync(join(folder, `${name}.xlsx`), Buffer.from(await file.arrayBuffer()));

interface Change {
  name: string;
  given: Given;
  /** Changes one input a little, so that counts and layouts stay the same. */
  change: Given;
}

const QUILT = { width: '58', length: '70' };
const CM = { width: '150', length: '180', units: 'cm' };
const CHANGES: Change[] = [
  { name: 'backing', given: { ...QUILT, price: '12.50 EUR' }, change: { width: '59 1/4' } },
  { name: 'backing', given: { ...QUILT, shrinkage: '3' }, change: { increment: '1/4 yd' } },
  { name: 'backing', given: { ...CM, repeat: '30', price: '12' }, change: { repeat: '32' } },
  {
    name: 'binding',
    given: { ...QUILT, finished: '3/8', increment: 'thirds' },
    change: { thickness: '3/16' },
  },
  { name: 'binding', given: { ...CM, price: '12' }, change: { allowance: '30' } },
  { name: 'binding', given: { ...QUILT, cut: 'bias' }, change: { increment: '1/4 yd' } },
  { name: 'borders', given: { ...QUILT, borders: '2, 4 1/2', price: '9' }, change: { borders: '2, 4 5/8' } },
  { name: 'borders', given: { ...QUILT, borders: '2', target: '70 x 84' }, change: { target: '71 x 84' } },
  {
    name: 'borders',
    given: { ...CM, borders: '5', grain: 'along', corners: 'mitred' },
    change: { length: '185.5' },
  },
  { name: 'batting', given: { ...QUILT, roll: '96', price: '8' }, change: { overage: '4 1/2' } },
  {
    name: 'batting',
    given: { bed: 'queen', roll: '120', increment: '3 in', price: '8' },
    change: { drop: '13' },
  },
  { name: 'top', given: { block: '12', across: '4', down: '5' }, change: { block: '12 1/2' } },
  {
    name: 'top',
    given: { block: '12', across: '4', down: '5', set: 'on-point' },
    change: { block: '12.001' },
  },
  {
    name: 'top',
    given: { block: '30', across: '4', down: '5', sashing: '5', units: 'cm' },
    change: { increment: '25 cm' },
  },
  {
    name: 'cutting',
    given: { list: 'A | square | 3 1/2 | 12\nB | strip | 4 x 5 | 10', price: '10', shrinkage: '3' },
    change: { shrinkage: '5' },
  },
  {
    name: 'cutting',
    given: { list: 'A | square | 3 1/2 | 12', sheet: 'fat-quarter', price: '3' },
    change: { price: '3.25' },
  },
  {
    name: 'worksheet',
    given: {
      fabrics: [{ letter: 'A', price: '12.50' }],
      parts: [
        { title: 'Binding', fabric: 'A', need: '23', width: '40' },
        { title: 'Borders', fabric: 'A', need: '12 1/2', width: '40' },
      ],
    },
    change: { increment: '1/4 yd' },
  },
];

const isInput = (cell: SheetCell): cell is { value: number } =>
  typeof cell === 'object' && !cell.formula && typeof cell.value === 'number';

/** The file after a reader changed one number. Every formula keeps its old value. */
const changed = (cells: SheetCell[][], wanted: SheetCell[][], count: number): SheetCell[][] => {
  let changes = 0;
  const made = cells.map((row, at) => {
    const [now, other] = [row[1], wanted[at]?.[1]];
    if (at >= count || !isInput(now) || !isInput(other) || now.value === other.value) return row;
    changes++;
    return [row[0], other, ...row.slice(2)];
  });
  expect(changes, 'one input differs, and nothing that was found').toBe(1);
  return made;
};

describe('a spreadsheet file in LibreOffice Calc', () => {
  it('reckons again, as the page does, when a number in it is changed', async ({ skip }) => {
    skip(!hasCalc, 'LibreOffice is not installed.');
    const cases = CHANGES.map(({ name, given, change }, at) => {
      const before = spread(name, given);
      const after = spread(name, { ...given, ...change });
      expect([before.reckoning.issues, after.reckoning.issues], name).toEqual([[], []]);
      const count = before.cells.findIndex((row) => !row.length);
      const labels = (cells: SheetCell[][]): SheetCell[] => cells.slice(0, count).map(([label]) => label);
      expect(labels(after.cells), name).toEqual(labels(before.cells));
      return { file: `${name}-${at}`, count, change, wanted: after.cells, before: before.cells };
    });
    for (const { file, before, wanted, count } of cases)
      await write(file, await fileOf(changed(before, wanted, count)));

    const found = inCalc(cases.map(({ file }) => file));
    let followed = 0;
    for (const [at, { file, change, before, wanted, count }] of cases.entries())
      for (let row = 1; row < count; row++) {
        const [label, cell] = wanted[row] ?? [];
        const about = `${file}, ${JSON.stringify(change)}: ${JSON.stringify(label)}`;
        if (typeof cell !== 'object' || typeof cell.value !== 'number') continue;
        expect(numberIn(found[at]?.[row]?.[1]), about).toBeCloseTo(cell.value, 5);
        const earlier = before[row]?.[1];
        if (cell.formula && typeof earlier === 'object' && earlier.value !== cell.value) followed++;
      }
    expect(followed, 'values that followed the change').toBeGreaterThan(CHANGES.length * 2);
  }, 180_000);

  it('says of a count that was found when it is too little', async ({ skip }) => {
    skip(!hasCalc, 'LibreOffice is not installed.');
    const { cells } = spread('backing', QUILT);
    const longer = cells.map((row) => (row[0] === 'Quilt length' ? [row[0], { value: 90 }] : row));
    await write('enough', await fileOf(cells));
    await write('longer', await fileOf(longer));
    const reasons = inCalc(['enough', 'longer']).map(
      (sheet) => sheet.find(([label]) => label === 'Panels side by side')?.[3],
    );
    expect(reasons[0]).toBe('2 × 40 − 2 × 1/2 = 79 ≥ 78 in');
    expect(reasons[1]).toMatch(/not enough/i);
  }, 180_000);
});

interface Downloaded {
  name: string;
  bytes: number[];
  /** What the page said, in place of a file. */
  said: string;
}

/** Presses the button of an element, and returns the download: its name and its bytes. */
const downloaded = async (page: Page, tag: string): Promise<Downloaded> => {
  await unfold(page, tag);
  return page.evaluate(
    (tag) =>
      new Promise<Downloaded>((resolve) => {
        const root = document.querySelector(tag)!.shadowRoot!;
        const saying = (): string => root.querySelector('.actions [role=status]')!.textContent;
        const files: Blob[] = [];
        URL.createObjectURL = (file) => `blob:${files.push(file as Blob)}`;
        HTMLAnchorElement.prototype.click = function click(this: HTMLAnchorElement) {
          const { download: name } = this;
          void files
            .at(-1)!
            .arrayBuffer()
            .then((bytes) => resolve({ name, bytes: [...new Uint8Array(bytes)], said: saying() }));
        };
        new MutationObserver(() => saying() && resolve({ name: '', bytes: [], said: saying() })).observe(
          root,
          {
            childList: true,
            characterData: true,
            subtree: true,
          },
        );
        const buttons = [...root.querySelectorAll('button')];
        buttons.find((at) => at.textContent.trim() === 'Download spreadsheet')!.click();
      }),
    tag,
  );
};

/** The values in the cells of a downloaded file, if LibreOffice is there to open it. */
const opened = (name: string, bytes: number[]): string[][] | undefined => {
  // A zip archive.
  expect(bytes.slice(0, 4)).toEqual([0x50, 0x4b, 3, 4]);
  writeFileSync(join(folder, `${name}.xlsx`), Buffer.from(bytes));
  return hasCalc ? inCalc([name])[0] : undefined;
};

describe('the button for a spreadsheet file', () => {
  const SCRIPTS: Record<string, string> = {
    'quilt-backing.js': '<script type="module" src="/dist/quilt-backing.js"></script>',
    'quilt-reckoner.js': '<script type="module" src="/dist/quilt-reckoner.js?v=2"></script>',
    'quilt-reckoner.classic.js': '<script src="/dist/quilt-reckoner.classic.js"></script>',
  };
  it.each(Object.entries(SCRIPTS))(
    'downloads one from %s, and loads what writes it only then',
    async (name, script) => {
      const body = `${script}<link rel="icon" href="data:,">${tagOf('backing')}`;
      const { page, faults } = await openMade(
        open,
        `<!doctype html><html lang="en"><title>A page</title>${body}`,
        {},
      );
      await atRest(page);
      const loaded: string[] = [];
      page.on('request', (request) => loaded.push(request.url()));
      const file = await downloaded(page, 'quilt-backing');
      expect(file.name).toBe('backing.xlsx');
      expect(loaded.filter((url) => url.includes('spreadsheet'))).toHaveLength(1);
      const cells = opened(name.replaceAll('.', '-'), file.bytes);
      if (cells)
        expect(cells.find(([label]) => label === 'Backing width')?.slice(0, 3)).toEqual([
          'Backing width',
          '66',
          'in',
        ]);
      expect(faults).toEqual([]);
      await page.close();
    },
    120_000,
  );

  it('downloads one under a strict policy, and with a list of many cuts', async () => {
    const policy = `default-src 'self'; require-trusted-types-for 'script'; trusted-types lit-html; img-src data:`;
    const list = Array.from({ length: 40 }, (_, at) => `A | piece ${at} | ${2 + at / 8} x 3 | 3`).join('\n');
    const { page, faults } = await openWith(
      `<script type="module" src="/dist/quilt-cutting.js"></script>${tagOf('cutting', { list })}`,
      { 'content-security-policy': policy },
    );
    await atRest(page);
    const file = await downloaded(page, 'quilt-cutting');
    const cells = opened('policy', file.bytes);
    if (cells) expect(cells.filter(([label]) => /piece \d+$/.test(label ?? ''))).toHaveLength(40);
    expect(faults).toEqual([]);
    await page.close();
  }, 120_000);

  it('says so where what writes it cannot be loaded', async () => {
    const { page } = await openMade(
      open,
      `<!doctype html><html lang="en"><title>A page</title>${SCRIPTS['quilt-backing.js']}${tagOf('backing')}`,
      { '/dist/quilt-backing.js': dist('quilt-backing.js') },
    );
    await atRest(page);
    await page.setOfflineMode(true);
    expect((await downloaded(page, 'quilt-backing')).said).toMatch(/did not load/);
    await page.close();
  }, 120_000);

  it('needs nothing else on the quick page, opened from disk and offline', async () => {
    const { page, faults } = await open('about:blank');
    await page.setOfflineMode(true);
    await page.goto(pathToFileURL(`${ROOT}dist/quick.html`).href, { waitUntil: 'load' });
    await atRest(page);
    const file = await downloaded(page, 'quilt-backing');
    const cells = opened('quick', file.bytes);
    if (cells) expect(cells.map(([label]) => label)).toContain('Backing width');
    expect(faults).toEqual([]);
    await page.close();
  }, 120_000);

  it('on a worksheet has the shopping list and the cut list under the rows', async () => {
    const { page, faults } = await open('/worksheet.html');
    await atRest(page);
    const file = await downloaded(page, 'quilt-worksheet');
    const cells = opened('worksheet', file.bytes);
    const heads = cells?.map(([label]) => label) ?? [];
    if (cells) expect(heads.indexOf('Cut list')).toBeGreaterThan(heads.indexOf('Shopping list'));
    expect(faults).toEqual([]);
    await page.close();
  }, 120_000);
});
