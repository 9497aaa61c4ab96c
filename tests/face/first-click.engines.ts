import { sendMouse } from '@web/test-runner-commands';
import { expect } from 'chai';
import { cell, mount, settled } from './fixture.js';

const click = async (at: HTMLElement, inset: number): Promise<void> => {
  const { left, top, height } = at.getBoundingClientRect();
  await sendMouse({
    type: 'click',
    position: [Math.round(left + inset), Math.round(top + height / 2)],
    button: 'left',
  });
};

describe('A click into a cell', () => {
  it('marks all of it at first, so that typing replaces it; the next one sets the caret', async () => {
    const sheet = await mount('quilt-backing');
    const width = cell(sheet, 'width');
    scrollTo(0, 0);
    await click(width, 12);
    await settled(sheet);
    expect([width.selectionStart, width.selectionEnd]).to.deep.equal([0, '58 in'.length]);
    // So far from the first that the two are no double click.
    await click(width, width.getBoundingClientRect().width - 12);
    expect(width.selectionStart).to.equal(width.selectionEnd);
  });
});
