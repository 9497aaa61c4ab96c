import { expect } from 'chai';
import {
  answer,
  answered,
  camel,
  cell,
  cellIds,
  find,
  how,
  isOpen,
  leave,
  mount,
  press,
  enter,
  settled,
  text,
  show,
  TAGS,
  unfold,
  valueIn,
  words,
  write,
  writeAndLeave,
  type Attributes,
  type Sheet,
} from './fixture.js';

const property = (sheet: Sheet, attribute: string): unknown => (sheet as never)[camel(attribute)];

type Try = [attribute: string, value: string | true, beside?: Attributes];

const SHARED: Try[] = [
  ['width', '61 1/2'],
  ['length', '1.8 m'],
  ['units', 'cm'],
  ['increment', '1/4 yd'],
  ['increment', 'thirds'],
  ['shrinkage', '5 %'],
];
const CLOTH: Try[] = [
  ['fabric-width', '58'],
  ['price', '12.50'],
  ['currency', 'EUR', { price: '9' }],
];

/** Every input, with a value that changes the result. */
const INPUTS: Record<string, Try[]> = {
  'quilt-backing': [
    ...SHARED,
    ...CLOTH,
    ['overage', '3'],
    ['seam', '5/8'],
    ['repeat', '24'],
    ['one-way', true],
    ['pieced-strip', true],
  ],
  'quilt-binding': [
    ...SHARED,
    ...CLOTH,
    ['strip-width', '2 1/4'],
    ['finished', '1/2'],
    ['fold', 'single', { finished: '3/8' }],
    ['cut', 'bias'],
    ['join', 'straight'],
    ['seam', '1/2', { join: 'straight' }],
    ['allowance', '15'],
    ['perimeter', '300'],
  ],
  'quilt-borders': [
    ...SHARED,
    ...CLOTH,
    ['borders', '3'],
    ['corners', 'squares'],
    ['corners', 'mitred, squares'],
    ['grain', 'along'],
    ['target', '80 x 92'],
    ['seam', '3/8'],
  ],
  'quilt-batting': [
    ...SHARED.filter(([attribute]) => attribute !== 'increment'),
    ['increment', '1/4 yd', { roll: '90' }],
    ['price', '12.50', { roll: '90' }],
    ['currency', 'EUR', { roll: '90', price: '9' }],
    ['overage', '3'],
    ['packages', 'small 40 x 50 @ 12; large 90 x 100 @ 29.50'],
    ['roll', '96'],
    ['bed', 'queen'],
    ['drop', '15', { bed: 'queen' }],
    ['tuck', '10', { bed: 'queen' }],
  ],
};

for (const tag of TAGS)
  describe(`${tag}, its attributes`, () => {
    for (const [attribute, value, beside = {}] of INPUTS[tag]!)
      it(`${attribute}=${value} is the property ${camel(attribute)}, and changes the answer either way`, async () => {
        const plain = await mount(tag, beside);
        const written = await mount(tag, { ...beside, [attribute]: value });
        answered(written);
        expect(property(written, attribute)).to.equal(value);
        expect(written.result).not.to.deep.equal(plain.result);
        expect(words(written)).not.to.equal(words(plain));

        (plain as unknown as Record<string, unknown>)[camel(attribute)] = value;
        expect(plain.result).to.deep.equal(written.result);
        await settled(plain);
        expect(words(plain)).to.equal(words(written));

        const without = await mount(tag, { ...beside, [attribute]: undefined });
        written.removeAttribute(attribute);
        expect(written.result).to.deep.equal(without.result);
        await settled(written);
        // With an answer; without one the last good one stays.
        if (without.result.buy) expect(words(written)).to.equal(words(without));
      });

    it('takes a number for a length, in its units', async () => {
      const sheet = await mount(tag, { units: 'cm', length: '70in' });
      (sheet as never as { width: number }).width = 148.59;
      expect(answered(sheet).working.find(({ id }) => id === 'width')!.inches).to.equal('58 1/2'); // 148.59 ÷ 2.54
      await settled(sheet);
      expect(valueIn(sheet, 'width')).to.equal('148.59 cm');
    });

    it('knows the shared attributes that reckon nothing', async () => {
      const sheet = await mount(tag, { fabric: 'B', name: 'amount', lock: 'width', lang: 'fr' });
      expect([sheet.fabric, sheet.name, sheet.lock, sheet.lang]).to.deep.equal([
        'B',
        'amount',
        'width',
        'fr',
      ]);
      sheet.name = 'other';
      await settled(sheet);
      expect(sheet.getAttribute('name')).to.equal('other');
    });

    it('gives a result that is plain JSON', async () => {
      const { result } = await mount(tag, { price: '3', shrinkage: '3' });
      expect(JSON.parse(JSON.stringify(result))).to.deep.equal(result);
    });

    it('gives the same result object until an input changes', async () => {
      const sheet = await mount(tag);
      const { result } = sheet;
      expect(sheet.result).to.equal(result);
      sheet.width = '59';
      expect(sheet.result).not.to.equal(result);
    });

    it('locks what the author locks, shows it all the same, and reckons with it', async () => {
      const sheet = await mount(tag, { lock: 'width, increment' });
      await unfold(sheet);
      expect(['width', 'length', 'increment', 'shrinkage'].map((id) => isOpen(sheet, id))).to.deep.equal([
        false,
        true,
        false,
        true,
      ]);
      expect([valueIn(sheet, 'width'), valueIn(sheet, 'increment')]).to.deep.equal(['58 in', '1/8 yd']);
      await writeAndLeave(sheet, 'length', '80');
      expect(answered(sheet).buy).to.deep.equal(answered(await mount(tag, { length: '80' })).buy);
      sheet.lock = 'fabric-width length';
      await settled(sheet);
      expect(['width', 'length'].map((id) => isOpen(sheet, id))).to.deep.equal([true, false]);
      if (cellIds(sheet).includes('fabricWidth')) {
        expect(isOpen(sheet, 'fabricWidth')).to.equal(false);
        // Nobody is told to measure what she cannot write.
        expect(words(sheet)).to.contain('fixed on this page').and.not.to.contain('measure yours');
      }
    });

    it('shows and reads centimetres with units="cm"', async () => {
      const sheet = await mount(tag, { units: 'cm', width: '150', length: '180.5', borders: '5, 11.5' });
      const inches = await mount(tag, {
        width: '150 cm',
        length: '180.5 cm',
        borders: '5 cm, 11.5 cm',
        mark: '1 mm',
        // The defaults in centimetres, from memory.
        'fabric-width': '105 cm',
        overage: '10 cm',
        allowance: '25 cm',
        'strip-width': '6.5 cm',
        seam: tag === 'quilt-backing' ? '1.5 cm' : '0.75 cm',
      });
      expect(answered(sheet).fabric).to.equal(answered(inches).fabric);
      expect([valueIn(sheet, 'width'), valueIn(sheet, 'length')]).to.deep.equal(['150 cm', '180.5 cm']);
      expect(words(sheet)).not.to.match(/\d in\b/);
      await writeAndLeave(sheet, 'width', '60"');
      // 60 × 2.54
      expect(valueIn(sheet, 'width')).to.equal('152.4 cm');
    });
  });

describe('The language of the page', () => {
  const needs = (sheet: Sheet): string => valueIn(sheet, 'needWidth');
  const backing = (attributes = ''): string =>
    `<quilt-backing units="cm" width="132.5cm" length="160cm" overage="10cm" ${attributes}></quilt-backing>`;

  // 132.5 + 2 × 10, written as the language writes decimals.
  const cases: [what: string, html: string, need: string][] = [
    ['none', backing(), '152.5 cm'],
    ['its own', backing('lang="fr"'), '152,5 cm'],
    ['a region', backing('lang="fr-CA"'), '152,5 cm'],
    ['one with a point', `<div lang="fr"><p lang="en">${backing()}</p></div>`, '152.5 cm'],
    ['its parent’s', `<div lang="fr"><p>${backing()}</p></div>`, '152,5 cm'],
    ['the closest of several', `<div lang="en"><p lang="pl">${backing()}</p></div>`, '152,5 cm'],
    ['one that is no language', `<div lang="!?">${backing()}</div>`, '152.5 cm'],
    ['an unknown one', `<div lang="x-quilt">${backing()}</div>`, '152.5 cm'],
    ['a private use that says nothing', `<div lang="">${backing()}</div>`, '152.5 cm'],
  ];
  for (const [what, html, need] of cases)
    it(`${what}: ${need}`, async () => {
      const outer = await show(html);
      expect(
        needs((outer.localName === 'quilt-backing' ? outer : outer.querySelector('quilt-backing')) as Sheet),
      ).to.equal(need);
    });

  it('is not what English words are marked with: a screen reader speaks them as English', async () => {
    const sheet = await show<Sheet>(backing('lang="fr"'));
    expect(sheet.shadowRoot!.querySelector('section')!.lang).to.equal('en');
  });

  it('is found through shadow roots', async () => {
    const outer = await show('<div lang="fr"><p></p></div>');
    const inner = outer.querySelector('p')!.attachShadow({ mode: 'closed' });
    inner.innerHTML = '<section></section>';
    const innermost = inner.firstElementChild!.attachShadow({ mode: 'open' });
    const sheet = await mount(
      'quilt-backing',
      { units: 'cm', width: '132,5', length: '160', overage: '10,25' },
      innermost,
    );
    expect(needs(sheet)).to.equal('153 cm');
    await writeAndLeave(sheet, 'width', '140,25');
    expect([valueIn(sheet, 'width'), needs(sheet), how(sheet, 'needWidth')]).to.deep.equal([
      '140,25 cm',
      '160,75 cm',
      '140,25 + 2 × 10,25 = 160,75 cm',
    ]);
  });

  it('decides what a comma is: with a point, a sentence says so', async () => {
    const sheet = await show<Sheet>(backing('lang="en"'));
    await write(sheet, 'width', '132,5');
    expect(sheet.result.errors).to.have.length(1);
    await leave(sheet);
    expect(valueIn(sheet, 'width')).to.equal('132,5');
  });

  it('writes amounts, money and lists by it', async () => {
    const sheet = await mount('quilt-borders', {
      lang: 'fr',
      units: 'cm',
      width: '132,5',
      length: '160',
      borders: '5; 11,5',
      price: '12,50',
      currency: 'EUR',
    });
    const { buy, cost } = answered(sheet);
    expect(answer(sheet))
      .to.match(/Buy \d+(,\d+)? m/)
      .and.include(cost!.text.replace(/\s/g, ' '));
    expect(buy.amount).not.to.include(',');
    expect(cost!.text).to.match(/^\d+,\d\d\s€$/);
    expect([valueIn(sheet, 'borders'), valueIn(sheet, 'borders2')]).to.deep.equal(['5 cm', '11,5 cm']);
    expect(sheet.shadowRoot!.textContent).not.to.match(/\d\.\d/);
  });
});

describe('A box to tick', () => {
  for (const [attribute, id] of [
    ['one-way', 'oneWay'],
    ['pieced-strip', 'piecedStrip'],
  ] as const)
    it(`${attribute} is ticked and cleared by the reader, the author and the page's script alike`, async () => {
      const sheet = await mount('quilt-backing');
      await unfold(sheet);
      const plain = answered(sheet);
      const ticked = answered(await mount('quilt-backing', { [attribute]: true }));
      expect([cell(sheet, id).checked, property(sheet, attribute)]).to.deep.equal([false, false]);
      const heard: string[] = [];
      for (const type of ['input', 'change'])
        sheet.addEventListener(type, () =>
          heard.push(`${type} ${String(property(sheet, attribute))} ${answered(sheet).fabric}`),
        );

      cell(sheet, id).click();
      await settled(sheet);
      expect(sheet.result).to.deep.equal(ticked);
      cell(sheet, id).click();
      await settled(sheet);
      expect(sheet.result).to.deep.equal(plain);
      expect(heard).to.deep.equal([
        `input true ${ticked.fabric}`,
        `change true ${ticked.fabric}`,
        `input false ${plain.fabric}`,
        `change false ${plain.fabric}`,
      ]);

      sheet.toggleAttribute(attribute, true);
      await settled(sheet);
      expect([cell(sheet, id).checked, sheet.result]).to.deep.equal([true, ticked]);
      (sheet as unknown as Record<string, boolean>)[id] = false;
      await settled(sheet);
      expect([cell(sheet, id).checked, sheet.result]).to.deep.equal([false, plain]);
    });
});

describe('A choice', () => {
  it('is made by the reader, and heard by the page once it is reckoned', async () => {
    const sheet = await mount('quilt-binding');
    const bias = answered(await mount('quilt-binding', { cut: 'bias' }));
    const heard: string[] = [];
    for (const type of ['input', 'change'])
      sheet.addEventListener(type, () => heard.push(`${type} ${answered(sheet).fabric}`));
    await enter(sheet, 'cut');
    // on the bias
    await press(sheet, 'o');
    await leave(sheet);
    expect([cell(sheet, 'cut').value, property(sheet, 'cut')]).to.deep.equal(['bias', 'bias']);
    expect(sheet.result).to.deep.equal(bias);
    expect(heard).to.deep.equal([`input ${bias.fabric}`, `change ${bias.fabric}`]);
  });

  it('of each border’s corners keeps one for each', async () => {
    const sheet = await mount('quilt-borders', { corners: 'squares, mitred' });
    expect(answered(sheet)).to.deep.include(
      answered(await mount('quilt-borders', { corners: ' Squares ,MITRED ' })),
    );
    expect(find(sheet, '[data-row=corners]')).to.exist;
  });
});

describe('Refinements', () => {
  it('are folded away at first, named on the button, and come out when one of them is wrong', async () => {
    const sheet = await mount('quilt-backing');
    expect(cellIds(sheet)).not.to.include('repeat');
    const button = find(sheet, 'button[aria-expanded]')!;
    expect(text(button.closest('td'))).to.include('Pattern repeat');
    button.click();
    await settled(sheet);
    expect([cellIds(sheet).includes('repeat'), button.getAttribute('aria-expanded')]).to.deep.equal([
      true,
      'true',
    ]);
    button.click();
    await settled(sheet);
    expect(cellIds(sheet)).not.to.include('repeat');
    sheet.setAttribute('repeat', 'large');
    await settled(sheet);
    expect([cellIds(sheet).includes('repeat'), button.getAttribute('aria-expanded')]).to.deep.equal([
      true,
      'true',
    ]);
  });
});
