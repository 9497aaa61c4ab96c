import { expect } from 'chai';
import type { BlockResult, CuttingResult } from '../../../src/reckon.js';
import { all, answered, find, settled, text } from '../../face/fixture.js';
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

  it('is what a block says that it is cut from, and the reader can choose something else', async () => {
    const sheet = await quarters('', `<quilt-block ${NINE}></quilt-block>`);
    const block = sheet.querySelector('quilt-block')!;
    const shown = (): string => text(find(block, '.refine'));
    expect(shown()).to.include('Cut from: what each fabric is bought in').and.not.include('by length');
    find(block, '.refine button')!.click();
    await settled(block);
    const choice = find<HTMLSelectElement>(block, 'select[data-row=sheet]')!;
    expect(text(choice.selectedOptions[0])).to.equal('what each fabric is bought in');
    expect(text(choice.closest('tr'))).to.include('you can choose something else here');
    part(sheet, 'fabric').setAttribute('sheet', '');
    await settled(sheet);
    expect(text(choice.selectedOptions[0])).to.equal('cloth by length');
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
      'What fabric A is bought in: “much” is not a sheet of cloth. Choose one from the list, or write a size like 12 x 40.',
    ]);
  });
});

describe('fat quarters of several weeks', () => {
  const block = (name: string, week: number, count: number): string =>
    `<quilt-block name="${name}" week="${week}" chart="A B; B A" block="11" count="${count}"></quilt-block>`;
  const SEW_ALONG = `<quilt-fabric letter="A" name="Print" sheet="fat-quarter" price="3.20"></quilt-fabric>
    <quilt-fabric letter="B" name="Background" price="10"></quilt-fabric>
    ${block('Gull', 2, 2)}${block('Harbour', 1, 3)}
    <quilt-cutting week="3" list="A | square | 6 | 8"></quilt-cutting>`;
  const LIST = 'Fat quarters, week by week';
  const opener = (sheet: Worksheet): HTMLElement =>
    all<HTMLElement>(sheet, '[part~=action]').find((at) => text(at) === LIST) ??
    expect.fail('nothing to open');

  it('are one line of the shopping list, fewer than the weeks take apart', async () => {
    const sheet = await worksheet(SEW_ALONG, 'currency="EUR"');
    const [line] = list(sheet).items;
    // Geometry: 11 ÷ 2 + 1/2 = 6 in; 9 squares of 6 in fit a fat quarter, and 4 + 6 + 8 take two.
    expect([line!.text, line!.cost!.text, line!.parts!.map(({ sheets }) => sheets)]).to.deep.equal([
      '2 fat quarters',
      '€6.40',
      [1, 1, 1],
    ]);
    expect(line!.parts!.map(({ title }) => title)).to.deep.equal(['Harbour', 'Gull', 'Week 3']);
    const row = all(sheet, '[part~=list] tbody tr')
      .map(text)
      .find((row) => row.includes('fat quarters'));
    expect(row).to.include('Harbour, Gull, week 3');
  });

  it('say week by week which of them to cut, folded away at first', async () => {
    const sheet = await worksheet(SEW_ALONG, 'currency="EUR"');
    const table = (): Element | undefined =>
      all(sheet, '[part~=list]').find((one) => text(one.querySelector('caption')) === LIST);
    expect(table()!.getBoundingClientRect().height).to.equal(0);
    opener(sheet).click();
    await settled(sheet);
    expect(table()!.getBoundingClientRect().height).to.be.above(0);
    const rows = [...table()!.querySelectorAll('tbody tr')].map((row) => [...row.children].map(text));
    expect(rows).to.deep.equal([
      ['Week 1: Harbour', 'A · Print', '6 × square, 6 × 6 in', '1', '1'],
      ['Week 2: Gull', 'A · Print', '4 × square, 6 × 6 in', '1, 2', '1'],
      ['Week 3', 'A · Print', '8 × square, 6 × 6 in', '2', '0'],
    ]);
  });

  it('are drawn with the numbers that the list names', async () => {
    const sheet = await worksheet(SEW_ALONG);
    const captions = all(sheet, 'figcaption').map(text);
    expect(captions).to.include('Fabric A: numbers 1, 2 of the 2 fat quarters');
  });

  it('are drawn without a number where there is only one', async () => {
    const sheet = await worksheet(`
      <quilt-fabric letter="A" name="Print" sheet="fat-quarter"></quilt-fabric>
      <quilt-block week="1" block="6" count="1" chart="A A; A A"></quilt-block>
      <quilt-block week="2" block="6" count="1" chart="A A; A A"></quilt-block>`);
    expect(all(sheet, 'figcaption').map(text)).to.include('Fabric A: 1 fat quarter');
  });

  it('follow what somebody types in one of the weeks', async () => {
    const sheet = await worksheet(SEW_ALONG);
    const first = sheet.querySelector('quilt-block')!;
    first.count = '7';
    await settled(sheet);
    await calm(sheet);
    // 14 + 6 + 8 = 28 squares, 9 on each
    expect(list(sheet).items.map(({ text }) => text)).to.deep.equal(['4 fat quarters']);
  });

  it('have no such list if only one part is cut from each', async () => {
    const sheet = await worksheet(
      `<quilt-fabric letter="A" sheet="fat-quarter"></quilt-fabric>${block('Gull', 2, 2)}`,
    );
    expect(all(sheet, '[part~=action]').map(text)).to.not.include(LIST);
  });
});

describe('what the reader has at hand', () => {
  const STAR = '<quilt-block name="Star" chart="A B; B A" block="11" count="20"></quilt-block>';
  const asking = (a: string, attributes = '', inside = STAR): Promise<Worksheet> =>
    worksheet(
      `<quilt-fabric letter="A" sheet="fat-quarter" ${a}></quilt-fabric><quilt-fabric letter="B"></quilt-fabric>${inside}`,
      attributes,
    );
  const entries = (sheet: Worksheet): HTMLInputElement[] => all<HTMLInputElement>(sheet, '[data-entry]');
  const write = async (sheet: Worksheet, at: HTMLInputElement, written: string): Promise<void> => {
    at.focus();
    at.value = written;
    at.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    at.dispatchEvent(new Event('change', { bubbles: true }));
    await calm(sheet);
  };

  it('is asked only where the page says so', async () => {
    expect(entries(await asking(''))).to.have.length(0);
    expect(entries(await asking('at-hand')).map(({ dataset }) => dataset['entry'])).to.deep.equal(['A']);
    const all = entries(await asking('', 'at-hand'));
    expect(all.map((one) => one.getAttribute('aria-label'))).to.deep.equal([
      'What you have of fabric A',
      'What you have of fabric B',
    ]);
  });

  it('counts as the page wrote it', async () => {
    const sheet = await asking('at-hand="3 fat quarters"');
    // Geometry: 40 squares of 6 in, 9 on a fat quarter, take 5.
    expect(list(sheet).items.map(({ text }) => text)).to.deep.equal(['2 fat quarters more']);
    expect(entries(sheet)[0]!.value).to.equal('3 fat quarters');
  });

  it('follows what she writes, which is in the fabric and nowhere else', async () => {
    const sheet = await asking('at-hand');
    const fabric = sheet.querySelector('quilt-fabric')!;
    const heard: string[] = [];
    for (const type of ['input', 'change'])
      sheet.addEventListener(type, ({ target }) => {
        if (target === fabric) heard.push(`${type} ${fabric.atHand ?? ''}`);
      });
    await write(sheet, entries(sheet)[0]!, '5 fat quarters');
    expect(heard).to.deep.equal(['input 5 fat quarters', 'change 5 fat quarters']);
    expect(list(sheet).items.map(({ text }) => text)).to.deep.equal(['You have enough']);
    expect(fabric.getAttribute('at-hand')).to.equal('');
    expect(entries(sheet)[0]!.value).to.equal('5 fat quarters');
    expect(sheet.shadowRoot!.activeElement).to.equal(entries(sheet)[0]);
    await write(sheet, entries(sheet)[0]!, 'lots');
    expect(list(sheet).items.map(({ text }) => text)).to.deep.equal(['5 fat quarters']);
    expect(list(sheet).notes.join()).to.include('“lots” counts as nothing');
  });

  it('says how many blocks it makes', async () => {
    const sheet = await asking('at-hand="2 fat quarters"');
    expect(list(sheet).makes).to.deep.equal([{ title: 'Star', blocks: 9, of: 20, runsOut: 'A' }]);
    const table = all(sheet, '[part~=list]').find((one) => text(one).includes('What your cloth makes'));
    expect([...table!.querySelectorAll('tbody td')].map(text)).to.deep.equal(['Star', '9 of 20', 'A']);
  });

  it('is written beside prices too, in a page of any width', async () => {
    const sheet = await asking('at-hand price="3"', 'currency="EUR"');
    const row = entries(sheet)[0]!.closest('tr')!;
    expect([...row.children].map(text).slice(3)).to.deep.equal(['5 fat quarters', '€3.00', '€15.00', '']);
    sheet.parentElement!.style.inlineSize = '700px';
    await write(sheet, entries(sheet)[0]!, '9 fat quarters');
    const { clientWidth, scrollWidth } = entries(sheet)[0]!;
    expect(scrollWidth, 'what is written is read whole').to.equal(clientWidth);
    sheet.parentElement!.style.inlineSize = '300px';
    await settled(sheet);
    expect(entries(sheet)[0]!.getBoundingClientRect().right).to.be.below(
      sheet.getBoundingClientRect().right + 1,
    );
  });
});
