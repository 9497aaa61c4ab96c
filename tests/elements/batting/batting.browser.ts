import { expect } from 'chai';
import {
  answer,
  answered,
  choose,
  drawn,
  listed,
  mount,
  settled,
  valueIn,
  writeAndLeave,
} from '../../face/fixture.js';

describe('quilt-batting', () => {
  it('finds the smallest package that covers, and draws what is left', async () => {
    const sheet = await mount('quilt-batting');
    // 58 + 8 by 70 + 8 = 66 × 78: throw 60 × 60 is too small, twin 72 × 90 does ("Common quilt and batting sizes", Honey
    // Be Good, 1 May 2012).
    expect(answer(sheet)).to.match(/^Buy 1 twin package/);
    const { rectangles, width, height, words } = drawn(sheet);
    const scale = width / 72;
    expect(height).to.be.closeTo(90 * scale, 0.05);
    const has = (wide: number, high: number): boolean =>
      rectangles.some(
        (at) => Math.abs(at.width - wide * scale) < 0.05 && Math.abs(at.height - high * scale) < 0.05,
      );
    expect([has(72, 90), has(66, 78), has(58, 70)]).to.deep.equal([true, true, true]);
    expect(words).to.include.members(['66 in', '78 in', 'bought 72 in', 'bought 90 in']);
    expect(listed(sheet, 'Packages').map(([, , does]) => does)).to.include.members(['yes', 'too small']);
  });

  it('offers the beds that are sold where the reader measures', async () => {
    const beds = async (units: string, bed = 'none'): Promise<string[]> => {
      const { shadowRoot } = await mount('quilt-batting', { units, bed });
      return [...shadowRoot!.querySelectorAll('[data-row=bed] option')].map((option) =>
        option.textContent.trim(),
      );
    };
    expect(await beds('in')).to.deep.equal([
      'no bed',
      'crib',
      'twin',
      'twin long',
      'full',
      'queen',
      'king',
      'California king',
    ]);
    const metric = await beds('cm');
    expect(metric).to.include.members(['no bed', 'crib, 60 × 120 cm', '90 × 200 cm', '180 × 200 cm']);
    expect(metric.join()).to.not.include('queen');
    // One that the page's author wrote stands there whatever the units.
    expect(await beds('cm', 'queen')).to.include('queen');
  });

  it('turns a package where that helps', async () => {
    const sheet = await mount('quilt-batting', { width: '80', length: '60' });
    // 88 × 68 needs a twin, 72 × 90, turned.
    expect(answer(sheet)).to.include('twin');
    expect(drawn(sheet).width / drawn(sheet).height).to.be.closeTo(90 / 72, 0.01);
  });

  it('goes by price where the shop’s own list has prices', async () => {
    const sheet = await mount('quilt-batting', {
      packages: 'small 40 x 50 @ 9; huge 120 x 120 @ 24; large 90 x 100 @ 29.50',
      currency: 'USD',
    });
    expect(answer(sheet))
      .to.match(/^Buy 1 huge package/)
      .and.include('$24.00');
    expect(listed(sheet, 'Packages').map(([name]) => name)).to.deep.equal(['small', 'large', 'huge']);
  });

  it('reckons the quilt for a bed, which can be typed over', async () => {
    const sheet = await mount('quilt-batting', {
      width: undefined,
      length: undefined,
      bed: 'queen',
      drop: '10',
      tuck: '5',
    });
    // Queen 60 × 80 ("Mattresses", sizes.com): 60 + 2 × 10 by 80 + 10 + 5; 88 × 103 of batting takes a queen, 90 × 108.
    expect([valueIn(sheet, 'bedWidth'), valueIn(sheet, 'bedLength')]).to.deep.equal(['80 in', '95 in']);
    expect(answer(sheet)).to.match(/^Buy 1 queen package/);
    await writeAndLeave(sheet, 'bedWidth', '84');
    expect(answer(sheet)).to.match(/^Buy 1 king package/);
    await choose(sheet, 'bed', 'none');
    expect(sheet.result.errors!.map(({ input }) => input)).to.deep.equal(['width', 'length']);
  });

  it('is bought from the roll where that is asked for, and where no package does', async () => {
    const sheet = await mount('quilt-batting', { roll: '96' });
    // 96 covers 78, so 66 in along the roll = 1 5/6 yd, up to 1 7/8.
    expect(answer(sheet)).to.match(/^Buy 1 7\/8 yd/);
    sheet.removeAttribute('roll');
    await writeAndLeave(sheet, 'width', '120');
    await writeAndLeave(sheet, 'length', '130');
    await settled(sheet);
    // 128 × 138: larger than a king of 120 × 120.
    expect(answer(sheet)).to.match(/^Buy \d.* yd/);
    expect(answered<{ rolls: { lengths: number }[] }>(sheet).rolls[0]!.lengths).to.equal(2);
    expect(answer(sheet)).to.match(/butted|side by side|lengths/i);
  });

  it('says for a crib that a quilt does not belong where a baby sleeps', async () => {
    // US Consumer Product Safety Commission, "Bare is best" safe-sleep tips.
    const sheet = await mount('quilt-batting', {
      width: undefined,
      length: undefined,
      bed: 'crib',
      drop: '0',
    });
    expect(answer(sheet)).to.include('where a baby sleeps');
  });
});
