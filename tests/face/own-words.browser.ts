import { expect } from 'chai';
import { answered, mount, row, type Sheet } from './fixture.js';

describe('An author’s own words', () => {
  it('stand for the labels that she names, in the rows, in sentences and in the result', async () => {
    const sheet = await mount('quilt-backing');
    sheet.words = { panels: 'Lengths of cloth', width: 'Across' };
    await sheet.updateComplete;
    expect(row(sheet, 'panels').textContent).to.include('Lengths of cloth');
    const labels = answered(sheet).working.map(({ label }) => label);
    expect(labels).to.include('Lengths of cloth').and.include('Quilt length');
    sheet.setAttribute('width', '-3');
    await sheet.updateComplete;
    expect(row(sheet, 'width').textContent).to.include('Across cannot be less than 0.');
  });

  it('go away with the property', async () => {
    const sheet: Sheet = await mount('quilt-backing');
    sheet.words = { panels: 'Lengths of cloth' };
    await sheet.updateComplete;
    sheet.words = undefined;
    await sheet.updateComplete;
    expect(row(sheet, 'panels').textContent).to.include('Panels side by side');
  });
});
