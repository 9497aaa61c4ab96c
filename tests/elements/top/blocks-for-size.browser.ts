import { expect } from 'chai';
import type { TopResult } from '../../../src/reckon.js';
import {
  all,
  answer,
  answered,
  buttonIn,
  choose,
  find,
  listed,
  listen,
  pressButton,
  refused,
  settled,
  show,
  text,
  valueIn,
  type Sheet,
} from '../../face/fixture.js';

const top = (attributes: string): Promise<Sheet> => show<Sheet>(`<quilt-top ${attributes}></quilt-top>`);
const CAPTION = 'Blocks for this size';
/** The list, if it is open. */
const choices = (sheet: Sheet): string[][] => {
  const table = all(sheet, 'table[part~=list]').find((at) => text(at.querySelector('caption')) === CAPTION);
  return table?.checkVisibility() ? listed(sheet, CAPTION) : [];
};

describe('quilt-top, from a wanted size to its blocks', () => {
  it('is folded away and says nothing without a wanted size', async () => {
    const sheet = await top('block="12" across="4" down="5"');
    expect(all(sheet, 'button').map(text)).to.not.include(CAPTION);
    expect(text(find(sheet, '.refine'))).to.match(/not set: .*Quilt for a bed · Wanted size/);
  });

  it('lists the choices for a bed, and takes one as if it was typed', async () => {
    const sheet = await top('block="12" across="4" down="5" sashing="2" frame bed="queen"');
    expect(choices(sheet)).to.deep.equal([]);
    await pressButton(sheet, CAPTION);
    // Worked by hand: 60 + 2 × 12 by 80 + 12. Columns of 14 and 2: 6 are 86, 5 are 72; rows: 7 are 100, 6 are 86.
    expect(choices(sheet)).to.deep.equal([
      ['Take 6 × 7', '86 × 100 in', '2 in wider, 8 in longer', '42'],
      [
        'Take 6 × 6',
        '86 × 86 in',
        '2 in wider, 6 in shorter; a border of 3 in at top and bottom would meet it',
        '36',
      ],
      [
        'Take 5 × 7',
        '72 × 100 in',
        '12 in narrower, 8 in longer; a border of 6 in at each side would meet it',
        '35',
      ],
      [
        'Take 5 × 6',
        '72 × 86 in',
        '12 in narrower, 6 in shorter; a border of 6 in at each side and 3 in at top and bottom would meet it',
        '30',
      ],
    ]);
    const heard = listen(sheet);
    const button = buttonIn(sheet, 'Take 6 × 7');
    button.focus();
    button.click();
    await settled(sheet);
    expect([valueIn(sheet, 'across'), valueIn(sheet, 'down')]).to.deep.equal(['6', '7']);
    expect(answered<TopResult>(sheet).finished).to.deep.equal({ width: '86', length: '100' });
    expect(heard.map((said) => said.split(' ')[0])).to.deep.equal(['input', 'change']);
    expect(sheet.shadowRoot!.activeElement).to.equal(button);
    expect(choices(sheet)).to.have.length(4);
  });

  it('shows the choices before anybody said how many blocks there are', async () => {
    const sheet = await top('block="12" target="60 x 84"');
    expect(refused(sheet).errors.map(({ input }) => input)).to.deep.equal(['across', 'down']);
    expect(choices(sheet)).to.deep.equal([['Take 5 × 7', '60 × 84 in', 'exactly as wanted', '35']]);
    const button = buttonIn(sheet, 'Take 5 × 7');
    button.focus();
    button.click();
    await settled(sheet);
    expect(answer(sheet)).to.match(/^Finished 60 × 84 in/);
    expect(sheet.shadowRoot!.activeElement).to.equal(button);
  });

  it('follows the reader to a bed, and back to none', async () => {
    const sheet = await top('block="12" across="4" down="5"');
    await choose(sheet, 'bed', 'crib');
    expect(all(sheet, '.note').map(text).join()).to.match(/does not belong where a baby sleeps/);
    expect(all(sheet, 'button').map(text)).to.include(CAPTION);
    await choose(sheet, 'bed', 'none');
    expect(all(sheet, 'button').map(text)).to.not.include(CAPTION);
  });

  it('offers nothing to take where the page has locked the blocks', async () => {
    const sheet = await top('block="12" across="4" down="5" target="60 x 84" lock="across"');
    await pressButton(sheet, CAPTION);
    expect(buttonIn(sheet, 'Take 5 × 7').disabled).to.equal(true);
  });
});
