import { expect } from 'chai';
import {
  choose,
  answer,
  answered,
  cell,
  drawn,
  find,
  how,
  listed,
  mount,
  settled,
  unfold,
  valueIn,
  writeAndLeave,
  type Sheet,
} from '../../face/fixture.js';

const CM = 1 / 2.54;
const inches = (mixed: string): number =>
  mixed
    .split(' ')
    .map((part) => part.split('/').map(Number))
    .reduce((sum, [top, under = 1]) => sum + top! / under, 0);

/** Sews panels side by side until they cover, both ways round: the least cloth, then the fewest seams. */
const bestBack = (
  quilt: [number, number],
  overage: number,
  cloth: number,
  seam: number,
): { panels: number; cut: number; fabric: number } => {
  const [width, length] = quilt.map((side) => side + 2 * overage) as [number, number];
  const ways = [
    [width, length],
    [length, width],
  ].map(([across, along]) => {
    let panels = 1;
    for (let covered = cloth; covered < across!; covered += cloth - 2 * seam) panels += 1;
    return { panels, cut: along!, fabric: panels * along! };
  });
  return ways.sort((a, b) => a.fabric - b.fabric || a.panels - b.panels)[0]!;
};
/** The least number of eighths of a yard. */
const eighths = (fabric: number): number => Math.ceil(fabric / 4.5 - 1e-9) * 4.5;

const isRight = (sheet: Sheet, quilt: [number, number], cloth = 40): void => {
  const best = bestBack(quilt, 4, cloth, 1 / 2);
  const { buy, fabric, working } = answered(sheet);
  expect(inches(fabric)).to.be.closeTo(best.fabric, 1e-6);
  expect(inches(buy.inches)).to.equal(eighths(best.fabric));
  expect(inches(buy.amount) * 36).to.equal(eighths(best.fabric));
  expect(answer(sheet)).to.include(`Buy ${buy.amount} yd`).and.include(`${best.panels} panels`);
  expect(valueIn(sheet, 'panels')).to.equal(String(best.panels));
  expect(inches(working.find(({ id }) => id === 'panel')!.inches!)).to.be.closeTo(best.cut, 1e-6);
  // The drawing is to scale: as wide and high as the back.
  const { width, height } = drawn(sheet);
  expect(width / height).to.be.closeTo((quilt[0] + 8) / (quilt[1] + 8), 0.005);
};

describe('quilt-backing: a 58 × 70 in quilt, 4 in overage, 40 in cloth', () => {
  let sheet: Sheet;
  beforeEach(async () => {
    sheet = await mount('quilt-backing', { overage: '4', 'fabric-width': '40' });
  });

  it('reads Buy 3 3/4 yd, with two panels and the working row by row', () => {
    // Geometry: panels of 66 in across a back 78 in long, 2 × 40 − 2 × 1/2 = 79 ≥ 78; 132 in = 3 2/3 yd.
    isRight(sheet, [58, 70]);
    expect(answer(sheet)).to.match(/^Buy 3 3\/4 yd 2 panels, 1 seam/);
    expect(how(sheet, 'needWidth')).to.equal('58 + 2 × 4 = 66 in');
    expect(how(sheet, 'needLength')).to.equal('70 + 2 × 4 = 78 in');
    expect(how(sheet, 'fabric')).to.equal('2 × 66 = 132 in');
    // 135 − 132
    expect(valueIn(sheet, 'spare')).to.equal('3 in');
  });

  it('draws the two panels to scale, where the seam is, and the quilt within', () => {
    const { rectangles, width, height, words } = drawn(sheet);
    expect(words).to.include.members(['panel 1', 'panel 2', '66 in', '78 in', 'quilt 58 in', 'quilt 70 in']);
    const scale = width / 66;
    expect(height).to.be.closeTo(78 * scale, 0.05);
    // The first panel shows 40 − 1/2 in beside its seam; the second what is left of 78.
    const sizes = rectangles.map((at) => [at.width / scale, at.height / scale]);
    for (const [at, [wide, high]] of [
      [66, 39.5],
      [66, 38.5],
      [58, 70],
    ].entries()) {
      expect(sizes[at]![0], `${at}`).to.be.closeTo(wide!, 0.05);
      expect(sizes[at]![1], `${at}`).to.be.closeTo(high!, 0.05);
    }
    expect(find(sheet, 'svg')!.getAttribute('aria-label')).to.include('66 × 78 in').and.include('1 seam');
  });

  it('follows when the width becomes 150 cm', async () => {
    await writeAndLeave(sheet, 'width', '150 cm');
    isRight(sheet, [150 * CM, 70]);
    expect(valueIn(sheet, 'width')).to.equal('150 cm');
    // 150 ÷ 2.54 + 8 = 67.055 in, to the nearest 1/16
    expect(valueIn(sheet, 'needWidth')).to.equal('≈67 1/16 in');
    expect(drawn(sheet).words).to.include('≈67 1/16 in');
    expect(listed(sheet, 'What to cut')[0]!.join(' ')).to.include('67 1/16');
  });

  it('follows when the cloth becomes 150 cm wide, or 108 in', async () => {
    await writeAndLeave(sheet, 'fabricWidth', '150 cm');
    isRight(sheet, [58, 70], 150 * CM);
    await writeAndLeave(sheet, 'fabricWidth', '106');
    // One panel, with no seam: 66 in of cloth = 1 5/6 yd, up to 1 7/8.
    expect(answer(sheet)).to.include('Buy 1 7/8 yd').and.include('no seam');
    expect(drawn(sheet).words).not.to.include('panel 2');
  });

  it('lists every way to lay it out, with its seams and cloth', () => {
    const ways = listed(sheet, 'Ways to lay it out');
    expect(ways).to.have.length(answered<{ layouts: unknown[] }>(sheet).layouts.length);
    // Geometry, by hand. Crosswise 2 × 66; lengthwise 2 × 78, since 66 > 40; a strip beside one panel saves cloth.
    expect(ways.map((way) => way.slice(1, 3))).to.deep.include.members([
      ['1', '132 in'],
      ['1', '156 in'],
    ]);
  });

  it('turns no panel of a one-way print', async () => {
    await unfold(sheet);
    cell(sheet, 'oneWay').click();
    await settled(sheet);
    // Lengthwise only: 2 panels of 78 in = 156 in = 4 1/3 yd, up to 4 3/8.
    expect(answer(sheet)).to.include('Buy 4 3/8 yd');
    expect(listed(sheet, 'Ways to lay it out')).to.have.length(1);
  });

  it('saves cloth with a pieced strip where that is allowed, and draws it', async () => {
    await unfold(sheet);
    cell(sheet, 'piecedStrip').click();
    await settled(sheet);
    // One panel of 78 in covers 40 of 66; strips 66 − 40 + 1 = 27 in high, 2 of them reach 79 ≥ 78: 78 + 54 = 132 in.
    // One panel of 66 in covers 40 of 78; strips 78 − 40 + 1 = 39 in high, 2 of them reach 79 ≥ 66: 66 + 78 = 144 in.
    // Neither takes less than two panels of 66 in, 132 in with one seam.
    expect(answered(sheet).fabric).to.equal('132');
    await writeAndLeave(sheet, 'width', '34');
    // A back 42 × 78: one panel of 78 and 2 strips of 42 − 40 + 1 = 3 in: 84 in; two panels of 42 take 84 in with one seam.
    await writeAndLeave(sheet, 'length', '80');
    // A back 42 × 88: 88 + 3 × 3 = 97 in; whole panels take 3 × 42 = 126 in, or 2 × 88.
    expect(answered(sheet).fabric).to.equal('97');
    expect(drawn(sheet).words.join()).to.include('panel 1');
    expect(listed(sheet, 'What to cut').map(([count]) => count)).to.deep.equal(['1 ×', '3 ×']);
  });
});

it('quilt-backing buys in metres where the shop cuts by 10 cm', async () => {
  const sheet = await mount('quilt-backing', {
    units: 'cm',
    width: '150',
    length: '180',
    overage: '10',
    'fabric-width': '110',
    seam: '1',
  });
  // A back 170 × 200 cm: 2 panels cover 2 × 110 − 2 = 218 either way, so 2 × 170 = 340 cm.
  expect(answer(sheet)).to.include('Buy 3.4 m');
  await unfold(sheet);
  await choose(sheet, 'increment', '50 cm');
  expect(answer(sheet)).to.include('Buy 3.5 m');
});

it('quilt-backing lets a reader choose the shop’s step from a list, her own units’ first', async () => {
  const sheet = await mount('quilt-backing', {
    units: 'cm',
    width: '150',
    length: '180',
    increment: '30 cm',
  });
  await unfold(sheet);
  const steps = [...cell(sheet, 'increment').querySelectorAll('option')].map(({ text }) => text.trim());
  expect(steps.slice(0, 4)).to.deep.equal(['10 cm', '25 cm', '50 cm', '1 m']);
  expect(steps).to.include('1/8 or 1/3 yd');
  // A step that the page's author wrote, and that is not in the list, stands there too.
  expect([valueIn(sheet, 'increment'), steps.at(-1)]).to.deep.equal(['30 cm', '30 cm']);
});
