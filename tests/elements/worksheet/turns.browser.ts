import { expect } from 'chai';
import type { QuiltTop } from '../../../src/elements/top/top.js';
import { cell, find, settled, show, write, type Sheet } from '../../face/fixture.js';
import { QUILT } from '../../hosts/quilt-parts.js';

/** Counts how often a sheet is reckoned. */
const reckonings = (sheet: Sheet): { count: number } => {
  const counted = { count: 0 };
  const { calculator } = sheet;
  const { reckon } = calculator;
  calculator.reckon = (input) => {
    counted.count += 1;
    return reckon(input);
  };
  return counted;
};

describe('a keystroke in a worksheet', () => {
  it('reckons each part once, and reads what they take when it is typed and when they are drawn', async () => {
    const worksheet = await show<Sheet>(QUILT);
    const top = worksheet.querySelector<QuiltTop>('quilt-top')!;
    const parts = [...worksheet.querySelectorAll<Sheet>('quilt-borders, quilt-backing, quilt-binding')];
    const counted = parts.map(reckonings);
    let reads = 0;
    const { takes } = top.calculator;
    top.calculator.takes = (...of) => {
      reads += 1;
      return takes!(...of);
    };
    await write(top, 'across', '5');
    await settled(worksheet);
    expect(counted.map(({ count }) => count)).to.deep.equal([1, 1, 1]);
    // Twice when it is typed, twice when both are drawn, and once more when its plan has come.
    expect(reads).to.be.at.least(1).and.at.most(5);
  });

  it('has settled for whoever hears of it', async () => {
    const worksheet = await show<Sheet>(QUILT);
    const top = worksheet.querySelector<Sheet>('quilt-top')!;
    const backing = worksheet.querySelector<Sheet>('quilt-backing')!;
    const before = backing.value;
    let heard = '';
    document.addEventListener('input', () => (heard = backing.value), { once: true });
    await write(top, 'across', '8');
    expect(heard).to.equal(backing.value).and.not.equal(before);
  });
});

describe('very many sheets on a page', () => {
  const many = (count: number): Sheet[] => {
    const stage = document.querySelector('main')!;
    stage.innerHTML = '<quilt-backing width="58" length="70"></quilt-backing>'.repeat(count);
    return [...stage.querySelectorAll<Sheet>('quilt-backing')];
  };
  const isDrawn = (sheet: Sheet): boolean => !!find(sheet, '[part=amount]');
  const layingOut = (sheet: Sheet): string =>
    getComputedStyle(find(sheet, '[part=sheet]')!).getPropertyValue('content-visibility');

  it('are drawn at once while they are few', async () => {
    const sheets = many(12);
    await Promise.resolve();
    await Promise.resolve();
    expect(sheets.every(isDrawn)).to.equal(true);
    expect(layingOut(sheets[11]!)).to.equal('visible');
  });

  it('take turns if there are many, from the top, and all of them know their answer', async () => {
    const sheets = many(40);
    await Promise.resolve();
    await Promise.resolve();
    expect(sheets.filter(isDrawn).length).to.equal(0);
    expect(sheets.at(-1)!.value).to.match(/\d/);
    while (!isDrawn(sheets.at(-1)!)) {
      const drawn = sheets.map(isDrawn);
      expect(drawn.lastIndexOf(true)).to.be.below(Math.max(drawn.indexOf(false), 0) || 1);
      await new Promise((done) => setTimeout(done));
    }
    expect(sheets.every(isDrawn)).to.equal(true);
    // Far off the screen they are not laid out.
    expect(layingOut(sheets.at(-1)!)).to.equal('auto');
  });

  it('take turns too where a page waits for all of them', async () => {
    const sheets = many(40);
    const all = Promise.all(sheets.map(({ updateComplete }) => updateComplete));
    await Promise.resolve();
    await Promise.resolve();
    expect(sheets.filter(isDrawn).length).to.equal(0);
    await all;
    expect(sheets.every(isDrawn)).to.equal(true);
  });

  it('are drawn before their turn if somebody waits for one, goes to it or prints', async () => {
    const sheets = many(40);
    await sheets[39]!.updateComplete;
    expect(isDrawn(sheets[39]!)).to.equal(true);
    sheets[38]!.focus();
    expect(sheets[38]!.shadowRoot!.activeElement).to.equal(cell(sheets[38]!, 'width'));
    dispatchEvent(new Event('beforeprint'));
    expect(sheets.every(isDrawn)).to.equal(true);
  });
});
