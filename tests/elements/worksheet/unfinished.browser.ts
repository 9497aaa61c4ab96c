import { expect } from 'chai';
import {
  all,
  answer,
  leave,
  listed,
  show,
  text,
  writeAndLeave,
  writeInGrid,
  type Sheet,
} from '../../face/fixture.js';
import { calm, list, part, type Worksheet } from './quilt.js';

const notes = (sheet: Sheet): string => all(sheet, '.note').map(text).join('\n');

describe('a cut list for other blocks than the top has now', () => {
  it('leaves its worksheet unfinished: the total is “so far”, a form is not valid, and the list says what is missing', async () => {
    const form = await show<HTMLFormElement>(
      `<form><quilt-worksheet name="yards" kits="24" currency="EUR">
        <quilt-fabric letter="A" name="Wet Sand" price="10"></quilt-fabric>
        <quilt-top block="12" across="3" down="4" fabric="A"></quilt-top>
        <quilt-cutting list="A | square | 6 1/2 | 48"></quilt-cutting>
        <quilt-binding fabric="A"></quilt-binding>
      </quilt-worksheet></form>`,
    );
    const sheet = form.querySelector<Worksheet>('quilt-worksheet')!;
    await calm(sheet);
    expect(form.checkValidity()).to.be.true;
    expect(answer(sheet)).to.match(/^For 24 kits €/);

    await writeAndLeave(part(sheet, 'top'), 'across', '5');
    await calm(sheet);
    // 5 × 4 blocks, where the list is for 3 × 4
    const sentence =
      'This list has no cloth for 20 blocks of 12 in yet: the cut list is for 12 blocks of 12 in. Change the cut list to the pieces that you need now.';
    expect(answer(sheet)).to.match(/^For 24 kits, so far €/);
    expect(list(sheet).soFar).to.be.true;
    expect(listed(sheet, 'Shopping list for one kit').at(-1)![0]).to.equal('Total so far');
    expect(notes(sheet)).to.include(sentence);
    expect(notes(part(sheet, 'cutting'))).to.include(sentence);
    expect(sheet.checkValidity()).to.be.false;
    expect(sheet.validationMessage).to.equal(sentence);
    expect(form.checkValidity()).to.be.false;

    await writeInGrid(part(sheet, 'cutting'), 1, 5, '80');
    await leave(part(sheet, 'cutting'));
    await calm(sheet);
    expect(form.checkValidity()).to.be.true;
    expect(answer(sheet)).to.match(/^For 24 kits €/);

    form.reset();
    await calm(sheet);
    expect(form.checkValidity()).to.be.true;
    expect(notes(sheet)).to.not.include('has no cloth');
  });
});
