import { expect } from 'chai';
import type { QuiltTop } from '../../../src/index.js';
import type { TopResult } from '../../../src/reckon.js';
import {
  answer,
  answered,
  choose,
  drawn,
  find,
  isOpen,
  isReckoned,
  listed,
  messageAt,
  mount,
  pressButton,
  refused,
  settled,
  valueIn,
  writeAndLeave,
  type Sheet,
} from '../../face/fixture.js';

const top = (attributes: Record<string, string | true> = {}): Promise<Sheet> =>
  mount('quilt-top', { block: '12', across: '4', down: '5', ...attributes });
const framed = { sashing: '2', cornerstones: true, frame: true } as const;

/** The closed shapes of the drawing: one for each block on point. */
const shapes = (sheet: Sheet): SVGPathElement[] => [
  ...find(sheet, 'svg[role=img]')!.querySelectorAll<SVGPathElement>('path[d$=Z]'),
];

describe('quilt-top', () => {
  it('shows the finished size in large type, and every piece to cut', async () => {
    const sheet = await top(framed);
    // geometry: 4 × 12 + 5 × 2 and 5 × 12 + 6 × 2
    expect(answer(sheet)).to.match(/^Finished 58 × 72 in 20 blocks/);
    expect(valueIn(sheet, 'finishedWidth')).to.equal('58 in');
    // 5 × 5 pieces between blocks and 6 × 4 between rows, 5 × 6 cornerstones
    expect(listed(sheet, 'What to cut')).to.deep.equal([
      ['25 ×', 'sashing between blocks', '2 1/2 × 12 1/2 in'],
      ['24 ×', 'sashing between rows', '2 1/2 × 12 1/2 in'],
      ['30 ×', 'cornerstone', '2 1/2 × 2 1/2 in'],
    ]);
  });

  it('keeps apart how to cut from one cloth and how from several', async () => {
    const sheet = await top(framed);
    const parts = (caption: string): string[] => [...new Set(listed(sheet, caption).map(([part]) => part!))];
    const one = 'Strips, all from one cloth';
    const several = 'Strips, if each part has a fabric of its own';
    expect(parts(one)).to.deep.equal(['all']);
    expect(parts(several)).to.deep.equal(['sashing', 'cornerstones']);
    expect(parts('Cloth, if each part has a fabric of its own')).to.deep.equal(['sashing', 'cornerstones']);
    sheet.fabric = 'A B';
    await settled(sheet);
    expect([parts(one).length, parts(several).length]).to.deep.equal([0, 2]);
    sheet.fabric = 'A';
    await settled(sheet);
    expect([parts(one).length, parts(several).length]).to.deep.equal([1, 0]);
  });

  it('names the amount that a warning of a small spare is about', async () => {
    const sheet = await top({ sashing: '2', cornerstones: true });
    // geometry: 15 pieces of 2 1/2 × 12 1/2 between blocks and 16 between rows, three to a strip across 40 in, and 12 stones
    const { buy } = answered(sheet);
    expect(answer(sheet)).to.include(`For sashing and cornerstones from one cloth buy ${buy.text}.`);
  });

  it('draws its blocks and cornerstones to scale', async () => {
    const sheet = await top(framed);
    const { rectangles, width, height, words } = drawn(sheet);
    expect(width / height).to.be.closeTo(58 / 72, 0.01);
    // the top itself, 20 blocks, 30 cornerstones
    expect(rectangles).to.have.length(51);
    const scale = width / 58;
    const sized = (side: number): number =>
      rectangles.filter(
        (at) => Math.abs(at.width - side * scale) < 0.1 && Math.abs(at.height - side * scale) < 0.1,
      ).length;
    expect([sized(12), sized(2)]).to.deep.equal([20, 30]);
    expect(words).to.include.members(['58 in', '72 in']);
  });

  it('sets its blocks on point, with the squares for its triangles', async () => {
    const sheet = await top({ across: '3', down: '3' });
    await choose(sheet, 'set', 'on-point');
    // 3 × 3 + 2 × 2 blocks; 12 in: 18 1/4 and 9 3/8 in (“Setting triangles” chart, lukas.is-a-geek.org/tani/chart.htm)
    expect(answered<TopResult>(sheet)).to.include({
      blocks: 13,
      sideSquare: '18 1/4',
      cornerSquare: '9 3/8',
      sideTriangles: 8,
    });
    expect(shapes(sheet)).to.have.length(13);
    const { width, height } = drawn(sheet);
    expect(width / height).to.be.closeTo(1, 0.001);
    const side = shapes(sheet)[0]!.getBBox();
    // a block's diagonal is a third of the top’s width
    expect(side.width / width).to.be.closeTo(1 / 3, 0.002);
  });

  it('with sashing on point asks for cornerstones, in the row of the cornerstones', async () => {
    const sheet = await top({ set: 'on-point', sashing: '2' });
    expect(refused(sheet).errors.map(({ input }) => input)).to.deep.equal(['cornerstones']);
    expect(messageAt(sheet, 'cornerstones')).to.include('Tick cornerstones');
    await (sheet as QuiltTop & Sheet & { cornerstones: boolean }).updateComplete;
    (sheet as QuiltTop).cornerstones = true;
    await settled(sheet);
    const { cuts, blocks } = answered<TopResult>(sheet);
    const counts = Object.fromEntries(cuts.map(({ piece, count }) => [piece, count]));
    expect(cuts).to.have.length(4);
    // every block, every sashing piece and every cornerstone is drawn once
    expect(shapes(sheet)).to.have.length(blocks + counts['sashing']! + counts['cornerstone']!);
    const { width, height } = drawn(sheet);
    // geometry: (4 × 14 + 2) × √2 across and (5 × 14 + 2) × √2 down; nothing is drawn outside
    expect(width / height).to.be.closeTo(58 / 72, 0.001);
  });

  it('follows a finished size that was measured, and takes it back', async () => {
    const sheet = await top(framed);
    expect(isReckoned(sheet, 'finishedWidth')).to.be.false;
    await writeAndLeave(sheet, 'finishedWidth', '57 1/2');
    expect(answered<TopResult>(sheet).finished).to.deep.equal({ width: '57 1/2', length: '72' });
    await pressButton(sheet, 'put back 58 in', 'finishedWidth');
    expect(answered<TopResult>(sheet).finished).to.deep.equal({ width: '58', length: '72' });
  });

  it('says what is missing, and locks what the author locks', async () => {
    const sheet = await mount('quilt-top', { block: '12' });
    expect(refused(sheet).errors.map(({ input }) => input)).to.deep.equal(['across', 'down']);
    expect(messageAt(sheet, 'across')).to.match(/missing\. Write it like 4\.$/);
    const locked = await top({ lock: 'block across' });
    expect([isOpen(locked, 'block'), isOpen(locked, 'across'), isOpen(locked, 'down')]).to.deep.equal([
      false,
      false,
      true,
    ]);
  });

  it('draws a hundred by a hundred blocks as one field', async () => {
    const sheet = await top({ block: '1', across: '100', down: '100' });
    expect(answered<TopResult>(sheet).blocks).to.equal(10_000);
    expect(drawn(sheet).rectangles.length).to.be.lessThan(10);
  });
});
