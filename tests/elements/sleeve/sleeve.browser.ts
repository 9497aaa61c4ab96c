import { expect } from 'chai';
import { answer, drawn, mount, valueIn, writeAndLeave } from '../../face/fixture.js';

describe('quilt-sleeve', () => {
  it('reckons its strips and draws it along the quilt’s top edge', async () => {
    const sheet = await mount('quilt-sleeve', { width: '70' });
    // Geometry: 2 × 40 − 2 × 1/4 = 79 1/2 ≥ 70 in; 2 × 8 1/2 = 17 in, up to 1/2 yd.
    expect([valueIn(sheet, 'strips'), valueIn(sheet, 'fabric')]).to.deep.equal(['2', '17 in']);
    expect(answer(sheet)).to.match(/^Buy 1\/2 yd/);
    expect(drawn(sheet).words).to.include.members(['70 in', 'sleeve 68 in', '4 in']);
  });

  it('follows what is typed', async () => {
    const sheet = await mount('quilt-sleeve', { width: '70' });
    await writeAndLeave(sheet, 'stripWidth', '6 1/2');
    expect([valueIn(sheet, 'depth'), valueIn(sheet, 'fabric')]).to.deep.equal(['3 in', '13 in']);
  });
});
