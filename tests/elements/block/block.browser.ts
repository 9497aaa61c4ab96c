import { expect } from 'chai';
import type { QuiltBlock } from '../../../src/index.js';
import type { BlockResult } from '../../../src/reckon.js';
import {
  all,
  answer,
  answered,
  at,
  atInGrid,
  choose,
  drawn,
  find,
  gridCell,
  how,
  listed,
  listen,
  looksStale,
  messageAt,
  mount,
  pasteInGrid,
  press,
  refused,
  settled,
  show,
  text,
  unfold,
  until,
  valueIn,
  writeAndLeave,
  writeInGrid,
  type Sheet,
} from '../../face/fixture.js';

type Block = QuiltBlock & Sheet;

const TABLE = `<table><caption>Sky over the harbour</caption>
  <tbody>
    <tr><td>A/B</td><td colspan="2" goose="down">B A B</td><td>A\\B</td></tr>
    <tr><td>A</td><td colspan="2" rowspan="2"> A in <b>B</b> </td><td>A</td></tr>
    <tr><td>A</td><td>A</td></tr>
    <tr><td>A\\B</td><td colspan="2">B A B</td><td>A/B</td></tr>
  </tbody>
</table>`;
const block = (inside = TABLE, attributes = 'block="12" count="6"'): Promise<Block> =>
  show<Block>(`<quilt-block ${attributes}>${inside}</quilt-block>`);
const cuts = (sheet: Sheet): string[] =>
  answered<BlockResult>(sheet).cuts.map(
    ({ count, piece, width, length }) => `${count} ${piece} ${width} × ${length}`,
  );

/** The cells of the chart, row by row, without the empty ones for what comes next. */
const grid = (sheet: Sheet): string[][] =>
  all(sheet, '.chart tr')
    .map((row) =>
      [...row.querySelectorAll<HTMLInputElement>(':scope > td:not(.next) > input')].map(({ value }) => value),
    )
    .filter((cells) => cells.length);
describe('quilt-block', () => {
  it('takes its chart from the table the author wrote, by position and span', async () => {
    const sheet = await block();
    // Geometry: cells of 3 in. Four half-square pairs in each of 6 blocks are 24: 12 squares of 3 + 7/8 of each. Two geese of
    // 6 × 3 in are 12: rectangles of 3 1/2 × 6 1/2, and 24 squares of 3 1/2. The middle is 6 ÷ √2 + 1/2 = 4.743, up to 4 3/4; its
    // corners are 12 squares of 3 + 7/8, cut in two.
    expect(cuts(sheet)).to.deep.equal([
      '12 A · square for half-square triangles, two at a time 3 7/8 × 3 7/8',
      '12 A · rectangle for a flying goose 3 1/2 × 6 1/2',
      '24 A · square 3 1/2 × 3 1/2',
      '6 A · middle square, on point 4 3/4 × 4 3/4',
      '12 B · square for half-square triangles, two at a time 3 7/8 × 3 7/8',
      '24 B · square to sew over a goose’s corner 3 1/2 × 3 1/2',
      '12 B · square, cut once on the diagonal, for corner triangles round a square 3 7/8 × 3 7/8',
    ]);
    expect(answer(sheet)).to.include('6 blocks of 12 in.');
    expect(listed(sheet, 'What to cut')).to.have.length(7);
    // The table is the author’s and stays in the page.
    expect(sheet.querySelector('table')!.rows).to.have.length(4);
    expect(sheet.querySelector('table')!.checkVisibility()).to.equal(false);
  });

  it('reads the table again when it changes: a letter, a span, a goose that turns', async () => {
    const sheet = await block();
    const table = sheet.querySelector('table')!;
    const changed = async (change: () => void): Promise<void> => {
      const before = JSON.stringify(sheet.result.working.find(({ id }) => id === 'chart'));
      change();
      await until(() => JSON.stringify(sheet.result.working.find(({ id }) => id === 'chart')) !== before);
      await settled(sheet);
    };
    await changed(() => (table.rows[1]!.cells[0]!.textContent = 'C'));
    expect(answered<BlockResult>(sheet).letters.map(({ fabric }) => fabric)).to.deep.equal(['A', 'B', 'C']);
    await changed(() => table.rows[3]!.cells[1]!.setAttribute('goose', 'down'));
    expect(grid(sheet)[3]).to.deep.equal(['A\\B', 'B A B 2x1 down', 'A/B']);
    await changed(() => (table.rows[3]!.cells[1]!.colSpan = 1));
    expect(refused(sheet).errors[0]!.input).to.equal('chart');
    await changed(() => table.remove());
    expect(refused(sheet).errors[0]!.message).to.match(/Chart/);
  });

  it('draws the block to scale, each piece with its letter, and the cloth of each fabric under it', async () => {
    const sheet = await block();
    const [picture, ...plans] = all(sheet, 'svg[role=img]');
    expect(plans).to.have.length(2);
    const { width, height, words } = drawn(sheet);
    expect(width / height).to.be.closeTo(1, 0.15);
    // 4 boxes; 4 pairs, 2 geese of 3, and a middle with 4 corners
    expect(picture!.querySelectorAll('path:not(.dimension)')).to.have.length(4 + 8 + 6 + 5);
    const letters = words.filter((said) => /^[AB]$/.test(said));
    expect(letters).to.have.length(23);
    expect(words).to.include('12 in');
    expect(picture!.getAttribute('aria-label')).to.equal('The block, 12 in finished: 4 by 4 cells.');
  });

  it('puts the letters inside their pieces', async () => {
    const sheet = await block();
    const [picture] = all(sheet, 'svg[role=img]');
    const paths = [...picture!.querySelectorAll<SVGPathElement>('path:not(.dimension)')];
    for (const letter of picture!.querySelectorAll<SVGTextElement>('text:not(.measure)')) {
      const { left, right, top, bottom } = letter.getBoundingClientRect();
      const holding = paths.filter((path) => {
        const back = path.getScreenCTM()!.inverse();
        const holds = (x: number, y: number): boolean =>
          path.isPointInFill(new DOMPoint(x, y).matrixTransform(back));
        return holds(left + 1, (top + bottom) / 2) && holds(right - 1, (top + bottom) / 2);
      });
      expect(holding, letter.textContent).to.have.length(1);
    }
  });

  it('follows the size of the block, how many there are, and the method that a reader chooses', async () => {
    const sheet = await block();
    await writeAndLeave(sheet, 'block', '8');
    expect(how(sheet, 'cell')).to.equal('8 ÷ 4 = 2 in');
    await writeAndLeave(sheet, 'count', '12');
    expect(cuts(sheet)[0]).to.match(/^24 A .* 2 7\/8 × 2 7\/8$/);
    await choose(sheet, 'method', 'eight-four');
    // 48 pairs are 6 squares of 2 × (2 + 7/8); 24 geese are 6 squares of 4 + 1 1/4
    expect(cuts(sheet).slice(0, 2)).to.deep.equal([
      '6 A · square for half-square triangles, eight at a time 5 3/4 × 5 3/4',
      '6 A · square for flying geese, four at a time 5 1/4 × 5 1/4',
    ]);
    expect(how(sheet, 'geeseOtherwise')).to.match(/^one at a time: A .* in, B .* in$/);
  });

  it('says in the row what is wrong with a chart, and keeps the last good answer in sight', async () => {
    const sheet = await block();
    const before = text(find(sheet, '[part=amount]'));
    await writeInGrid(sheet, 1, 1, 'A/');
    await press(sheet, 'Tab');
    expect(messageAt(sheet, 'chart')).to.match(/^Row 1, patch 1: “A\/” is not a patch\./);
    expect(all(sheet, '.chart [aria-invalid]').map((cell) => cell.dataset['at'])).to.deep.equal(['0 0']);
    expect(text(find(sheet, '[part=amount]'))).to.equal(before);
    expect(looksStale(find(sheet, '[part=amount]'))).to.equal(true);
    await writeInGrid(sheet, 1, 1, 'A/B');
    await press(sheet, 'Tab');
    expect(messageAt(sheet, 'chart')).to.equal('');
    expect(looksStale(find(sheet, '[part=amount]'))).to.equal(false);
  });

  it('without a table says what to write', async () => {
    const sheet = await block('');
    expect(refused(sheet).errors).to.have.length(1);
    expect(messageAt(sheet, 'chart')).to.equal('Chart is missing. Write it like A B A; B A B; A B A.');
    expect(answer(sheet)).to.equal('Fill in “Chart” to get an answer.');
    // A chart can be typed cell by cell.
    await writeInGrid(sheet, 1, 1, 'A');
    await writeInGrid(sheet, 1, 2, 'B');
    await writeInGrid(sheet, 2, 1, 'B');
    expect(refused(sheet).errors[0]!.message).to.include('Row 2 has no patch in column 2.');
    await writeInGrid(sheet, 2, 2, 'A');
    expect(grid(sheet)).to.deep.equal([
      ['A', 'B'],
      ['B', 'A'],
    ]);
    expect(answer(sheet)).to.match(/^Buy/);
    expect(sheet.chart).to.equal('A | B\nB | A');
  });

  it('is called by its name, and can still be shown in centimetres', async () => {
    const sheet = await block(TABLE, 'block="12" name="Harbour"');
    expect(answer(sheet)).to.include('Harbour: 1 block of 12 in.');
    expect(all(sheet, 'button').map(text)).to.include('Show in centimetres');
    const form = await show(`<form><quilt-block block="12" name="back">${TABLE}</quilt-block></form>`);
    const inForm = form.querySelector<Block>('quilt-block')!;
    expect(all(inForm, 'button').map(text)).to.not.include('Show in centimetres');
    expect(new FormData(form as HTMLFormElement).get('back')).to.equal(inForm.value);
  });
});

describe('the chart as a grid of cells', () => {
  it('shows the chart as the table has it, with the same spans', async () => {
    const sheet = await block();
    expect(grid(sheet)).to.deep.equal([
      ['A/B', 'B A B 2x1 down', 'A\\B'],
      ['A', 'A in B 2x2', 'A'],
      ['A', 'A'],
      ['A\\B', 'B A B 2x1', 'A/B'],
    ]);
    const spans = all<HTMLTableCellElement>(sheet, '.chart td:not(.next)').map(
      ({ colSpan, rowSpan }) => `${colSpan}x${rowSpan}`,
    );
    expect(spans.filter((span) => span !== '1x1')).to.deep.equal(['2x1', '2x2', '2x1']);
    expect(gridCell(sheet, 2, 2).getAttribute('aria-label')).to.equal('Row 2, patch 2');
  });

  it('changes a letter, reckons at once, and tells the page', async () => {
    const sheet = await block('', 'block="12" chart="A B; B A"');
    const heard = listen(sheet);
    await writeInGrid(sheet, 2, 1, 'C');
    expect(answered<BlockResult>(sheet).letters.map(({ fabric }) => fabric)).to.deep.equal(['A', 'B', 'C']);
    expect(heard.map((said) => said.split(' ')[0])).to.deep.equal(['input']);
    await press(sheet, 'Tab');
    expect(heard.at(-1)).to.match(/^change/);
    expect(atInGrid(sheet)).to.equal('1 1');
  });

  it('is walked by Tab, by Enter and by the arrows', async () => {
    const sheet = await block('', 'block="12" chart="A B C; B C A"');
    gridCell(sheet, 1, 1).focus();
    await press(sheet, 'Enter');
    expect(atInGrid(sheet)).to.equal('0 1');
    await press(sheet, 'Tab');
    expect(atInGrid(sheet)).to.equal('0 2');
    await press(sheet, 'ArrowDown');
    expect(atInGrid(sheet)).to.equal('1 2');
    await press(sheet, 'ArrowUp');
    expect(atInGrid(sheet)).to.equal('0 2');
    await press(sheet, 'Shift+Enter');
    expect(atInGrid(sheet)).to.equal('0 1');
    // Above the first row and under the last one the other rows go on.
    gridCell(sheet, 3, 1).focus();
    await press(sheet, 'ArrowDown');
    expect(at(sheet)).to.equal('block');
  });

  it('grows by typing in the empty cells, and gets smaller when they are emptied', async () => {
    const sheet = await block('', 'block="12" chart="A B; B A"');
    await writeInGrid(sheet, 1, 3, 'A');
    expect(messageAt(sheet, 'chart')).to.include('Row 2 has no patch in column 3.');
    await writeInGrid(sheet, 2, 3, 'B');
    expect(answered<BlockResult>(sheet).columns).to.equal(3);
    await writeInGrid(sheet, 3, 1, 'A 3x1');
    expect([answered<BlockResult>(sheet).rows, grid(sheet)[2]]).to.deep.equal([3, ['A 3x1']]);
    await writeInGrid(sheet, 3, 1, '');
    await writeInGrid(sheet, 2, 3, '');
    await writeInGrid(sheet, 1, 3, '');
    expect(sheet.chart).to.equal('A | B\nB | A');
    expect(atInGrid(sheet)).to.equal('0 2');
  });

  it('lets a patch be typed letter by letter, with spaces', async () => {
    const sheet = await block('', 'block="12" chart="A A | B 2x1; A 2x2"');
    await writeInGrid(sheet, 1, 1, '');
    for (const sign of 'B A B 2x1') {
      document.execCommand('insertText', false, sign);
      await settled(sheet);
    }
    expect(gridCell(sheet, 1, 1).value).to.equal('B A B 2x1');
    expect(grid(sheet)[0]![0]).to.equal('B A B 2x1');
  });

  it('puts back what was there with Escape', async () => {
    const sheet = await block('', 'block="12" chart="A B; B A"');
    await writeInGrid(sheet, 1, 2, 'C ');
    await press(sheet, 'Escape');
    expect(grid(sheet)).to.deep.equal([
      ['A', 'B'],
      ['B', 'A'],
    ]);
    await writeInGrid(sheet, 1, 2, 'B ');
    await press(sheet, 'Escape');
    expect(gridCell(sheet, 1, 2).value).to.equal('B');
  });

  it('takes a block of cells from a spreadsheet', async () => {
    const sheet = await block('', 'block="12" chart="A B; B A"');
    await pasteInGrid(sheet, 1, 2, 'C\tC/D\r\nC\tC\r\nA\tA\r\n');
    expect(grid(sheet)).to.deep.equal([
      ['A', 'C', 'C/D'],
      ['B', 'C', 'C'],
      ['', 'A', 'A'],
    ]);
    await writeInGrid(sheet, 3, 1, 'A');
    expect(answered<BlockResult>(sheet).rows).to.equal(3);
  });

  it('is a text where it is larger than any chart', async () => {
    const sheet = await block('', `block="12" chart="${'A|'.repeat(60)}"`);
    expect([all(sheet, 'textarea'), all(sheet, '.chart')].map(({ length }) => length)).to.deep.equal([1, 0]);
  });

  it('cannot be changed where the page has locked it', async () => {
    const sheet = await block(TABLE, 'block="12" lock="chart"');
    await unfold(sheet);
    expect(all(sheet, '.chart')).to.have.length(0);
    expect(valueIn(sheet, 'chart')).to.include('A in B 2x2');
  });
});

describe('a block in a worksheet', () => {
  const quilt = (parts: string): Promise<Sheet> =>
    show<Sheet>(`<quilt-worksheet><quilt-fabric letter="A" name="Sand"></quilt-fabric>
      <quilt-fabric letter="B" name="Slate" fabric-width="20"></quilt-fabric>${parts}</quilt-worksheet>`);
  const TOP = '<quilt-top block="9" across="4" down="5"></quilt-top>';
  const notes = (sheet: Sheet): string => all(sheet, '.note').map(text).join('\n');

  it('is as large as the top’s blocks, unless it says another size', async () => {
    const sheet = await quilt(
      `<quilt-block count="20" chart="A B; B A"></quilt-block>${TOP}<quilt-block block="6" chart="A"></quilt-block>`,
    );
    const [first, second] = [...sheet.querySelectorAll<Block>('quilt-block')];
    expect([valueIn(first!, 'block'), how(first!, 'block')]).to.deep.equal(['9 in', 'from the quilt top']);
    expect(valueIn(second!, 'block')).to.equal('6 in');
    await writeAndLeave(sheet.querySelector<Sheet>('quilt-top')!, 'block', '10');
    await settled(sheet.parentElement!);
    expect(valueIn(first!, 'block')).to.equal('10 in');
    // Two pieces of 5 1/2 in for each block: 40 of B in strips across 20 in, three each, 14 strips
    expect(answered<BlockResult>(first!).fabrics.map(({ width, need }) => [width, need])).to.deep.equal([
      ['40', '33'],
      ['20', '77'],
    ]);
  });

  it('is on the shopping list by its name, with the cloth of each letter', async () => {
    const sheet = await quilt(`${TOP}<quilt-block name="Harbour" count="20" chart="A B; B A"></quilt-block>`);
    const { fabrics } = answered<{ fabrics: { letter: string; need: string; parts: { title: string }[] }[] }>(
      sheet,
    );
    expect(
      fabrics.map(({ letter, need, parts }) => [letter, need, parts.map(({ title }) => title)]),
    ).to.deep.equal([
      // Geometry: 40 squares of 5 in: 8 across 40 in, 4 across 20 in.
      ['A', '25', ['Harbour']],
      ['B', '50', ['Harbour']],
    ]);
  });

  it('is the cloth for the blocks, until there are more blocks than it is for', async () => {
    const sheet = await quilt(`${TOP}<quilt-block count="20" chart="A B; B A"></quilt-block>`);
    expect(notes(sheet)).to.not.match(/no cloth for|places/);
    const top = sheet.querySelector<Sheet>('quilt-top')!;
    await writeAndLeave(top, 'block', '12');
    await settled(sheet.parentElement!);
    expect(notes(sheet)).to.not.match(/no cloth for|places/);
    await writeAndLeave(top, 'across', '5');
    await settled(sheet.parentElement!);
    expect(notes(sheet)).to.include('The top has 25 places and the blocks are 20.');
  });
});

describe('a server’s block', () => {
  it('without script is the author’s chart', async () => {
    const { body } = new DOMParser().parseFromString(
      `<quilt-block block="12">${TABLE}</quilt-block>`,
      'text/html',
    );
    document.querySelector('main')!.append(...body.childNodes);
    // Nothing is written into the page: what the author wrote is all that there is.
    const sheet = document.querySelector('quilt-block')!;
    expect(sheet.querySelector('table')!.outerHTML).to.equal(
      new DOMParser().parseFromString(TABLE, 'text/html').querySelector('table')!.outerHTML,
    );
    await settled(sheet);
  });

  it('answers at once when it is made by a script', async () => {
    const sheet = await mount('quilt-block', { chart: 'A B; B A', block: '12', count: '3' });
    expect(answered<BlockResult>(sheet).patches).to.equal(4);
  });
});
