import { expect } from 'chai';
import {
  answer,
  answered,
  choose,
  drawn,
  how,
  listed,
  mount,
  valueIn,
  writeAndLeave,
} from '../../face/fixture.js';

describe('quilt-binding', () => {
  it('reckons strips, joins and cloth, and draws every strip to scale', async () => {
    const sheet = await mount('quilt-binding');
    // Geometry: 2 × (58 + 70) + 10 = 266 in. Each strip after the first adds 40 − 2 1/2: 7 strips give 265, 8 give 302 1/2.
    expect(valueIn(sheet, 'need')).to.equal('266 in');
    expect([valueIn(sheet, 'strips'), answered(sheet).fabric]).to.deep.equal(['8', '20']);
    // 8 × 2 1/2 = 20 in, up to 5/8 yd = 22 1/2 in.
    expect(answer(sheet)).to.match(/^Buy 5\/8 yd/);
    const { rectangles, width, height, words } = drawn(sheet);
    expect(rectangles).to.have.length(8);
    expect(width / height).to.be.closeTo(40 / 20, 0.01);
    expect(words).to.include.members(['40 in', '20 in', '2 1/2 in']);
    expect(listed(sheet, 'What to cut')).to.have.length(1);
  });

  // Published worked examples: "50 × 60 in quilt, 40 in cloth, 2 in strips" (Castilleja Cotton, June 2013), and "40 × 50 in
  // quilt, 40 in cloth, 2 1/2 in strips" (Always in Stitches, 3 August 2009).
  for (const [width, length, strip, strips, fabric] of [
    ['50', '60', '2', '6', '12'],
    ['40', '50', '2 1/2', '5', '12 1/2'],
  ] as const)
    it(`gives ${strips} strips of ${strip} in for a ${width} × ${length} in quilt, as published`, async () => {
      const sheet = await mount('quilt-binding', { width, length, 'strip-width': strip });
      expect([valueIn(sheet, 'strips'), answered(sheet).fabric]).to.deep.equal([strips, fabric]);
    });

  it('takes the strip’s width from the finished width', async () => {
    const sheet = await mount('quilt-binding');
    await writeAndLeave(sheet, 'finished', '3/8');
    // 6 × 3/8 + 2 × 1/8 = 2 1/2 (geometry).
    expect([valueIn(sheet, 'strip'), how(sheet, 'strip')]).to.deep.equal([
      '2 1/2 in',
      '6 × 3/8 + 2 × 1/8 = 2 1/2 in',
    ]);
    await choose(sheet, 'fold', 'single');
    // 4 × 3/8 + 1/8 = 1 5/8
    expect(valueIn(sheet, 'strip')).to.equal('1 5/8 in');
  });

  it('draws the square for bias, and keeps the way round that was measured', async () => {
    const sheet = await mount('quilt-binding');
    await choose(sheet, 'cut', 'bias');
    const { width, height, words } = drawn(sheet);
    expect(width / height).to.be.closeTo(1, 0.001);
    expect(words).to.include(valueIn(sheet, 'square'));
    await writeAndLeave(sheet, 'around', '300');
    expect(valueIn(sheet, 'need')).to.equal('310 in');
    expect(answered<{ square: string }>(sheet).square).to.match(/^\d+$/);
  });
});
