import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { QuiltCutting } from '../../../src/index.js';
import { OWN } from '../../../src/face/choices.js';
import {
  all,
  answer,
  answered,
  at,
  atInGrid,
  cell,
  choose,
  chooseInGrid,
  find,
  gridCell,
  leave,
  listen,
  looksStale,
  messageAt,
  pasteInGrid,
  press,
  refused,
  settled,
  show,
  text,
  until,
  writeInGrid,
  type Sheet,
} from '../../face/fixture.js';

type Cutting = QuiltCutting & Sheet;

const LIST = 'A | square | 3 1/2 | 12\nB | rail | 2 x 6 1/2 | 8';
const cutting = (list = LIST, attributes = ''): Promise<Cutting> =>
  show<Cutting>(`<quilt-cutting list="${list}" ${attributes}></quilt-cutting>`);

/** The rows of the grid, without the empty one at the end. */
const rows = (sheet: Sheet): string[][] =>
  all(sheet, '.line:not(.heads)')
    .map((line) => [...line.querySelectorAll<HTMLInputElement>('[data-at]')].map(({ value }) => value))
    .slice(0, -1);
const wrong = (sheet: Sheet): (string | null)[] =>
  all(sheet, '.lines [aria-invalid]').map((found) => found.getAttribute('aria-label'));
const cuts = (sheet: Sheet): string[] =>
  answered(sheet).cuts.map(({ count, piece, width, length }) => `${count} ${piece} ${width} × ${length}`);
const chosen = (at: Element): string => text((at as HTMLSelectElement).selectedOptions[0]);

describe('the cut list as a grid of cells', () => {
  it('has a row for each piece, and an empty one after the last', async () => {
    const sheet = await cutting();
    expect(rows(sheet)).to.deep.equal([
      ['A', 'square', '3 1/2', '', '12', 'rectangle'],
      ['B', 'rail', '2', '6 1/2', '8', 'rectangle'],
    ]);
    expect(all(sheet, '.line.next')).to.have.length(1);
    expect(gridCell(sheet, 2, 3).getAttribute('aria-label')).to.equal('Row 2, width');
    expect(gridCell(sheet, 3, 5).getAttribute('aria-label')).to.equal('Row 3, how many');
    const names = all(sheet, '[data-at]').map((found) => found.getAttribute('aria-label'));
    expect(new Set(names).size).to.equal(names.length);
    // A square's other side is as long.
    expect(gridCell(sheet, 1, 4).placeholder).to.equal('3 1/2');
  });

  it('reads the columns of the author’s own table', async () => {
    const sheet = await show<Cutting>(`<quilt-cutting><table>
      <tr><th>How many</th><th>Piece</th><th>Fabric</th><th>Finished size</th></tr>
      <tr><td>12</td><td>square</td><td>A</td><td>3 in</td></tr>
      <tr><td>8</td><td>half-square triangles</td><td>B</td><td>3 in</td></tr>
    </table></quilt-cutting>`);
    expect(rows(sheet)).to.deep.equal([
      ['A', 'square', '3 in', '', '12', 'rectangle-finished'],
      ['B', 'half-square triangles', '3 in', '', '8', 'half-finished'],
    ]);
    const before = cuts(sheet);
    await writeInGrid(sheet, 1, 5, '13');
    // The rest of the list is cut as before: 8 triangles are 4 squares of 3 + 7/8.
    expect(cuts(sheet)).to.deep.equal(['13 A · square 3 1/2 × 3 1/2', before[1]]);
    expect(before[1]).to.match(/^4 B .* 3 7\/8 × 3 7\/8$/);
  });

  it('takes a new row by typing in the empty one, and finds no fault while it is begun', async () => {
    const sheet = await cutting();
    const good = answer(sheet);
    const heard = listen(sheet);
    await writeInGrid(sheet, 3, 1, 'C');
    expect(all(sheet, '.line.next')).to.have.length(1);
    expect([messageAt(sheet, 'list'), wrong(sheet)]).to.deep.equal(['', []]);
    await writeInGrid(sheet, 3, 2, 'star point');
    await writeInGrid(sheet, 3, 3, '4 1/2');
    expect([messageAt(sheet, 'list'), wrong(sheet)]).to.deep.equal(['', []]);
    expect(text(find(sheet, 'strong'))).to.equal(text(find(sheet, 'strong')));
    await writeInGrid(sheet, 3, 5, '6');
    expect(cuts(sheet)).to.include('6 C · star point 4 1/2 × 4 1/2');
    expect(answer(sheet)).to.not.equal(good);
    await leave(sheet);
    expect(rows(sheet)[2]).to.deep.equal(['C', 'star point', '4 1/2', '', '6', 'rectangle']);
    expect(sheet.list).to.equal(`${LIST}\nC | star point | 4 1/2 | 6`);
    expect(new Set(heard.map((said) => said.split(' ')[0]))).to.deep.equal(new Set(['input', 'change']));
  });

  it('says what a row lacks once the reader has left it', async () => {
    const sheet = await cutting();
    await writeInGrid(sheet, 3, 3, '4 1/2');
    gridCell(sheet, 1, 1).focus();
    await settled(sheet);
    expect(messageAt(sheet, 'list')).to.equal('Row 3: How many is missing. Write it like 12.');
    expect(wrong(sheet)).to.deep.equal(['Row 3, how many']);
    expect(looksStale(find(sheet, '[part=amount]'))).to.equal(true);
  });

  it('starts with one empty row', async () => {
    const sheet = await show<Cutting>('<quilt-cutting></quilt-cutting>');
    expect([rows(sheet), all(sheet, '.line.next').length]).to.deep.equal([[], 1]);
    expect(refused(sheet).errors).to.have.length(1);
    await writeInGrid(sheet, 1, 3, '3');
    await writeInGrid(sheet, 1, 5, '4');
    expect(cuts(sheet)).to.deep.equal(['4 piece 3 × 3']);
  });

  it('says how it is filled in once by ear, at its first cell', async () => {
    const sheet = await cutting();
    const described = [...sheet.shadowRoot!.querySelectorAll('[data-at][aria-describedby]')];
    expect(described.map((cell) => (cell as HTMLElement).dataset['at'])).to.deep.equal(['0 0']);
  });

  it('marks the cell that is wrong, and keeps what was typed', async () => {
    const sheet = await cutting();
    for (const [place, typed, name] of [
      [3, 'wide', 'Row 2, width'],
      [4, '0', 'Row 2, length'],
      [5, 'a few', 'Row 2, how many'],
    ] as const) {
      const before = gridCell(sheet, 2, place).value;
      await writeInGrid(sheet, 2, place, typed);
      await leave(sheet);
      expect(wrong(sheet)).to.deep.equal([name]);
      expect(gridCell(sheet, 2, place).value).to.equal(typed);
      expect(messageAt(sheet, 'list')).to.match(/^Row 2, rail: /);
      expect(gridCell(sheet, 2, place).getAttribute('aria-describedby')).to.equal('how-list');
      await writeInGrid(sheet, 2, place, before);
      await leave(sheet);
      expect([messageAt(sheet, 'list'), wrong(sheet)]).to.deep.equal(['', []]);
    }
    await writeInGrid(sheet, 2, 4, '70');
    await writeInGrid(sheet, 2, 3, '60');
    expect(messageAt(sheet, 'list')).to.match(/^rail, 60 × 70 in: .*does not fit/);
    expect(wrong(sheet)).to.deep.equal(['Row 2, width', 'Row 2, length']);
  });

  it('is walked by Tab from cell to cell, by Enter and the arrows from row to row', async () => {
    const sheet = await cutting(LIST, 'sheet="fat-quarter"');
    gridCell(sheet, 1, 3).focus();
    await press(sheet, 'Tab');
    expect(atInGrid(sheet)).to.equal('0 3');
    await press(sheet, 'Enter');
    expect(atInGrid(sheet)).to.equal('1 3');
    await press(sheet, 'ArrowDown');
    expect(atInGrid(sheet)).to.equal('2 3');
    await press(sheet, 'Shift+Enter');
    expect(atInGrid(sheet)).to.equal('1 3');
    await press(sheet, 'ArrowUp');
    expect(atInGrid(sheet)).to.equal('0 3');
    gridCell(sheet, 3, 3).focus();
    await press(sheet, 'ArrowDown');
    expect(at(sheet)).to.equal('sheet');
    // In a choice the arrows choose, and Enter goes on.
    gridCell(sheet, 1, 6).focus();
    await press(sheet, 'Enter');
    expect(atInGrid(sheet)).to.equal('1 5');
  });

  it('puts a cell back with Escape, and moves a length by the marks of the ruler', async () => {
    const sheet = await cutting();
    const before = sheet.list;
    await writeInGrid(sheet, 2, 2, 'sash');
    await press(sheet, 'Escape');
    expect([rows(sheet)[1]![1], sheet.list]).to.deep.equal(['rail', before]);
    gridCell(sheet, 1, 3).focus();
    await press(sheet, 'Alt+ArrowUp');
    expect(gridCell(sheet, 1, 3).value).to.match(/^3 5\/8/);
    expect(cuts(sheet)[0]).to.equal('12 A · square 3 5/8 × 3 5/8');
  });

  it('keeps an emptied row in its place until the reader leaves the list', async () => {
    const sheet = await cutting(`${LIST}\nC | strip | 2 x 9 | 3`);
    for (const place of [1, 2, 3, 4, 5]) await writeInGrid(sheet, 2, place, '');
    await press(sheet, 'Shift+Enter');
    expect(atInGrid(sheet)).to.equal('0 4');
    expect(rows(sheet)).to.have.length(3);
    expect(cuts(sheet).map((cut) => cut.split(' ')[1])).to.deep.equal(['A', 'C']);
    await leave(sheet);
    expect(rows(sheet).map(([fabric]) => fabric)).to.deep.equal(['A', 'C']);
  });

  it('takes a block of cells from a spreadsheet, and adds rows for it', async () => {
    const sheet = await cutting();
    const heard = listen(sheet);
    await pasteInGrid(sheet, 2, 3, '2 1/2\t7\t9\r\n3\t\t10\r\n4 1/2\t5\t2\r\n');
    await leave(sheet);
    expect(rows(sheet)).to.deep.equal([
      ['A', 'square', '3 1/2', '', '12', 'rectangle'],
      ['B', 'rail', '2 1/2', '7', '9', 'rectangle'],
      ['', '', '3', '', '10', 'rectangle'],
      ['', '', '4 1/2', '5', '2', 'rectangle'],
    ]);
    expect(heard.map((said) => said.split(' ')[0])).to.deep.equal(['input', 'change']);
  });

  it('takes a whole list by its own columns', async () => {
    const sheet = await cutting();
    await pasteInGrid(sheet, 1, 1, 'Qty\tPatch\tFinished size\tFabric\n6\tquarter-square triangles\t4\tC\n');
    expect(rows(sheet)[0]).to.deep.equal(['C', 'quarter-square triangles', '4', '', '6', 'quarter-finished']);
    await pasteInGrid(sheet, 2, 1, 'D | sash | 2 x 9 | 4\nE | square | 5 | 1');
    expect(rows(sheet).slice(1)).to.deep.equal([
      ['D', 'sash', '2', '9', '4', 'rectangle'],
      ['E', 'square', '5', '', '1', 'rectangle'],
    ]);
    await pasteInGrid(sheet, 3, 1, 'F\tstrip\t2 x 20\t2\n');
    expect(rows(sheet)[2]).to.deep.equal(['F', 'strip', '2', '20', '2', 'rectangle']);
  });

  it('becomes a text where a pasted list is longer than anybody types', async () => {
    const sheet = await cutting();
    await pasteInGrid(sheet, 1, 1, Array.from({ length: 101 }, (_, at) => `A | p${at} | 3 | 1`).join('\n'));
    expect(all(sheet, '.lines')).to.have.length(0);
    expect(sheet.shadowRoot!.activeElement).to.equal(cell(sheet, 'list'));
    expect(cell(sheet, 'list').localName).to.equal('textarea');
    // While it is typed as a text it stays one.
    cell(sheet, 'list').select();
    document.execCommand('insertText', false, 'A | square | 3 | 1');
    await settled(sheet);
    expect(sheet.shadowRoot!.activeElement).to.equal(cell(sheet, 'list'));
    await leave(sheet);
    expect(rows(sheet)).to.deep.equal([['A', 'square', '3', '', '1', 'rectangle']]);
  });

  it('says in words how a piece is cut, and takes another way', async () => {
    const sheet = await cutting('A | half-square triangles | 3 | 8\nB | point | 3 | 4');
    expect(chosen(gridCell(sheet, 1, 6))).to.equal('half-square triangles');
    expect(chosen(gridCell(sheet, 2, 6))).to.equal('square or rectangle');
    const heard = listen(sheet);
    await chooseInGrid(sheet, 2, 6, 'quarter-finished');
    await leave(sheet);
    expect(heard.map((said) => said.split(' ')[0])).to.deep.equal(['input', 'change']);
    // Four triangles are one square of 3 + 1 1/4 (“Cutting half- and quarter-square triangles”, All People Quilt).
    expect(cuts(sheet)[1]).to.match(/^1 B .*point.* 4 1\/4 × 4 1\/4$/);
    expect(rows(sheet)[1]).to.deep.equal(['B', 'point', '3', '', '4', 'quarter-finished']);
    // A name that says another way loses the words that say so.
    await chooseInGrid(sheet, 1, 6, 'rectangle');
    await leave(sheet);
    expect(rows(sheet)[0]).to.deep.equal(['A', '', '3', '', '8', 'rectangle']);
    expect(cuts(sheet)[0]).to.match(/^8 A .* 3 × 3$/);
    // And one that is typed says it to the choice.
    await writeInGrid(sheet, 1, 2, 'hst');
    expect(gridCell(sheet, 1, 6).value).to.equal('half');
  });

  it('keeps what the list is in a form, after a reset and without its cells', async () => {
    const form = await show<HTMLFormElement>(
      `<form><quilt-cutting name="cloth" list="${LIST}"></quilt-cutting></form>`,
    );
    const sheet = form.querySelector<Cutting>('quilt-cutting')!;
    const before = new FormData(form).get('cloth');
    await writeInGrid(sheet, 1, 5, '400');
    await until(() => sheet.checkValidity());
    expect(new FormData(form).get('cloth')).to.equal(sheet.value).and.not.equal(before);
    form.reset();
    await settled(sheet);
    expect([rows(sheet)[0]![4], new FormData(form).get('cloth')]).to.deep.equal(['12', before]);
  });

  it('cannot be changed where the page has locked it', async () => {
    const sheet = await cutting(LIST, 'lock="list"');
    expect(all(sheet, '.lines')).to.have.length(0);
    expect(text(cell(sheet, 'list'))).to.include('A | square | 3 1/2 | 12');
  });

  it('takes letters from the worksheet’s fabrics, in a list', async () => {
    const worksheet = await show<Sheet>(`<quilt-worksheet><quilt-fabric letter="A" name="Sand"></quilt-fabric>
      <quilt-fabric letter="B" name="Slate"></quilt-fabric><quilt-cutting list="A | square | 3 | 4\nX | square | 2 | 4"></quilt-cutting></quilt-worksheet>`);
    const sheet = worksheet.querySelector<Cutting>('quilt-cutting')!;
    const options = [...(gridCell(sheet, 1, 1) as unknown as HTMLSelectElement).options].map(
      ({ value, text }) => [value, text],
    );
    expect(options).to.deep.equal([
      ['', '–'],
      ['A', 'A · Sand'],
      ['B', 'B · Slate'],
      ['X', 'X'],
    ]);
    // The longest name is read whole on a phone, and beside the name of the piece where there is more room.
    for (const width of [320, 768]) {
      await setViewport({ width, height: 640 });
      const { clientWidth, scrollWidth } = gridCell(sheet, 1, 1);
      expect(clientWidth, `${width} px`).to.be.at.least(150).and.at.least(scrollWidth);
    }
    await setViewport({ width: 1280, height: 900 });
    await chooseInGrid(sheet, 1, 1, 'B');
    await settled(worksheet);
    expect(cuts(sheet)[0]).to.equal('4 B · square 3 × 3');
    // A new row can begin with its fabric.
    await chooseInGrid(sheet, 3, 1, 'A');
    expect([messageAt(sheet, 'list'), wrong(sheet)]).to.deep.equal(['', []]);
    expect(atInGrid(sheet)).to.equal('2 0');
  });

  it('fits a phone, three lines a piece, with cells for a finger', async () => {
    await setViewport({ width: 320, height: 640 });
    const sheet = await cutting();
    expect(document.documentElement.scrollWidth).to.be.at.most(320);
    const box = find(sheet, '.lines')!.getBoundingClientRect();
    const cells = all(sheet, '.line:nth-child(2) > [data-at]').map((found) => found.getBoundingClientRect());
    for (const { left, right, width, height } of cells) {
      expect([left >= box.left - 1, right <= box.right + 1]).to.deep.equal([true, true]);
      expect(width).to.be.at.least(40);
      expect(height).to.be.at.least(24);
    }
    expect(new Set(cells.map(({ top }) => Math.round(top))).size).to.equal(3);
    await setViewport({ width: 1280, height: 900 });
    await settled(sheet);
    const wide = all(sheet, '.line:nth-child(2) > [data-at]').map((found) => found.getBoundingClientRect());
    expect(new Set(wide.map(({ top }) => Math.round(top))).size).to.be.below(3);
  });

  it('has keys for fractions beside the length that is typed', async () => {
    const sheet = await cutting();
    gridCell(sheet, 1, 3).focus();
    await settled(sheet);
    const keys = all<HTMLButtonElement>(sheet, '.line .keys button');
    expect(keys).to.have.length(9);
    await writeInGrid(sheet, 1, 3, '4');
    keys.find((key) => text(key) === '¼')!.click();
    await settled(sheet);
    expect(gridCell(sheet, 1, 3).value).to.equal('4¼');
    expect(cuts(sheet)[0]).to.equal('12 A · square 4 1/4 × 4 1/4');
    gridCell(sheet, 1, 2).focus();
    await settled(sheet);
    expect(all(sheet, '.line .keys')).to.have.length(0);
  });
});

describe('what it is cut from', () => {
  const options = (sheet: Sheet): string[] =>
    [...(cell(sheet, 'sheet') as unknown as HTMLSelectElement).options].map((option) => text(option));
  const own = (sheet: Sheet): HTMLInputElement | null =>
    find<HTMLInputElement>(sheet, 'input[data-row=sheet]');

  it('is chosen in words', async () => {
    const sheet = await cutting('A | square | 4 1/2 | 40');
    expect(options(sheet)).to.deep.equal([
      'cloth by length',
      'fat quarter, 18 × 22 in',
      'fat eighth, 9 × 22 in',
      '10 in squares',
      '5 in squares',
      '2 1/2 in strips',
      'a size of my own',
    ]);
    await choose(sheet, 'sheet', 'fat-quarter');
    // Geometry: 4 × 4 squares of 4 1/2 in the usable 18 × 20 in; 40 ÷ 16 = 2 1/2.
    expect(answer(sheet)).to.match(/^Buy 3 fat quarters/);
    expect([sheet.sheet, own(sheet)]).to.deep.equal(['fat-quarter', null]);
    await choose(sheet, 'sheet', '');
    expect(answer(sheet)).to.match(/^Buy .* yd/);
  });

  it('may be a size of the author’s own, which stands in the list too', async () => {
    const sheet = await cutting(LIST, 'sheet="18 x 21"');
    expect(chosen(cell(sheet, 'sheet'))).to.equal('18 x 21');
    expect(options(sheet).at(-1)).to.equal('a size of my own');
    const spelt = await cutting(LIST, 'sheet="Fat Quarter"');
    expect(chosen(cell(spelt, 'sheet'))).to.equal('fat quarter, 18 × 22 in');
  });

  it('may be a size of the reader’s own, which she types', async () => {
    const sheet = await cutting('A | square | 4 1/2 | 40', 'sheet="fat-quarter"');
    await choose(sheet, 'sheet', OWN);
    await until(() => sheet.shadowRoot!.activeElement === own(sheet) && !!own(sheet));
    // Something that works stands there at first.
    expect([own(sheet)!.value, sheet.sheet, own(sheet)!.getAttribute('aria-label')]).to.deep.equal([
      '18 x 20',
      '18 x 20',
      'a size of my own',
    ]);
    document.execCommand('insertText', false, '9 x ');
    await settled(sheet);
    document.execCommand('insertText', false, '9');
    await settled(sheet);
    // Geometry: 2 × 2 squares of 4 1/2.
    expect(answer(sheet)).to.match(/^Buy 10 sheets, 9 × 9 in/);
    await leave(sheet);
    expect([own(sheet)?.value, chosen(cell(sheet, 'sheet'))]).to.deep.equal(['9 x 9', 'a size of my own']);
    await choose(sheet, 'sheet', 'square-10');
    expect([own(sheet), sheet.sheet]).to.deep.equal([null, 'square-10']);
  });

  it('keeps a size that is none, and says so', async () => {
    const sheet = await cutting(LIST, 'sheet="huge"');
    expect(cell(sheet, 'sheet').getAttribute('aria-invalid')).to.equal('true');
    expect(messageAt(sheet, 'sheet')).to.match(/^“huge” is not a sheet of cloth\. Choose one from the list,/);
    await choose(sheet, 'sheet', OWN);
    await until(() => !!own(sheet));
    expect(own(sheet)!.value).to.equal('huge');
    expect(own(sheet)!.getAttribute('aria-invalid')).to.equal('true');
  });
});
