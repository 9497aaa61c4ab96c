import { expect } from 'chai';
import type { QuiltBlock } from '../../../src/index.js';
import type { BlockResult } from '../../../src/reckon.js';
import {
  all,
  answer,
  answered,
  buttonIn,
  how,
  listen,
  press,
  pressButton,
  show,
  text,
  valueIn,
  writeAndLeave,
  type Sheet,
} from '../../face/fixture.js';
import { calm, list, part, worksheet, type Worksheet } from './quilt.js';

type Block = QuiltBlock & Sheet;

const TOP = '<quilt-top block="12" across="4" down="5" sashing="2" fabric="B"></quilt-top>';
const REST = `<quilt-borders borders="3" fabric="C"></quilt-borders><quilt-backing fabric="D"></quilt-backing>
  <quilt-binding fabric="A"></quilt-binding>`;
const PRICES = ['A', 'B', 'C', 'D'].map(
  (letter) => `<quilt-fabric letter="${letter}" price="10"></quilt-fabric>`,
);
const star = (more = ''): string =>
  `<quilt-block name="Harbour Star" chart="A B; B A" ${more}></quilt-block>`;
const rail = (more = ''): string => `<quilt-block name="Low Rail" chart="C C; D D" ${more}></quilt-block>`;
const quilt = (blocks: string, attributes = ''): Promise<Worksheet> =>
  worksheet(PRICES.join('') + blocks + TOP + REST, attributes);

const blocksIn = (sheet: Sheet): Block[] => [...sheet.querySelectorAll<Block>('quilt-block')];
const counts = (sheet: Sheet): number[] => blocksIn(sheet).map((block) => answered<BlockResult>(block).count);
const notes = (sheet: Sheet): string => all(sheet, '.note').map(text).join('\n');
const offers = (sheet: Sheet): string[] => all(sheet, '.note button').map(text);
const type = async (sheet: Worksheet, id: string, typed: string): Promise<void> => {
  await writeAndLeave(part(sheet, 'top'), id, typed);
  await calm(sheet);
};

describe('the blocks in the places of a top', () => {
  it('an only block has as many as the top, and everything follows from the places to the total', async () => {
    const sheet = await quilt(star());
    const [block] = blocksIn(sheet) as [Block];
    expect([valueIn(block, 'count'), how(block, 'count')]).to.deep.equal(['20', 'from the quilt top']);
    await type(sheet, 'across', '5');
    expect(valueIn(block, 'count')).to.equal('25');
    // Geometry: 25 blocks of two squares of A and two of B, each 6 + 1/2 in, six across 40 in: 9 strips.
    const { fabrics, cuts } = answered<BlockResult>(block);
    expect(cuts.map(({ count, text }) => `${count} ${text}`)).to.deep.equal([
      '50 6 1/2 × 6 1/2 in',
      '50 6 1/2 × 6 1/2 in',
    ]);
    expect(fabrics.map(({ need }) => need)).to.deep.equal(['58 1/2', '58 1/2']);
    // 5 × 12 + 4 × 2 by 5 × 12 + 4 × 2, and 2 × 3 more with the borders
    expect(valueIn(part(sheet, 'backing'), 'width')).to.equal('74 in');
    expect(list(sheet).soFar).to.equal(undefined);
    const before = list(sheet).total!.amount;
    await writeAndLeave(block, 'block', '10');
    await calm(sheet);
    await type(sheet, 'block', '10');
    expect(Number(list(sheet).total!.amount)).to.be.lessThan(Number(before));
  });

  it('a block that fills takes what the others leave, and can be typed over', async () => {
    const sheet = await quilt(star('count="12"') + rail('fills') + rail('fills'));
    expect(counts(sheet)).to.deep.equal([12, 4, 4]);
    await type(sheet, 'down', '4');
    expect(counts(sheet)).to.deep.equal([12, 2, 2]);
    const [, rails] = blocksIn(sheet) as [Block, Block, Block];
    expect(how(rails, 'count')).to.equal('from the quilt top');
    await writeAndLeave(rails, 'count', '3');
    await calm(sheet);
    expect(counts(sheet)).to.deep.equal([12, 3, 1]);
    expect(how(rails, 'count')).to.equal('your own put back 2');
    await pressButton(rails, 'put back', 'count');
    await calm(sheet);
    expect(counts(sheet)).to.deep.equal([12, 2, 2]);
    expect(notes(sheet)).to.not.include('places');
  });

  it('a block that fills has none where the others are too many, and the list says so', async () => {
    const sheet = await quilt(star('count="24"') + rail('fills'));
    expect(counts(sheet)).to.deep.equal([24, 0]);
    expect(notes(sheet)).to.include(
      'The top has 20 places and the blocks are 24. Which block do you want 4 fewer of?',
    );
    expect(offers(sheet)).to.deep.equal(['4 fewer Harbour Star']);
    await pressButton(sheet, '4 fewer Harbour Star');
    await calm(sheet);
    expect(counts(sheet)).to.deep.equal([20, 0]);
    expect(notes(sheet)).to.not.include('places');
  });

  it('asks which block to make more of, and a press makes them, as if it had been typed', async () => {
    const form = await show<HTMLFormElement>(
      `<form><quilt-worksheet name="yards">${PRICES.join('')}${star('count="12"')}${rail('count="8"')}${TOP}</quilt-worksheet></form>`,
    );
    const sheet = form.querySelector<Worksheet>('quilt-worksheet')!;
    await calm(sheet);
    expect(form.checkValidity()).to.be.true;
    await type(sheet, 'down', '6');
    const sentence = 'The top has 24 places and the blocks are 20. Which block do you want 4 more of?';
    expect(notes(sheet)).to.include(sentence);
    expect(answer(sheet)).to.match(/^So far /);
    expect(form.checkValidity()).to.be.false;
    expect(sheet.validationMessage).to.equal(sentence);
    expect(offers(sheet)).to.deep.equal(['4 more Harbour Star', '4 more Low Rail']);

    const heard = listen(sheet, form);
    buttonIn(sheet, '4 more Low Rail').focus();
    await press(sheet, 'Enter');
    await calm(sheet);
    expect(counts(sheet)).to.deep.equal([12, 12]);
    expect(heard.map((one) => one.split(' ')[0])).to.deep.equal(['input', 'change']);
    expect(notes(sheet)).to.not.include('places');
    expect(form.checkValidity()).to.be.true;
    // The button is gone; the answer above it has the focus.
    expect(sheet.shadowRoot!.activeElement?.getAttribute('part')).to.equal('answer');
    form.reset();
    await calm(sheet);
    expect(counts(sheet)).to.deep.equal([12, 8]);
  });

  it('offers fewer only of blocks that are as many, and none that is locked', async () => {
    const sheet = await quilt(
      `${star('count="20"')}<quilt-block chart="A" count="3"></quilt-block>${rail('count="2" lock="count"')}`,
    );
    expect(offers(sheet)).to.deep.equal(['5 fewer Harbour Star']);
    await writeAndLeave(blocksIn(sheet)[0]!, 'count', '18');
    await calm(sheet);
    expect(offers(sheet)).to.deep.equal(['3 fewer Harbour Star', '3 fewer of block 2']);
  });

  it('leaves out a block of another size: it is for something else', async () => {
    const sheet = await quilt(star() + rail('block="6" count="4"'));
    expect(counts(sheet)).to.deep.equal([20, 4]);
    expect(notes(sheet)).to.not.include('places');
  });

  it('says in which lists the size is another than the top has now', async () => {
    const sheet = await quilt(star('block="12"'));
    await type(sheet, 'block', '10');
    expect(notes(sheet)).to.include('This list has no cloth for 20 blocks of 10 in yet');
    expect(notes(blocksIn(sheet)[0]!)).to.include('This list has no cloth for 20 blocks of 10 in yet');
  });
});
