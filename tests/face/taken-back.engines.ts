import { expect } from 'chai';
import {
  answered,
  cell,
  enter,
  gridCell,
  leave,
  mount,
  press,
  settled,
  show,
  until,
  valueIn,
  write,
  writeInGrid,
  type Sheet,
} from './fixture.js';

const inWorksheet = async (part: string): Promise<[worksheet: Sheet, part: Sheet]> => {
  const worksheet = await show<Sheet>(`<quilt-worksheet width="50" length="60">${part}</quilt-worksheet>`);
  return [worksheet, worksheet.firstElementChild as Sheet];
};

describe('Escape takes back what was typed, and only that', () => {
  it('a cell follows its worksheet again', async () => {
    const [worksheet, backing] = await inWorksheet('<quilt-backing></quilt-backing>');
    await write(backing, 'width', '5');
    await press(backing, 'Escape');
    await leave(backing);
    expect([valueIn(backing, 'width'), backing.width ?? undefined]).to.deep.equal(['50 in', undefined]);
    worksheet.width = '100';
    await settled(worksheet);
    expect(valueIn(backing, 'width')).to.equal('100 in');
  });

  it('also where the cell shows what no ruler has', async () => {
    const worksheet = await show<Sheet>(
      '<quilt-worksheet><quilt-top block="12" across="4" down="4" set="on-point"></quilt-top><quilt-backing></quilt-backing></quilt-worksheet>',
    );
    const backing = worksheet.lastElementChild as Sheet;
    const shown = valueIn(backing, 'width');
    expect(shown).to.match(/^≈/);
    const before = JSON.stringify(answered(backing));
    await write(backing, 'width', '5');
    await press(backing, 'Escape');
    expect(valueIn(backing, 'width')).to.equal(shown);
    expect(JSON.stringify(answered(backing))).to.equal(before);
    await press(backing, 'Alt+ArrowUp');
    expect(valueIn(backing, 'width')).not.to.equal(shown);
    expect(answered(backing)).to.have.property('buy');
  });

  it('a cut list is the author’s table again', async () => {
    const cutting = await show<Sheet>(
      '<quilt-cutting><table><tr><td>A</td><td>square</td><td>3 1/2</td><td>12</td></tr></table></quilt-cutting>',
    );
    await writeInGrid(cutting, 1, 5, '1');
    await press(cutting, 'Escape');
    await leave(cutting);
    cutting.querySelectorAll('td')[3]!.textContent = '24';
    await until(() => gridCell(cutting, 1, 5).value === '24');
    expect(gridCell(cutting, 1, 3).value).to.equal('3 1/2');
  });

  it('a reckoned row is reckoned again', async () => {
    const backing = await mount('quilt-backing', { shrinkage: '3' });
    await enter(backing, 'washedWidth');
    const before = valueIn(backing, 'washedWidth');
    await write(backing, 'washedWidth', '30');
    await press(backing, 'Escape');
    await leave(backing);
    expect([valueIn(backing, 'washedWidth'), backing.measured]).to.deep.equal([before, undefined]);
    backing.fabricWidth = '50';
    await settled(backing);
    // 50 in less 3 %
    expect(valueIn(backing, 'washedWidth')).to.equal('48 1/2 in');
  });

  it('tells the page', async () => {
    const backing = await mount('quilt-backing');
    await write(backing, 'width', '5');
    const amounts: unknown[] = [];
    backing.addEventListener('input', () => amounts.push(answered(backing).buy.text));
    await press(backing, 'Escape');
    expect(amounts).to.deep.equal(['3 3/4 yd']);
    expect(cell(backing, 'width').value).to.equal('58 in');
  });
});
