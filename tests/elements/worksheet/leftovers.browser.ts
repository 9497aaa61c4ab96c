import { expect } from 'chai';
import { render, type TemplateResult } from 'lit';
import type { Cells } from '../../../src/face/export.js';
import { all, settled, text } from '../../face/fixture.js';
import { list, part, worksheet, type Worksheet } from './quilt.js';

/**
 * Geometry: the back needs 66 × 66 in, two panels of 40 in across; they reach 2 × 40 − 2 × 1/2 = 79 in, so 13 × 66 is left beside
 * the second one. 132 in are bought as 3 3/4 yd, 3 in more. The sleeve is 58 − 2 + 4 × 1/2 = 58 in long, the label 4 1/2 × 6 1/2.
 */
const QUILT = `<quilt-fabric letter="B" name="Sand" price="10"></quilt-fabric>
  <quilt-backing fabric="B"></quilt-backing>`;
const SLEEVE = '<quilt-sleeve label="4 x 6"></quilt-sleeve>';
const SIZE = 'width="58" length="58"';
const LIST = 'What is left over';

const opener = (sheet: Worksheet): HTMLElement =>
  all<HTMLElement>(sheet, '[part~=action]').find((at) => text(at) === LIST) ?? expect.fail('nothing to open');

const rowsIn = (root: ParentNode, caption: string): string[][] => {
  const table = [...root.querySelectorAll('table')].find((one) =>
    text(one.querySelector('caption')).startsWith(caption),
  );
  return [...(table?.querySelectorAll('tbody tr') ?? [])].map((row) => [...row.children].map(text));
};

describe('what is left over', () => {
  it('is a list that opens, and follows what changes', async () => {
    const sheet = await worksheet(QUILT, SIZE);
    expect(rowsIn(sheet.shadowRoot!, LIST)).to.deep.equal([]);
    opener(sheet).click();
    await settled(sheet);
    expect(rowsIn(sheet.shadowRoot!, LIST)).to.deep.equal([['B · Sand', '13 × 66 in, 3 × 40 in']]);
    part(sheet, 'backing').setAttribute('overage', '6');
    await settled(sheet);
    // 70 × 70 in: 9 in beside the second panel; 140 in of 4 yd leave 4.
    expect(rowsIn(sheet.shadowRoot!, LIST)).to.deep.equal([['B · Sand', '9 × 70 in, 4 × 40 in']]);
    opener(sheet).click();
    await settled(sheet);
    expect(rowsIn(sheet.shadowRoot!, LIST)).to.deep.equal([]);
  });

  it('gives the sleeve and the label, for which nothing is bought', async () => {
    const sheet = await worksheet(QUILT + SLEEVE, SIZE);
    expect(list(sheet).fabrics.map(({ letter, buy, cost }) => [letter, buy.text, cost?.text])).to.deep.equal([
      ['B', '3 3/4 yd', '37.50'],
    ]);
    expect(list(sheet).fromLeftovers?.map(({ title, fabric }) => [title, fabric])).to.deep.equal([
      ['Hanging sleeve', 'B'],
      ['Label', 'B'],
    ]);
    const rows = rowsIn(sheet.shadowRoot!, 'Shopping list').map(([fabric, use, , buy, , cost]) => [
      fabric,
      use,
      buy,
      cost,
    ]);
    expect(rows.slice(1, 3)).to.deep.equal([
      ['B · Sand', 'hanging sleeve', 'from what the backing leaves: 13 × 66 in', ''],
      ['B · Sand', 'label', 'from what the backing leaves: 8 1/2 × 8 in', ''],
    ]);
    expect(list(sheet).notes.join()).not.to.contain('no price');
  });

  it('is in the table that is copied and on the sheet that is printed, with the sleeve as it is cut', async () => {
    const sheet = await worksheet(QUILT + SLEEVE, SIZE);
    const { good, cells, paper } = sheet as unknown as {
      good: unknown;
      cells(good: unknown): Cells;
      paper(good: unknown): TemplateResult;
    };
    const copied = cells.call(sheet, good).map((row) => row.filter((cell) => cell !== ''));
    const start = copied.findIndex(([first]) => `${first}`.startsWith(LIST));
    expect(copied[start]).to.deep.equal([`${LIST}: the largest pieces, at least 2 1/2 in each way`]);
    expect(copied[start + 2]).to.deep.equal(['B', 'Sand', 1, 4.5, 66]);
    expect(copied).to.deep.include(['B', 'Sand', 'Hanging sleeve', 'sleeve', 1, 8.5, 58, '8 1/2 × 58 in']);
    const page = document.createElement('div');
    render(paper.call(sheet, good), page);
    expect(rowsIn(page, LIST)[0]?.[1]).to.match(/^4 1\/2 × 66 in, 3 × 40 in/);
    expect(rowsIn(page, 'Cut from B · Sand').map(([, size]) => size)).to.include.members(['8 1/2 × 58 in']);
  });

  it('changes nothing where a sleeve has no label and no other part is there', async () => {
    const sheet = await worksheet('<quilt-sleeve></quilt-sleeve>', SIZE);
    expect(list(sheet).fabrics.map(({ buy }) => buy.text)).to.deep.equal(['1/2 yd']);
    expect(list(sheet).fromLeftovers).to.equal(undefined);
  });
});
