import { expect } from 'chai';
import type { BlockResult, CuttingResult } from '../../../src/reckon.js';
import { answered, settled } from '../../face/fixture.js';
import { calm, list, part, worksheet, type Worksheet } from './quilt.js';

const NINE = 'chart="A B A; B A B; A B A" block="9" count="20"';
const RAIL = 'list="A | square | 3 1/2 | 30&#10;B | rail | 4 x 10 | 40"';

const quarters = (more = '', inside = ''): Promise<Worksheet> =>
  worksheet(
    `<quilt-fabric letter="A" name="Print" sheet="fat-quarter"></quilt-fabric>
    <quilt-fabric letter="B" name="Background" ${more}></quilt-fabric>${inside}`,
  );
const bought = (sheet: Worksheet): string[] => {
  const { fabrics, items } = list(sheet);
  return [
    ...fabrics.map(({ letter, text }) => `${letter} ${text}`),
    ...items.map((item) => `${item.fabric} ${item.text}`),
  ];
};

describe('a fabric that is bought in fat quarters', () => {
  it('is planned on them by every list and block that names no sheet of its own', async () => {
    const sheet = await quarters(
      '',
      `<quilt-cutting ${RAIL}></quilt-cutting><quilt-block ${NINE}></quilt-block>`,
    );
    // Geometry: 25 squares of 3 1/2 in fit a fat quarter, so 30 take 2, and 100 take 4.
    const plans = (result: CuttingResult | BlockResult) => result.fabrics.map(({ sheets }) => sheets);
    expect(plans(answered<CuttingResult>(part(sheet, 'cutting')))).to.deep.equal([2, undefined]);
    expect(plans(answered<BlockResult>(sheet.querySelector('quilt-block')!))).to.deep.equal([4, undefined]);
  });

  it('gives way to the sheet of the list itself', async () => {
    const sheet = await quarters('', `<quilt-block ${NINE} sheet="fat-eighth"></quilt-block>`);
    const { fabrics } = answered<BlockResult>(sheet.querySelector('quilt-block')!);
    expect(fabrics.map(({ buy }) => buy.unit)).to.deep.equal(['sheet', 'sheet']);
  });

  it('has its size in the worksheet’s unit, also for a part with another', async () => {
    const sheet = await worksheet(
      `<quilt-fabric letter="A" sheet="45 x 50"></quilt-fabric>
      <quilt-cutting units="in" list="A | square | 3 1/2 | 30"></quilt-cutting>`,
      'units="cm"',
    );
    const [plan] = answered<CuttingResult>(part(sheet, 'cutting')).fabrics;
    // 50 cm are 50 ÷ 2.54 = 19 87/127 in
    expect(plan!.width).to.equal('19 87/127');
  });

  it('follows what the page says of the fabric later', async () => {
    const sheet = await quarters('', `<quilt-cutting ${RAIL}></quilt-cutting>`);
    expect(bought(sheet)).to.deep.equal(['B 1 1/8 yd', 'A 2 fat quarters']);
    part(sheet, 'fabric').setAttribute('sheet', '');
    await settled(sheet);
    await calm(sheet);
    expect(bought(sheet)).to.deep.equal(['A 3/8 yd', 'B 1 1/8 yd']);
  });

  it('is said to be unreadable where it is planned', async () => {
    const sheet = await worksheet(
      '<quilt-fabric letter="A" sheet="much"></quilt-fabric><quilt-cutting list="A | square | 3 1/2 | 30"></quilt-cutting>',
    );
    const { result } = part(sheet, 'cutting');
    expect(result.errors?.map(({ message }) => message)).to.deep.equal([
      'What fabric A is bought in: “much” is not a sheet of cloth. Write fat-quarter, fat-eighth or a size like 18 x 20.',
    ]);
  });
});
