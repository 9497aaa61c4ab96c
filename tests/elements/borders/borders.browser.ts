import { expect } from 'chai';
import {
  answer,
  answered,
  choose,
  drawn,
  listed,
  mount,
  valueIn,
  writeAndLeave,
} from '../../face/fixture.js';

/** The finished size and the cut lengths, by sewing border after border on: sides, then top and bottom. */
const sewn = (
  width: number,
  length: number,
  borders: number[],
): { width: number; length: number; cuts: number[] } => {
  const cuts: number[] = [];
  for (const border of borders) {
    cuts.push(length + 1 / 2);
    width += 2 * border;
    cuts.push(width + 1 / 2);
    length += 2 * border;
  }
  return { width, length, cuts };
};
const mixed = (value: number): string => `${Math.floor(value)}${value % 1 ? ` ${(value % 1) * 2}/2` : ''}`;

describe('quilt-borders', () => {
  it('reckons every border from the inside out, and draws them round the top with their cut lengths', async () => {
    const sheet = await mount('quilt-borders');
    const { width, length, cuts } = sewn(58, 70, [2, 4.5]);
    expect(answered<object>(sheet)).to.deep.include({
      finished: { width: mixed(width), length: mixed(length) },
    });
    const lengths = ['border1Sides', 'border1Ends', 'border2Sides', 'border2Ends'].map((id) =>
      valueIn(sheet, id),
    );
    expect(lengths).to.deep.equal(cuts.map((cut) => `${mixed(cut)} in`));
    expect(answer(sheet)).to.include(`${mixed(width)} × ${mixed(length)} in`);
    const drawing = drawn(sheet);
    expect(drawing.width / drawing.height).to.be.closeTo(width / length, 0.005);
    // The top and two times four pieces.
    expect(drawing.rectangles).to.have.length(9);
    expect(drawing.words).to.include.members([`${mixed(width)} in`, `${mixed(length)} in`, 'quilt top']);
    const list = listed(sheet, 'What to cut')
      .map((line) => line.join(' '))
      .join('\n');
    for (const cut of cuts) expect(list).to.include(mixed(cut));
  });

  it('follows a length that was measured through the middle', async () => {
    const sheet = await mount('quilt-borders', { borders: '2' });
    await writeAndLeave(sheet, 'border1Sides', '71');
    // 71 in raw is 70 1/2 finished; the length grows by 2 × 2.
    expect(answered<object>(sheet)).to.deep.include({ finished: { width: '62', length: '74 1/2' } });
    expect(drawn(sheet).words).to.include('74 1/2 in');
  });

  it('draws corner squares as squares, and mitres as mitres', async () => {
    const sheet = await mount('quilt-borders', { borders: '6' });
    await choose(sheet, 'corners', 'squares');
    const { rectangles, width } = drawn(sheet);
    // The top is 58 + 2 × 6 in wide; a corner is 6 × 6.
    const scale = width / 70;
    expect(
      rectangles.filter(
        (at) => Math.abs(at.width - 6 * scale) < 0.05 && Math.abs(at.height - 6 * scale) < 0.05,
      ),
    ).to.have.length(4);
    expect(
      listed(sheet, 'What to cut')
        .map((line) => line.join(' '))
        .join(),
    ).to.include('6 1/2 × 6 1/2');
    await choose(sheet, 'corners', 'mitred');
    const mitred = drawn(sheet);
    expect(mitred.rectangles).to.have.length(1);
    expect(mitred.width / mitred.height).to.be.closeTo(70 / 82, 0.005);
    // Side + 2 × cut width + 2 (common practice, no source): 70 + 13 + 2 and 58 + 13 + 2.
    expect([valueIn(sheet, 'border1Sides'), valueIn(sheet, 'border1Ends')]).to.deep.equal(['85 in', '73 in']);
  });

  it('reaches a wanted size, and says where the sides differ from top and bottom', async () => {
    const sheet = await mount('quilt-borders', { borders: undefined, target: '70 x 84' });
    // (70 − 58) ÷ 2 and (84 − 70) ÷ 2
    expect([valueIn(sheet, 'targetSides'), valueIn(sheet, 'targetEnds')]).to.deep.equal(['6 in', '7 in']);
    expect(answered<object>(sheet)).to.deep.include({ finished: { width: '70', length: '84' } });
    expect(answer(sheet)).to.include('6 in').and.include('7 in');
  });

  it('keeps one choice of corners for each border where the author gave several', async () => {
    const sheet = await mount('quilt-borders', { corners: 'sides-first, squares' });
    const corners = [...sheet.shadowRoot!.querySelectorAll<HTMLSelectElement>('select[data-row=corners]')];
    expect(corners.map(({ value }) => value)).to.deep.equal(['sides-first', 'squares']);
    corners[1]!.value = 'mitred';
    corners[1]!.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    expect((sheet as never as { corners: string }).corners).to.equal('sides-first, mitred');
    expect(answered(sheet).fabric).to.equal(
      answered(await mount('quilt-borders', { corners: 'sides-first, mitred' })).fabric,
    );
  });
});
