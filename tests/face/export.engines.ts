import { expect } from 'chai';
import { readCsv } from './csv.js';
import {
  all,
  answer,
  answered,
  find,
  mount,
  pressButton,
  settled,
  show,
  TAGS,
  text,
  unfold,
  until,
  write,
  writeAndLeave,
  type Sheet,
} from './fixture.js';

const undo: (() => void)[] = [];
afterEach(() => undo.splice(0).forEach((back) => back()));

/** Puts something else in the place of a browser's own member until the test is over. */
const stub = (owner: object, member: string, descriptor: PropertyDescriptor): PropertyDescriptor => {
  const own = Object.getOwnPropertyDescriptor(owner, member);
  Object.defineProperty(owner, member, { configurable: true, ...descriptor });
  undo.push(() => (own ? Object.defineProperty(owner, member, own) : Reflect.deleteProperty(owner, member)));
  return own!;
};

const copied = (writeText?: (text: string) => Promise<void>): void =>
  void stub(navigator, 'clipboard', { value: writeText && { writeText } });

/** What the sheet shows as rows of cells, read off the page: labels, values and how. */
const shownRows = (sheet: Sheet): string[][] =>
  all<HTMLElement>(sheet, '[data-row]').map((cell) => {
    const row = cell.closest('tr')!;
    const chosen =
      cell instanceof HTMLSelectElement
        ? cell.selectedOptions[0]!.text
        : cell instanceof HTMLInputElement && cell.type === 'text'
          ? cell.value
          : undefined;
    return [text(row.querySelector('th')), chosen ?? text(cell)];
  });

const expectCells = (sheet: Sheet, cells: string[][]): void => {
  const { cuts, ...answer } = answered(sheet);
  // Each border has a row.
  const working = answer.working.flatMap((row) =>
    row.label === 'Border width'
      ? row.value.split(', ').map((value, at) => ({ ...row, label: `Border ${at + 1}`, value }))
      : [row],
  );
  expect(new Set(cells.map(({ length }) => length))).to.deep.equal(new Set([4]));
  const rows = cells.slice(1, 1 + working.length);
  expect(rows.map(([label, value]) => [label, value])).to.deep.equal(
    working.map(({ label, value }) => [label, value]),
  );
  for (const [at, { inches, how }] of working.entries()) {
    // The exact inches as a decimal, worked anew: `66 1/2` → 66.5.
    const decimal =
      inches &&
      String(
        +(inches.match(/\S+/g) ?? [])
          .map((part) => part.split('/').map(Number))
          .reduce((sum, [top, under = 1]) => sum + top! / under, 0)
          .toFixed(4),
      );
    expect(rows[at]![2], rows[at]![0]).to.equal(decimal ?? '');
    expect(rows[at]![3]).to.equal(how);
  }
  const cutRows = cells.slice(1 + working.length);
  expect(cutRows).to.have.length(cuts.length);
  for (const [at, { piece, count, text: size }] of cuts.entries())
    expect(cutRows[at]!.join(' ')).to.include(piece).and.include(size).and.include(String(count));
};

for (const tag of TAGS)
  describe(`${tag}, taken away`, () => {
    it('is copied as a table: tabs between cells, the rows that are shown, and says so', async () => {
      const sheet = await mount(tag, { price: '12.50' });
      const texts: string[] = [];
      copied((written) => Promise.resolve(void texts.push(written)));
      await pressButton(sheet, 'Copy table');
      await settled(sheet);
      expect(texts).to.have.length(1);
      const cells = texts[0]!
        .replace(/\n$/, '')
        .split('\n')
        .map((line) => line.split('\t'));
      expectCells(sheet, cells);
      await unfold(sheet);
      for (const [label, value] of shownRows(sheet).filter(([, value]) => /\d/.test(value!)))
        expect(
          cells.map((row) => row.slice(0, 2)),
          label,
        ).to.deep.include([label, value]);
      expect(find(sheet, '.actions [role=status], [role=status]:not([part])')!.textContent).to.include(
        'Copied',
      );
    });

    it('is downloaded as a spreadsheet, named after the calculator', async () => {
      const sheet = await mount(tag);
      const names: string[] = [];
      const files: Blob[] = [];
      stub(HTMLAnchorElement.prototype, 'click', {
        value(this: HTMLAnchorElement) {
          names.push(this.download);
        },
      });
      stub(URL, 'createObjectURL', { value: (file: Blob) => `blob:${files.push(file)}` });
      await pressButton(sheet, 'Download spreadsheet');
      await until(() => names.length > 0);
      expect(names).to.deep.equal([`${tag.replace('quilt-', '')}.xlsx`]);
      const [file] = files;
      expect(file!.type).to.include('spreadsheetml');
      // A zip archive.
      expect(await file!.slice(0, 2).text()).to.equal('PK');
    });

    it('is downloaded as CSV by RFC 4180, named after the calculator', async () => {
      const sheet = await mount(tag);
      const offered: HTMLAnchorElement[] = [];
      stub(HTMLAnchorElement.prototype, 'click', {
        value(this: HTMLAnchorElement) {
          offered.push(this);
        },
      });
      await pressButton(sheet, 'Download');
      expect(offered.map(({ download }) => download)).to.deep.equal([`${tag.replace('quilt-', '')}.csv`]);
      const response = await fetch(offered[0]!.href);
      expect(response.headers.get('content-type')).to.match(/^text\/csv\b/);
      const written = new TextDecoder('utf-8', { ignoreBOM: true, fatal: true }).decode(
        await response.arrayBuffer(),
      );
      expect(written[0]).to.equal('\uFEFF');
      expectCells(sheet, readCsv(written.slice(1)));
    });

    it('is printed alone, from a copy that shows what the sheet shows', async () => {
      // A language that has no words of its own, so that none come between the copy and the look at it.
      document.documentElement.lang = 'en-AU';
      undo.push(() => document.documentElement.removeAttribute('lang'));
      const sheet = await mount(tag, { dir: 'rtl', style: 'font-family: monospace' });
      await unfold(sheet);
      await writeAndLeave(sheet, 'width', '61 1/2');
      const prints: Window[] = [];
      const own = stub(HTMLIFrameElement.prototype, 'contentWindow', {
        get(this: HTMLIFrameElement): Window {
          const inside = own.get!.call(this) as Window;
          inside.print = () => void prints.push(inside);
          return inside;
        },
      });
      await pressButton(sheet, 'Print');
      expect(prints).to.have.length(1);
      const { document: page } = prints[0]!;
      const copy = page.body.firstElementChild!.shadowRoot!;
      expect([page.title.toLowerCase(), page.documentElement.lang, page.body.children.length]).to.deep.equal([
        tag.replace('quilt-', ''),
        'en-AU',
        1,
      ]);
      expect(text(copy.querySelector('[part~=answer]'))).to.equal(answer(sheet));
      const values = (root: ShadowRoot): string[] =>
        [...root.querySelectorAll<HTMLInputElement>('input, select, [part~=value]')].map(
          ({ value, checked }) => `${value} ${checked}`,
        );
      expect(values(copy)).to.deep.equal(values(sheet.shadowRoot!));
      expect(copy.querySelectorAll('svg *').length).to.equal(all(sheet, 'svg *').length);
      const look = (view: Window, root: ShadowRoot): string[] => {
        const { borderBlockEndStyle, direction, fontFamily } = view.getComputedStyle(
          root.querySelector('[part~=answer] p')!,
        );
        return [borderBlockEndStyle, direction, fontFamily];
      };
      expect(look(prints[0]!, copy)).to.deep.equal(look(window, sheet.shadowRoot!));
      // A frame for printing is neither seen nor read, and is gone once it is printed.
      const frame = prints[0]!.frameElement!;
      const { right, left } = frame.getBoundingClientRect();
      expect(right <= 0 || left >= innerWidth).to.equal(true);
      expect(document.documentElement.scrollWidth).to.equal(document.documentElement.clientWidth);
      const gone = new Promise((resolve) =>
        new MutationObserver(resolve).observe(document.body, { childList: true }),
      );
      prints[0]!.dispatchEvent(new Event('afterprint'));
      await gone;
      expect(frame.isConnected).to.equal(false);
    });
  });

describe('Copying where the browser does not allow it', () => {
  const refusals: [what: string, writeText: (() => Promise<void>) | undefined][] = [
    ['refused', () => Promise.reject(new DOMException('No', 'NotAllowedError'))],
    ['unknown, as on a page without https', undefined],
  ];
  for (const [what, writeText] of refusals)
    it(`${what}: says so, and where to get the same`, async () => {
      const sheet = await mount('quilt-backing');
      copied(writeText);
      await pressButton(sheet, 'Copy table');
      await settled(sheet);
      const said = all(sheet, '[role=status]')
        .map((at) => text(at))
        .join(' ');
      expect(said).to.include('does not let').and.include('CSV').and.not.include('Copied');
    });
});

describe('A result that was wrong for a while', () => {
  it('is taken away as it is now', async () => {
    const sheet = await mount('quilt-backing');
    await write(sheet, 'width', 'abc');
    await write(sheet, 'width', '60');
    const texts: string[] = [];
    copied((written) => Promise.resolve(void texts.push(written)));
    await pressButton(sheet, 'Copy table');
    // 60 + 2 × 4
    expect(texts.join()).to.include('68 in').and.not.include('66 in');
  });

  it('with a text of the author’s that a spreadsheet would reckon stays text', async () => {
    const sheet = await mount('quilt-batting', { packages: '=1+1 90 x 100' });
    const offered: string[] = [];
    copied((written) => Promise.resolve(void offered.push(written)));
    await pressButton(sheet, 'Copy table');
    for (const cell of offered.join().split(/[\t\n]/)) expect(cell).not.to.match(/^=/);
  });

  it('can be in a form without sending it', async () => {
    const form = await show<HTMLFormElement>(
      '<form><quilt-backing width="58" length="70"></quilt-backing></form>',
    );
    let sends = 0;
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      sends += 1;
    });
    copied(() => Promise.resolve());
    await pressButton(form.firstElementChild as Sheet, 'Copy');
    expect(sends).to.equal(0);
  });
});
