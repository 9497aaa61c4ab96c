import { expect } from 'chai';
import {
  all,
  cell,
  answer,
  answered,
  choose,
  find,
  how,
  listed,
  listen,
  messageAt,
  pasteInGrid,
  pressButton,
  row,
  show,
  text,
  unfold,
  valueIn,
  write,
  writeAndLeave,
  type Sheet,
} from '../../face/fixture.js';
import {
  calm,
  cellsOf,
  FABRICS,
  list,
  needs,
  part,
  PARTS,
  quilt,
  worksheet,
  type Worksheet,
} from './quilt.js';

const size = (sheet: Sheet): string[] => ['width', 'length'].map((id) => valueIn(sheet, id));
const notes = (sheet: Sheet): string => all(sheet, '.note').map(text).join('\n');

describe('sizes in a quilt-worksheet', () => {
  it('flow from the top to the borders, and from those to the rest', async () => {
    const sheet = await quilt();
    // geometry: 4 × 12 + 5 × 2 by 5 × 12 + 6 × 2; with borders of 2 and 5 in 14 more each way
    expect(size(part(sheet, 'borders'))).to.deep.equal(['58 in', '72 in']);
    for (const name of ['backing', 'binding', 'batting'] as const) {
      expect(size(part(sheet, name)), name).to.deep.equal(['72 in', '86 in']);
      expect(how(part(sheet, name), 'width')).to.equal('from the borders');
    }
    expect(how(part(sheet, 'borders'), 'width')).to.equal('from the quilt top');
    expect(how(part(sheet, 'backing'), 'fabricWidth')).to.equal('fabric E');
    await writeAndLeave(part(sheet, 'top'), 'across', '5');
    await calm(sheet);
    expect(size(part(sheet, 'binding'))).to.deep.equal(['86 in', '86 in']);
  });

  it('come from the worksheet where it holds no top', async () => {
    const sheet = await worksheet(PARTS.borders + PARTS.binding, 'width="150 cm" length="60"');
    expect(size(part(sheet, 'borders'))).to.deep.equal(['150 cm', '60 in']);
    expect(how(part(sheet, 'borders'), 'width')).to.equal('from the worksheet');
    // 60 + 14
    expect(valueIn(part(sheet, 'binding'), 'length')).to.equal('74 in');
    const bare = await worksheet(PARTS.binding, 'width="50" length="60"');
    expect(size(part(bare, 'binding'))).to.deep.equal(['50 in', '60 in']);
  });

  it('that a part has of its own win', async () => {
    const sheet = await quilt('', {
      binding: '<quilt-binding fabric="C" width="50" length="60"></quilt-binding>',
    });
    expect(size(part(sheet, 'binding'))).to.deep.equal(['50 in', '60 in']);
    expect(size(part(sheet, 'batting'))).to.deep.equal(['72 in', '86 in']);
  });

  it('may be typed over in one part, and put back', async () => {
    const sheet = await quilt();
    const backing = part(sheet, 'backing');
    const before = needs(sheet);
    await writeAndLeave(backing, 'width', '100');
    await calm(sheet);
    expect(how(backing, 'width')).to.match(/^your own put back 72 in$/);
    expect(needs(sheet)).to.not.deep.equal(before);
    expect(size(part(sheet, 'batting'))).to.deep.equal(['72 in', '86 in']);
    await pressButton(backing, 'put back', 'width');
    await calm(sheet);
    expect(size(backing)).to.deep.equal(['72 in', '86 in']);
    expect(how(backing, 'width')).to.equal('from the borders');
    expect(needs(sheet)).to.deep.equal(before);
  });

  it('follow what was measured on the top', async () => {
    const sheet = await quilt();
    await writeAndLeave(part(sheet, 'top'), 'finishedWidth', '57 1/2');
    await calm(sheet);
    expect(size(part(sheet, 'borders'))[0]).to.equal('57 1/2 in');
    expect(size(part(sheet, 'backing'))[0]).to.equal('71 1/2 in');
  });

  it('mean the same where a part has units of its own', async () => {
    const sheet = await worksheet(
      '<quilt-binding units="in"></quilt-binding>',
      'units="cm" width="150" length="180" fabric-width="100"',
    );
    expect(size(part(sheet, 'binding'))).to.deep.equal(['150 cm', '180 cm']);
    expect(valueIn(part(sheet, 'binding'), 'fabricWidth')).to.equal('100 cm');
  });

  it('are shown in other units in every part at once, where nothing has a price', async () => {
    const sheet = await worksheet(PARTS.borders + PARTS.binding, 'width="50" length="60"');
    const borders = part(sheet, 'borders');
    await pressButton(sheet, 'Show in centimetres');
    await calm(sheet);
    // 50 and 60 in, 2.54 cm each
    expect(size(borders)).to.deep.equal(['127 cm', '152.4 cm']);
    expect(answered(borders).buy.unit).to.equal('m');
    expect(all(borders, 'button').map(text).join()).to.not.include('Show in');
    await writeAndLeave(borders, 'width', '130');
    expect(valueIn(borders, 'width')).to.equal('130 cm');
    const priced = await worksheet(`<quilt-fabric letter="A" price="12"></quilt-fabric>${PARTS.borders}`);
    expect(all(priced, 'button').map(text).join()).to.not.include('Show in');
  });

  it('with units, seam, shrinkage and step are set once for all', async () => {
    const sheet = await quilt('units="cm" shrinkage="3" increment="25 cm" seam="1 cm"');
    for (const name of ['borders', 'backing', 'binding'] as const) {
      const { working } = answered(part(sheet, name));
      const shown = (id: string): string | undefined => working.find((row) => row.id === id)?.value;
      expect([shown('shrinkage'), shown('increment')], name).to.deep.equal(['3 %', '25 cm']);
      expect(shown('width')).to.match(/ (cm|in)$/);
    }
    expect(valueIn(part(sheet, 'borders'), 'seam')).to.equal('1 cm');
    // the seam of a backing is another one: 1.5 cm (from memory)
    expect(valueIn(part(sheet, 'backing'), 'seam')).to.equal('1.5 cm');
  });

  it('are noticed when a script sets a property', async () => {
    const sheet = await quilt();
    (part(sheet, 'top') as Sheet & { block: string }).block = '10';
    await calm(sheet);
    // 4 × 10 + 5 × 2 + 14
    expect(valueIn(part(sheet, 'backing'), 'width')).to.equal('64 in');
    part(sheet, 'fabric').setAttribute('name', 'Dry Sand');
    await calm(sheet);
    expect(listed(sheet, 'Shopping list')[0]![0]).to.equal('A · Dry Sand');
  });

  it('reach every result before the page hears of the change', async () => {
    const sheet = await quilt();
    const heard: (string | undefined)[] = [];
    sheet.parentElement!.addEventListener(
      'input',
      () => heard.push(list(sheet).fabrics.find(({ letter }) => letter === 'C')?.need),
      { once: true },
    );
    await write(part(sheet, 'top'), 'across', '5');
    await calm(sheet);
    expect(heard).to.deep.equal([needs(sheet)['C']]);
  });
});

describe('cloth in a quilt-worksheet', () => {
  it('is as wide as each fabric says, in a part that has several too', async () => {
    const narrow = [
      ...FABRICS.filter((one) => !one.includes('"C"')),
      '<quilt-fabric letter="C" fabric-width="36"></quilt-fabric>',
    ].join('');
    const sheet = await worksheet(narrow + PARTS.top + PARTS.binding + PARTS.backing, 'fabric-width="42"');
    expect(valueIn(part(sheet, 'binding'), 'fabricWidth')).to.equal('36 in');
    expect(how(part(sheet, 'binding'), 'fabricWidth')).to.equal('fabric C');
    // sashing of B on the worksheet's 42 in, cornerstones of C on 36 in
    expect(valueIn(part(sheet, 'top'), 'fabricWidth')).to.equal('42 in');
    expect(how(part(sheet, 'top'), 'fabricWidth')).to.equal('from the worksheet; fabric C: 36 in');
    const widths = (): string[] => list(sheet).fabrics.map(({ letter, width }) => `${letter} ${width}`);
    expect(widths()).to.have.members(['B 42', 'C 36', 'E 106']);
    await writeAndLeave(part(sheet, 'top'), 'fabricWidth', '44');
    await calm(sheet);
    // The binding is of C too, and stays as wide as that.
    expect(widths()).to.include('B 44').and.to.include('E 106');
    expect(valueIn(part(sheet, 'backing'), 'fabricWidth')).to.equal('106 in');
  });

  it('is not said to be one where a part has two letters', async () => {
    const top =
      '<quilt-top block="12" across="4" down="5" sashing="2" cornerstones frame fabric="A B"></quilt-top>';
    const sheet = await worksheet(FABRICS.join('') + top);
    const isOne = (): boolean =>
      answered(part(sheet, 'top')).working.some(({ label }) => label === 'Cloth, if all from one');
    expect(isOne()).to.equal(false);
    part(sheet, 'top').fabric = 'A';
    await calm(sheet);
    expect(isOne()).to.equal(true);
  });

  it('of a cut list is as wide as each of its fabrics', async () => {
    const cutting = (own = ''): string =>
      `<quilt-cutting ${own} list="A | square | 4 | 10\nN | square | 4 | 10"></quilt-cutting>`;
    const narrow = '<quilt-fabric letter="N" fabric-width="36"></quilt-fabric>';
    // 40 ÷ 4 = 10 in a strip of 4 in; 36 ÷ 4 = 9
    expect(needs(await worksheet(FABRICS[0]! + narrow + cutting()))).to.deep.equal({ A: '4', N: '8' });
    expect(needs(await worksheet(FABRICS[0]! + narrow + cutting('fabric-width="40"')))).to.deep.equal({
      A: '4',
      N: '4',
    });
  });
});

describe('the shopping list of a quilt-worksheet', () => {
  it('has each fabric once for all its parts, and what is bought by the piece', async () => {
    const sheet = await quilt();
    const rows = listed(sheet, 'Shopping list');
    expect(rows.map(([fabric, uses]) => [fabric, uses])).to.deep.equal([
      ['A · Wet Sand', 'cutting plan'],
      ['B · Gull Grey', 'sashing'],
      ['C · Slate Roof', 'cornerstones, border 1, binding'],
      ['D · Harbour', 'border 2'],
      ['E · Long Horizon', 'backing'],
      ['–', 'batting'],
      ['Total', ''],
    ]);
    for (const row of rows) expect(row).to.have.length(6);
    // 12 squares of 6 1/2: 2 × 3 in a fat quarter
    expect(rows[0]!.slice(2)).to.deep.equal(['', '2 fat quarters', '€3.60', '€7.20']);
    expect(rows[5]!.slice(2)).to.deep.equal(['', '1 large package, 90 × 108 in', '€38.50', '€38.50']);
    const { fabrics, total } = list(sheet);
    const parts = ['top', 'borders', 'binding'] as const;
    expect(parts.every((name) => answered(part(sheet, name)).fabric)).to.be.true;
    const costs = [...fabrics.map(({ cost }) => Number(cost!.amount)), 7.2, 38.5];
    expect(Number(total!.amount)).to.be.closeTo(
      costs.reduce((all, cost) => all + cost),
      0.005,
    );
    expect(answer(sheet)).to.match(new RegExp(`^In all €${total!.amount}`));
    expect(rows.at(-1)!.at(-1)).to.equal(`€${total!.amount}`);
  });

  it('writes money as the language of the page has it', async () => {
    const sheet = await quilt('lang="fr" currency="EUR"');
    const costs = listed(sheet, 'Shopping list').map((row) => row.at(-1)!);
    const written = new Intl.NumberFormat('fr', { style: 'currency', currency: 'EUR' });
    expect(costs[0]).to.equal(written.format(7.2).replace(/\s/, ' '));
    expect(costs.at(-1)).to.equal(written.format(Number(list(sheet).total!.amount)).replace(/\s/, ' '));
  });

  it('needs neither fabrics nor prices', async () => {
    const sheet = await worksheet(Object.values(PARTS).join(''));
    const rows = listed(sheet, 'Shopping list');
    // only the batting has a price, so there is more to pay than the sum
    expect(rows.map(([fabric]) => fabric)).to.deep.equal(['A', 'B', 'C', 'D', 'E', '–', 'Total so far']);
    expect(notes(sheet)).to.not.include('declared');
    const plain = await worksheet(
      '<quilt-backing width="58" length="70"></quilt-backing><quilt-binding width="58" length="70"></quilt-binding>',
    );
    expect(listed(plain, 'Shopping list').map((row) => row.slice(0, 2))).to.deep.equal([
      ['–', 'backing'],
      ['–', 'binding'],
    ]);
    expect(find(plain, 'table.key')).to.equal(null);
  });

  it('is so far, everywhere, while something has no price', async () => {
    const sheet = await quilt('currency="EUR" kits="2"', {
      backing: '<quilt-backing fabric="Z"></quilt-backing>',
      binding: '<quilt-binding fabric="C" price="99"></quilt-binding>',
    });
    const sentence = 'The total leaves out what has no price: Fabric Z.';
    expect(answer(sheet)).to.match(/^For 2 kits, so far €/);
    expect(notes(sheet)).to.include(sentence);
    const rows = listed(sheet, 'Shopping list for one kit');
    expect(rows.at(-1)![0]).to.equal('Total so far');
    expect(rows.filter((row) => row.includes('no price')).map(([fabric]) => fabric)).to.deep.equal(['Z']);
    for (const id of ['total', 'kitCost']) expect(text(row(sheet, id).cells[0])).to.match(/ so far$/);
    const cells = cellsOf(sheet);
    expect(cells.filter(([first]) => first === sentence || first === 'Total so far')).to.have.length(2);
    expect(cells.map(([first]) => first)).to.not.include('Total');
  });

  it('is so far while it lacks the cloth of the blocks', async () => {
    const sheet = await quilt('currency="EUR"', { cutting: '' });
    expect(answer(sheet)).to.match(/^So far €/);
    expect(notes(sheet)).to.include('This list has no cloth for the blocks yet.');
    expect(listed(sheet, 'Shopping list').at(-1)![0]).to.equal('Total so far');
  });

  it('gives a spreadsheet amounts that are not short, and apart from their units', async () => {
    const sheet = await worksheet(
      '<quilt-binding></quilt-binding><quilt-batting roll="90"></quilt-batting>',
      'width="4" length="16" increment="thirds"',
    );
    // 2 × (4 + 16) + 10 in are two strips of 2 1/2 in: 5 in, more than 1/8 yd. Of a roll 90 in wide 4 + 8 in, 1/3 yd.
    const rows = cellsOf(sheet).filter((row) => ['binding', 'batting'].includes(String(row[2])));
    expect(rows.map((row) => [row[4], row[5]])).to.deep.equal([
      [0.25, 'yd'],
      [0.3334, 'yd, 90 in wide'],
    ]);
  });

  it('has no total where nothing has a price', async () => {
    const sheet = await worksheet(PARTS.binding, 'width="50" length="60"');
    expect(cellsOf(sheet).flat()).to.not.include('Total');
  });

  it('takes a part’s own price where its fabric has none', async () => {
    const sheet = await worksheet(
      '<quilt-backing width="30" length="40" price="12"></quilt-backing>',
      'fabric-width="40"',
    );
    // 30 + 8 by 40 + 8 in: one panel of 48 in, 1 3/8 yd at 12
    expect(answer(sheet)).to.match(/^In all 16\.50/);
  });

  it('takes a part’s own price as of what the part is sold by', async () => {
    const sheet = await worksheet(
      '<quilt-backing increment="10 cm" price="12"></quilt-backing>',
      'width="60" length="72" currency="EUR"',
    );
    // 68 × 80 in: two panels of 80 in, 160 in, which are 4.1 m at 12; on the list 4 1/2 yd at 12 × 0.9144
    expect(answer(part(sheet, 'backing'))).to.include('€49.20');
    expect(list(sheet).fabrics[0]!.buy.text).to.equal('4 1/2 yd');
    expect(list(sheet).total!.amount).to.equal('49.38');
  });

  it('never takes the price of a fat quarter for that of a yard', async () => {
    const sheet = await worksheet(PARTS.cutting);
    const cutting = part(sheet, 'cutting');
    expect(list(sheet).total!.amount).to.equal('7.20');
    await choose(cutting, 'sheet', '');
    await calm(sheet);
    expect(list(sheet).fabrics).to.have.length(1);
    expect(list(sheet)).to.not.have.property('total');
    expect(answer(cutting)).to.include('You cut this from something else now, so we left the old price out.');
    await unfold(cutting);
    await writeAndLeave(cutting, 'price', '9');
    await calm(sheet);
    // 12 squares of 6 1/2 in, 6 across: 13 in, 3/8 yd at 9
    expect(list(sheet).total!.amount).to.equal('3.38');
  });

  it('has a size for what is sold as a sheet, and names as they were written', async () => {
    const sheet = await worksheet(
      '<quilt-cutting sheet="18 x 22" list="A | star · point | 3 | 4\nA | point/half | 2 | 4"></quilt-cutting>',
    );
    expect(listed(sheet, 'Shopping list')[0]![3]).to.equal('1 sheet, 18 × 22 in');
    expect(answer(part(sheet, 'cutting'))).to.include(
      'Cloth sold as 22 in wide is usually 20 in without its selvages.',
    );
    const cells = cellsOf(sheet).map((row) => row[3]);
    expect(cells).to.include('star · point').and.include('point/half');
  });

  it('shows how parts of one cloth are laid out together, where that takes less', async () => {
    // 8 strips of 2 1/2 × 40 and rails of 31 × 2 1/2 leave 9 in beside each rail, room for three squares of 2 1/2
    const rails = '<quilt-cutting list="C | rail | 31 x 2 1/2 | 6"></quilt-cutting>';
    const squares = '<quilt-cutting list="C | square | 2 1/2 | 18"></quilt-cutting>';
    const sheet = await worksheet(rails + squares);
    // 6 × 2 1/2 and ⌈18 ÷ 16⌉ × 2 1/2 in by themselves
    expect(list(sheet).fabrics[0]).to.include({ need: '15', saved: '5' });
    expect(all(sheet, 'svg[role=img]')).to.have.length(1);
    const together = listed(sheet, 'Parts cut together: strips, from the top of the cloth');
    // Two parts may give their pieces one name, so each has its size.
    expect(together.map((row) => row.at(-1))).to.deep.equal([
      '1 × rail, 2 1/2 × 31 in; 3 × square, 2 1/2 × 2 1/2 in',
    ]);
    expect(how(sheet, 'need-C')).to.include('= 20 in; planned together 15 in');
  });

  it('ends with a key to the fabrics: letter, name, amounts and a box for a swatch', async () => {
    const sheet = await quilt('', {
      cutting: '<quilt-cutting sheet="fat-quarter" list="D | square | 6 1/2 | 12"></quilt-cutting>',
    });
    sheet.querySelector('[letter=B]')!.setAttribute('swatch', 'data:image/gif;base64,R0lGODlhAQABAAAAACw=');
    await calm(sheet);
    const rows = [...find<HTMLTableElement>(sheet, 'table.key')!.tBodies[0]!.rows];
    expect(rows.map(({ cells }) => [...cells].slice(1).map((at) => text(at)))).to.deep.equal(
      ['B', 'C', 'D', 'E'].map((letter) => {
        const line = list(sheet).fabrics.find((one) => one.letter === letter)!;
        return [letter, line.name, `${line.text}${letter === 'D' ? ' and 2 fat quarters' : ''}`];
      }),
    );
    for (const { cells } of rows) expect(cells[0]!.className).to.equal('swatch');
    expect(rows[0]!.querySelector('img')!.getAttribute('alt')).to.equal('');
    expect(rows[1]!.cells[0]!.childElementCount).to.equal(0);
  });

  it('shows an empty box, loads nothing and says so if a swatch is neither a colour nor the address of a picture', async () => {
    const sheet = await quilt();
    const fabric = sheet.querySelector('[letter=B]')!;
    const box = (): HTMLElement => find<HTMLTableElement>(sheet, 'table.key')!.tBodies[0]!.rows[1]!.cells[0]!;
    fabric.setAttribute('swatch', 'Sky Blue Print');
    await calm(sheet);
    expect(box().childElementCount).to.equal(0);
    expect(notes(sheet)).to.include(
      'The swatch of fabric B, “Sky Blue Print”, is neither a colour nor the address of a picture. Write it like #d9c7a3',
    );
    // a colour that could load a picture is a colour alone
    fabric.setAttribute('swatch', 'var(--none, url(asked.png))');
    await calm(sheet);
    fabric.setAttribute('swatch', 'silver');
    await calm(sheet);
    expect(notes(sheet)).to.not.include('swatch');
    expect(box().childElementCount).to.equal(1);
    const asked = performance.getEntriesByType('resource').map(({ name }) => name);
    expect(asked.filter((name) => /Sky|asked/.test(name))).to.deep.equal([]);
  });

  it('colours the box in the fabric’s colour', async () => {
    const sheet = await quilt();
    const box = find(sheet, 'table.key td.swatch > *')!;
    expect(getComputedStyle(box).backgroundColor).to.equal('rgb(217, 199, 163)');
  });
});

describe('what is wrong in a quilt-worksheet', () => {
  it('in one part is named, and the rest is reckoned', async () => {
    const sheet = await quilt('', {
      binding: '<quilt-binding fabric="C" strip-width="wide"></quilt-binding>',
      cutting: '<quilt-cutting list="A | square | 3"></quilt-cutting>',
    });
    expect(notes(sheet)).to.include('Binding is not on the list yet: something in it is wrong.');
    expect(notes(sheet)).to.include('Cutting plan is not on the list yet');
    expect(Object.keys(needs(sheet))).to.deep.equal(['B', 'C', 'D', 'E']);
    // nobody can say yet what is cut from A
    expect(notes(sheet)).to.not.include('Fabric A');
    await writeAndLeave(part(sheet, 'binding'), 'stripWidth', '2 1/2');
    await calm(sheet);
    expect(notes(sheet)).to.not.include('Binding');
  });

  it('in the borders leaves no size to flow on, and no wrong amount', async () => {
    const sheet = await quilt();
    await writeAndLeave(part(sheet, 'borders'), 'borders', 'two');
    await calm(sheet);
    for (const name of ['borders', 'backing', 'binding', 'batting'] as const)
      expect(part(sheet, name).result.errors, name).to.not.equal(undefined);
    expect(Object.keys(needs(sheet))).to.deep.equal(['B', 'C']);
    await writeAndLeave(part(sheet, 'borders'), 'borders', '2');
    await calm(sheet);
    expect(size(part(sheet, 'backing'))).to.deep.equal(['72 in', '86 in']);
  });

  for (const [what, fabrics, sentence] of [
    [
      'two fabrics with one letter',
      '<quilt-fabric letter="C" name="First"></quilt-fabric><quilt-fabric letter=" C " name="Second"></quilt-fabric>',
      /Two fabrics have the letter C; the first is used/,
    ],
    [
      'a fabric without a letter',
      '<quilt-fabric name="Wet Sand"></quilt-fabric><quilt-fabric letter="C" name="First"></quilt-fabric>',
      /A fabric has no letter\. Write letter="A"\./,
    ],
    [
      'a letter that is not declared',
      '<quilt-fabric letter="A"></quilt-fabric>',
      /Binding uses fabric C, but the worksheet does not list it\. Add fabric C/,
    ],
    [
      'a fabric that nothing is cut from',
      '<quilt-fabric letter="C" name="First"></quilt-fabric><quilt-fabric letter="Z"></quilt-fabric>',
      /No part uses fabric Z/,
    ],
    [
      'a part that names no fabric',
      '<quilt-fabric letter="C" name="First"></quilt-fabric><quilt-backing width="58" length="70"></quilt-backing>',
      /Backing names no fabric/,
    ],
    [
      'a price that is no number',
      '<quilt-fabric letter="C" name="First" price="cheap"></quilt-fabric>',
      /The price of fabric C: “cheap” is not a number/,
    ],
  ] as const)
    it(`is said of ${what}, and the rest is reckoned`, async () => {
      const sheet = await worksheet(
        `${fabrics}<quilt-binding width="58" length="70" fabric="C"></quilt-binding>`,
      );
      expect(notes(sheet)).to.match(sentence);
      // 8 strips of 2 1/2 in: 266 in are 7 × 37 1/2 + 2 1/2 and more (tests/elements/binding)
      expect(needs(sheet)).to.include({ C: '20' });
      if (fabrics.includes('First'))
        expect(list(sheet).fabrics.find(({ letter }) => letter === 'C')!.name).to.equal('First');
    });

  it('with an unreadable width: says so if the width matters', async () => {
    const sheet = await worksheet(
      '<quilt-fabric letter="C" fabric-width="wide"></quilt-fabric><quilt-binding width="58" length="70" fabric="C"></quilt-binding>',
    );
    expect(messageAt(part(sheet, 'binding'), 'fabricWidth')).to.include('“wide” is not a length');
    expect(notes(sheet)).to.include('Binding is not on the list yet');
    expect(notes(sheet)).to.include('The width of fabric C: “wide” is not a length.');
  });

  it('in the worksheet’s own cells keeps the last good list, marked stale', async () => {
    const sheet = await quilt();
    const before = answer(sheet);
    await writeAndLeave(sheet, 'kits', 'some');
    expect(messageAt(sheet, 'kits')).to.include('“some” is not a number');
    expect(find(sheet, '.stale')).to.not.equal(null);
    expect(before).to.include(text(find(sheet, 'strong')));
  });
});

describe('kits in a quilt-worksheet', () => {
  it('have a row of their own where there are prices, and are among the settings where there are none', async () => {
    const isShown = (sheet: Worksheet): boolean => cell(sheet, 'kits').checkVisibility();
    expect(isShown(await quilt())).to.equal(true);
    const plain = await worksheet('<quilt-binding width="58" length="70"></quilt-binding>');
    expect(isShown(plain)).to.equal(false);
    expect(text(find(plain, '.refine'))).to.include('Kits');
  });

  it('are typed in, and give bolts for each fabric', async () => {
    const sheet = await quilt();
    expect(valueIn(sheet, 'bolt')).to.equal('15 yd');
    await writeAndLeave(sheet, 'kits', '24');
    for (const { buy, bolts } of list(sheet).fabrics) {
      const [whole = '0', part = '0'] = buy.amount.includes(' ')
        ? buy.amount.split(' ')
        : buy.amount.includes('/')
          ? ['0', buy.amount]
          : [buy.amount];
      const [top, under = 1] = part.split('/').map(Number);
      const yards = Number(whole) + top! / under;
      expect(bolts).to.equal(Math.ceil(24 / Math.floor(15 / yards + 1e-9)));
    }
    const rows = listed(sheet, 'Shopping list for one kit');
    expect(rows.map((row) => row.length)).to.deep.equal(rows.map(() => 7));
    expect(rows[1]!.at(-1)).to.match(new RegExp(`^${list(sheet).fabrics[0]!.bolts!} bolts?$`));
  });

  it('take so many times what is bought by the piece, in words', async () => {
    const inside = `${PARTS.batting}
      <quilt-cutting sheet="strip-2.5" list="A | square | 2 | 1"></quilt-cutting>
      <quilt-cutting sheet="square-10" list="A | square | 4 | 5"></quilt-cutting>
      <quilt-cutting sheet="fat-eighth" list="B | square | 4 | 1"></quilt-cutting>
      <quilt-cutting sheet="12 x 14" list="B | square | 4 | 1"></quilt-cutting>
      <quilt-backing fabric="C" fabric-width="106"></quilt-backing>`;
    const forKits = async (kits: number): Promise<string[]> => {
      const sheet = await worksheet(inside, `width="70" length="100" kits="${kits}" bolt="2 yd"`);
      const rows = listed(sheet, `Shopping list for one kit`);
      return rows.map((row) => row.at(-1)!).filter(Boolean);
    };
    // 2 × 2 squares of 4 in from one of 10 in; a back of 108 × 78 in takes 108 in, 3 yd, longer than the bolt
    expect(await forKits(3)).to.deep.equal([
      '3 strips, 40 × 2 1/2 in',
      '6 squares, 10 × 10 in',
      '3 fat eighths',
      '3 sheets, 12 × 14 in',
      '3 × 3 yd, 106 in wide',
      '3 large packages, 90 × 108 in',
    ]);
    expect((await forKits(1)).slice(0, 3)).to.deep.equal([
      '1 strip, 40 × 2 1/2 in',
      '2 squares, 10 × 10 in',
      '1 fat eighth',
    ]);
  });

  it('longer than a bolt are named, with the rest reckoned', async () => {
    const sheet = await quilt('kits="4" bolt="1 yd" currency="EUR"');
    expect(notes(sheet)).to.match(
      /Fabric E, 106 in wide: a kit’s .* is longer than a bolt of 1 yd\. Write a longer bolt, like .*yd\./,
    );
    expect(list(sheet).fabrics.find(({ letter }) => letter === 'B')!.need).to.not.equal('0');
    expect(list(sheet).kits).to.not.have.property('cost');
  });
});

describe('events in a quilt-worksheet', () => {
  it('come when every value is what it stays, in a form too', async () => {
    const named = (tag: string, more: string): string =>
      `<quilt-${tag} name="${tag}" ${more}></quilt-${tag}>`;
    const form = await show<HTMLFormElement>(
      `<form><quilt-worksheet name="all">${FABRICS.join('')}${PARTS.top}${PARTS.borders}${named('binding', 'fabric="C"')}${named('backing', 'fabric="E"')}${named('cutting', 'list="A | square | 6 | 12"')}</quilt-worksheet></form>`,
    );
    const sheet = form.querySelector<Worksheet>('quilt-worksheet')!;
    await calm(sheet);
    const now = (): string => {
      const parts = [...form.querySelectorAll<Sheet>('[name]')].filter((at) => 'value' in at);
      const values = parts.map(({ value }) => value);
      const sent = [...new FormData(form).values()].filter((value) => typeof value === 'string');
      // nothing is sent of a list whose plan is not ready
      expect(sent).to.deep.equal(values.filter(Boolean));
      return [...values, list(sheet).total!.amount].join();
    };
    let heard = now();
    for (const type of ['input', 'change']) form.addEventListener(type, () => (heard = now()));
    const many = Array.from({ length: 9 }, (_, at) => `A | s${at} | ${2 + at / 8} | 40`).join('\n');
    for (const [name, id, typed] of [
      ['top', 'across', '5'],
      ['borders', 'borders', '3'],
      ['binding', 'allowance', '30'],
      ['backing', 'overage', '6'],
      // planned in the background
      ['cutting', 'list', many],
    ] as const) {
      const before = now();
      if (id === 'list') await pasteInGrid(part(sheet, name), 1, 1, typed);
      else await write(part(sheet, name), id, typed);
      await calm(sheet);
      expect(now(), name).to.not.equal(before);
      expect(heard, name).to.equal(now());
    }
  });

  it('are input and change, once each for what is typed', async () => {
    const sheet = await quilt();
    const heard = listen(sheet, sheet.parentElement!);
    await writeAndLeave(part(sheet, 'binding'), 'allowance', '12');
    await calm(sheet);
    expect(heard.map((event) => event.split(' ')[0])).to.deep.equal(['input', 'change']);
  });

  it('of fabrics that come or change are no change of the reader’s', async () => {
    const heard: string[] = [];
    const note = (event: Event): void => void heard.push(event.type);
    document.addEventListener('change', note);
    const sheet = await worksheet(FABRICS.join('') + PARTS.binding, 'width="50" length="60"');
    part(sheet, 'fabric').setAttribute('name', 'Dry Sand');
    await calm(sheet);
    document.removeEventListener('change', note);
    expect(heard).to.deep.equal([]);
  });
});
