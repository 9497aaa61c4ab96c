import { expect } from 'chai';
import type { QuiltCutting } from '../../../src/index.js';
import type { CuttingResult } from '../../../src/reckon.js';
import {
  all,
  answer,
  answered,
  buttonIn,
  drawn,
  find,
  leave,
  listed,
  listen,
  LONG_LIST,
  messageAt,
  pasteInGrid,
  redrawn,
  refused,
  settled,
  show,
  text,
  type Sheet,
} from '../../face/fixture.js';

type Cutting = QuiltCutting & Sheet;

const TABLE = `<table>
  <thead><tr><th>How many</th><th>Piece</th><th>Fabric</th><th>Cut size</th></tr></thead>
  <tbody>
    <tr><td>12</td><td>square</td><td>A</td><td>3 1/2 in</td></tr>
    <tr><td>8</td><td>half-square triangles</td><td>B</td><td>3 in finished</td></tr>
    <tr><td>10</td><td>rail</td><td>A</td><td>2 1/2 × 6 1/2</td></tr>
  </tbody>
</table>`;
const cutting = (inside = TABLE, attributes = '', until = settled): Promise<Cutting> =>
  show<Cutting>(`<quilt-cutting ${attributes}>${inside}</quilt-cutting>`, until);
const plans = (sheet: Sheet): CuttingResult['fabrics'] => answered<CuttingResult>(sheet).fabrics;
const isPlanning = (sheet: Sheet): boolean =>
  !!sheet.result.errors?.some(({ message }) => message.includes('being planned'));
/** Once the plan is ready; the element says so with a change. */
const planned = async (sheet: Sheet): Promise<void> => {
  while (isPlanning(sheet))
    await new Promise((done) => sheet.addEventListener('change', done, { once: true }));
  await settled(sheet);
};

describe('quilt-cutting', () => {
  it('takes its list from the table the author wrote, by its head words', async () => {
    const sheet = await cutting();
    expect(
      plans(sheet).map(({ fabric, pieces }) => [
        fabric,
        pieces.map(({ count, width, length }) => `${count} of ${width} × ${length}`),
      ]),
    ).to.deep.equal([
      ['A', ['12 of 3 1/2 × 3 1/2', '10 of 2 1/2 × 6 1/2']],
      // 8 triangles are 4 squares of 3 + 7/8 (“Cutting half- and quarter-square triangles”, All People Quilt)
      ['B', ['4 of 3 7/8 × 3 7/8']],
    ]);
    expect(listed(sheet, 'What to cut')[0]).to.deep.equal(['12 ×', 'A · square', '3 1/2 × 3 1/2 in']);
    expect(listed(sheet, 'What to cut')[2]!.join(' ')).to.include('cut once on the diagonal');
    expect(answer(sheet)).to.include(
      plans(sheet)
        .map(({ fabric, buy }) => `${fabric}: ${buy.text}`)
        .join('; '),
    );
    // the table is the author’s and stays in the page
    expect(sheet.querySelector('table')!.rows).to.have.length(4);
  });

  it('draws each fabric to scale, piece by piece, with its strips beside it', async () => {
    const sheet = await cutting();
    const [plan] = plans(sheet);
    const { width, height, words } = drawn(sheet);
    const [svg] = all(sheet, 'svg[role=img]');
    const outlines = [...svg!.querySelectorAll('path[d$=z]:not(.spare)')].map((at) => at.getAttribute('d')!);
    expect(outlines.join('').match(/z/g)).to.have.length(plan!.layout.length);
    expect(plan!.layout).to.have.length(22);
    expect(width / height).to.be.closeTo(40 / Number(plan!.height.split(' ')[0]), 0.3);
    expect(words).to.include('40 in');
    expect(all(sheet, 'svg[role=img]')).to.have.length(2);
    const strips = listed(sheet, 'Strips, from the top of the cloth');
    // A strip is called by its width, as in “a strip 2 1/2 in wide”: common practice, no source.
    const heads = all(sheet, 'table').find((at) => /^Strips,/.test(text(at.querySelector('caption'))))!;
    expect([...heads.querySelectorAll('th')].map(text)).to.deep.equal([
      'Fabric',
      'Strips',
      'Width',
      'What each gives',
    ]);
    expect(strips.map(([fabric]) => fabric)).to.include.members(['A', 'B']);
    const given = strips
      .filter(([fabric]) => fabric === 'A')
      .flatMap(([, strips, , gives]) =>
        [...gives!.matchAll(/(\d+) × square/g)].map(([, count]) => Number(count) * Number(strips || 1)),
      );
    expect(given.reduce((all, some) => all + some, 0)).to.equal(12);
  });

  it('says what a strip gives squares for, and draws where they are cut', async () => {
    // 10 triangles are 5 squares, and 12 are 3 that are cut twice; 25 squares of 3 1/2 in fill five strips of five.
    const list = `A | half-square triangles | 3 finished | 10
B | quarter-square triangles | 3 finished | 12
C | squares for half-square triangles | 3 finished | 2`;
    const sheet = await cutting('', `list="${list}"`);
    expect(listed(sheet, 'Strips, from the top of the cloth').map(([, , , gives]) => gives)).to.deep.equal([
      '5 × square for half-square triangles',
      '3 × square for quarter-square triangles',
      '2 × squares for half-square triangles',
    ]);
    // A cut is drawn in two parts.
    expect(all(sheet, 'svg').map((at) => at.querySelectorAll('.seam').length / 2)).to.deep.equal([5, 6, 2]);
  });

  it('draws no cut through the words on a square', async () => {
    const sheet = await cutting('', 'sheet="fat-quarter" list="A | half-square triangles | 3 finished | 20"');
    const texts = all<SVGTextElement>(sheet, 'text:not(.measure)').map((at) => at.getBoundingClientRect());
    expect(texts.length).to.be.greaterThan(5);
    for (const seam of all<SVGPathElement>(sheet, '.seam'))
      for (let along = 0; along < seam.getTotalLength(); along += 0.5) {
        const { x, y } = seam.getPointAtLength(along).matrixTransform(seam.getScreenCTM()!);
        const crossed = texts.some(
          ({ left, right, top, bottom }) => x > left && x < right && y > top + 2 && y < bottom - 2,
        );
        expect(crossed, `${x} ${y}`).to.equal(false);
      }
  });

  it('lists strips that are cut alike in one row', async () => {
    const sheet = await cutting('', 'sheet="fat-quarter" list="A | square | 3 1/2 | 140"');
    // geometry: 5 × 5 squares of 3 1/2 in 18 × 20 in; 140 ÷ 5 = 28 strips
    expect(listed(sheet, 'Strips, from the top of the cloth')).to.deep.equal([
      ['A', '28', '3 1/2 in', '5 × square'],
    ]);
  });

  it('leaves out the heights of some of many short strips, so that none lies over another', async () => {
    const long = (step: number, most: number): string =>
      Array.from({ length: most }, (_, at) => `A | p${at} | 21 x ${3 + at / step} | 1`).join('\n');
    /** Where the middle of each height is, and how tall its figures are, on the screen. */
    const heightsOf = async (list: string): Promise<{ middles: number[]; tall: number }> => {
      const sheet = await cutting('', `one-way fabric-width="40" list="${list}"`);
      const texts = all(sheet, '.measure').slice(2);
      const { a } = find<SVGSVGElement>(sheet, 'svg')!.getScreenCTM()!;
      return {
        middles: texts.map((at) => {
          const { top, bottom } = at.getBoundingClientRect();
          return (top + bottom) / 2;
        }),
        // Figures are some 0.75 of their type's size.
        tall: 0.75 * parseFloat(getComputedStyle(texts[0]!).fontSize) * a,
      };
    };
    expect((await heightsOf(long(1, 5))).middles).to.have.length(5);
    const { middles, tall } = await heightsOf(long(8, 29));
    expect(tall).to.be.greaterThan(5);
    expect(middles.length).to.be.within(10, 28);
    for (const [at, middle] of middles.slice(1).entries()) expect(middle - middles[at]!).to.be.at.least(tall);
  });

  it('names a small piece by its size where its name does not fit', async () => {
    const sheet = await cutting(
      '',
      'sheet="fat-quarter" list="A | the narrowest rail of all of them | 2 x 6 | 12"',
    );
    const words = drawn(sheet).words.join();
    expect(words).to.include('2 × 6').and.not.include('narrowest');
  });

  it('follows the table when a script changes it', async () => {
    const sheet = await cutting();
    sheet.querySelector('td')!.textContent = '24';
    await Promise.resolve();
    await planned(sheet);
    expect(answered(sheet).cuts[0]!.count).to.equal(24);
    sheet.querySelector('table')!.remove();
    await Promise.resolve();
    await settled(sheet);
    expect(refused(sheet).errors[0]!.message).to.include('The cut list is empty');
  });

  for (const [what, inside, sentence] of [
    [
      'no column for the size',
      '<table><tr><th>Piece</th><th>How many</th></tr><tr><td>square</td><td>3</td></tr></table>',
      /no column for the cut size\. Head one “Cut size”\./,
    ],
    [
      'no column for how many',
      '<table><tr><th>Piece</th><th>Cut size</th></tr><tr><td>square</td><td>3</td></tr></table>',
      /no column for the number of pieces\. Head one “How many”\./,
    ],
    [
      'a piece larger than the cloth',
      '<table><tr><td>A</td><td>panel</td><td>50 x 60</td><td>1</td></tr></table>',
      /^panel, 50 × 60 in: .*does not fit/,
    ],
    [
      'a table inside a table',
      `<table><tr><td>A</td><td>square</td><td><table><tr><td>3</td></tr><tr><td>4</td></tr></table></td><td>12</td></tr></table>`,
      /^Row 1, square: “<table>” is not a length\./,
    ],
    [
      'a million and one of a piece',
      '<table><tr><td>A</td><td>square</td><td>3</td><td>1000001</td></tr></table>',
      /more than a million pieces/,
    ],
    ['nothing inside', '', /The cut list is empty\. Write a line like A \| square \| 3 1\/2 \| 12\./],
  ] as const)
    it(`says in the row of the list what is wrong with ${what}`, async () => {
      const sheet = await cutting(inside);
      expect(messageAt(sheet, 'list')).to.match(sentence);
      expect(refused(sheet).buy).to.equal(undefined);
    });

  it('counts fat quarters, draws those cut alike once, and says how many they are', async () => {
    const sheet = await cutting('', 'list="A | square | 4 1/2 | 40" sheet="fat-quarter"');
    await planned(sheet);
    // geometry: 4 × 4 squares of 4 1/2 in 18 × 20 in; 40 ÷ 16 = 2 1/2
    expect(answer(sheet)).to.match(/^Buy 3 fat quarters/);
    expect(all(sheet, 'figcaption').map(text)).to.deep.equal([
      'Fabric A: cut 2 of the 3 fat quarters like this',
      'Fabric A: cut 1 of the 3 fat quarters like this',
    ]);
    // 7 × 6 squares of 3 in on each
    const large = await cutting('', 'list="A | square | 3 | 44" sheet="18 x 22"');
    expect(all(large, 'figcaption').map(text)).to.deep.equal([
      'Fabric A: cut 1 of the 2 sheets like this',
      'Fabric A: cut 1 of the 2 sheets like this',
    ]);
  });

  it('plans a long list in the background, shows how far it is, and tells when it is ready', async () => {
    const sheet = await cutting('', `list="${LONG_LIST}"`, redrawn);
    expect(isPlanning(sheet)).to.be.true;
    expect(messageAt(sheet, 'list')).to.match(/being planned: \d+ % done\.$/);
    expect(buttonIn(sheet, 'Print').disabled).to.be.true;
    const heard = listen(sheet);
    await planned(sheet);
    expect(heard.at(-1)).to.equal(`change ${answered(sheet).buy.text}`);
    expect(messageAt(sheet, 'list')).to.equal('');
    expect(plans(sheet)[0]!.layout).to.have.length(24 * 20);
    // the same list again is there at once
    sheet.setAttribute('price', '12');
    await redrawn(sheet);
    expect(isPlanning(sheet)).to.be.false;
  });

  it('drops a plan that nobody waits for any more', async () => {
    const sheet = await cutting('', `list="${LONG_LIST}"`, redrawn);
    expect(isPlanning(sheet)).to.be.true;
    await pasteInGrid(sheet, 1, 1, LONG_LIST.replaceAll(/20$/gm, '1'));
    expect(isPlanning(sheet)).to.be.false;
    const counts = (): number[] => answered(sheet).cuts.map(({ count }) => count);
    expect(counts()).to.deep.equal(Array(24).fill(1));
    const heard = listen(sheet);
    await leave(sheet);
    // As long as the plan that was dropped would have taken.
    const other = Object.assign(document.createElement('quilt-cutting'), { list: LONG_LIST });
    sheet.after(other);
    await settled(other);
    expect(heard).to.deep.equal([`change ${answered(sheet).buy.text}`]);
    expect(counts()).to.deep.equal(Array(24).fill(1));
  });

  it('plans on when it is moved in the page, and for each of many fabrics', async () => {
    const list = Array.from({ length: 24 }, (_, at) => `F${at} | square | ${2 + at / 8} | 40`).join('\n');
    const sheet = await cutting('', `list="${list}"`, redrawn);
    expect(isPlanning(sheet)).to.be.true;
    const elsewhere = document.createElement('section');
    sheet.parentElement!.append(elsewhere);
    elsewhere.append(sheet);
    await planned(sheet);
    expect(plans(sheet)).to.have.length(24);
    for (const { layout } of plans(sheet)) expect(layout).to.have.length(40);
  });

  it('keeps the last good plan, marked stale, while a new one is made', async () => {
    const sheet = await cutting('', 'list="A | square | 3 | 4"');
    const before = text(find(sheet, 'strong'));
    sheet.list = LONG_LIST;
    await redrawn(sheet);
    expect(isPlanning(sheet)).to.be.true;
    expect(text(find(sheet, 'strong'))).to.equal(before);
    expect(find(sheet, '.stale')).to.not.equal(null);
    await planned(sheet);
    expect(find(sheet, '.stale')).to.equal(null);
  });
});
