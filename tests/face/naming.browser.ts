import { expect } from 'chai';
import { find, settled, show, type Sheet } from './fixture.js';

const nameOf = (sheet: Sheet): string | null => find(sheet, 'section')!.getAttribute('aria-label');
const headOf = (sheet: Sheet): string => find(sheet, '[part=table] th')!.textContent.trim();
const sheetsIn = ({ children }: Element): Sheet[] => [...children] as Sheet[];

describe('the name of a sheet', () => {
  it('is its own on a page, with a number where there are several of one kind', async () => {
    const backing = '<quilt-backing width="58" length="70"></quilt-backing>';
    const page = await show(
      `<main>${backing}<quilt-batting bed="twin"></quilt-batting>${backing}${backing}</main>`,
    );
    await settled(page);
    const sheets = sheetsIn(page);
    expect(sheets.map(nameOf)).to.deep.equal(['Backing', 'Batting', 'Backing 2', 'Backing 3']);
    expect(sheets.map(headOf)).to.deep.equal(['Backing', 'Batting', 'Backing', 'Backing']);

    // A place that has become free is taken again, and nobody else's name changes.
    const [first, , second] = sheets;
    first!.remove();
    const late = document.createElement('quilt-backing');
    page.append(late);
    await late.updateComplete;
    expect(nameOf(late)).to.equal('Backing');
    expect(nameOf(second!)).to.equal('Backing 2');
  });

  it('is what an author calls a block', async () => {
    const block = (name: string): string => `<quilt-block chart="A B; B A" block="6" ${name}></quilt-block>`;
    const page = await show(`<main>${block('name="Lighthouse"')}${block('name="Gull"')}${block('')}</main>`);
    await settled(page);
    const sheets = sheetsIn(page);
    expect(sheets.map(nameOf)).to.deep.equal(['Lighthouse', 'Gull', 'Block']);
    expect(sheets.map(headOf)).to.deep.equal(['Lighthouse', 'Gull', 'Block']);
  });
});
