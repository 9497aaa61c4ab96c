import { expect } from 'chai';
import type { LitElement } from 'lit';
import { CALCULATORS, tagOf } from '../calculators.js';
import { inThisEngine } from '../engine.js';
import {
  all,
  answer,
  answered,
  camel,
  at,
  cell,
  cellIds,
  enter,
  EVERY,
  find,
  listen,
  mount,
  press,
  pressButton,
  settled,
  show,
  until,
  valueIn,
  words,
  write,
  writeAndLeave,
  type Sheet,
} from './fixture.js';

const mounted = (tag: string, parent?: ParentNode): Promise<Sheet> => mount(tag, EVERY[tag], parent);
const openCell = (sheet: Sheet): string =>
  // The first cells of a top are for a quilt of a wanted size.
  sheet.localName === 'quilt-top' ? 'block' : find(sheet, 'input[type=text], textarea')!.dataset['row']!;

/** A page in a frame of this page. */
const framed = async (): Promise<HTMLElement> => {
  const frame = await show<HTMLIFrameElement>(
    '<iframe style="inline-size: 700px; block-size: 400px"></iframe>',
  );
  // Firefox puts a document of its own there once the frame has loaded.
  if (frame.contentDocument!.readyState !== 'complete')
    await new Promise((loaded) => frame.addEventListener('load', loaded, { once: true }));
  await new Promise((done) => setTimeout(done));
  return frame.contentDocument!.body;
};
/** What only the sheet's own styles give. */
const looks = (sheet: Sheet): string[] =>
  ['section', 'table', '.amount'].map((selector) => {
    const { display, borderCollapse, borderInlineStartWidth } = getComputedStyle(find(sheet, selector)!);
    return [display, borderCollapse, borderInlineStartWidth].join();
  });

/** What is typed into the first cell of those whose cell takes no length: a text, how it is shown, and another text. */
const TYPED: Record<string, [typed: string, shown: string, other: string]> = {
  'quilt-cutting': ['B', 'B', 'C'],
  'quilt-block': ['C', 'C', 'B/C'],
};

for (const tag of inThisEngine(Object.keys(EVERY)))
  describe(`${tag}, however it comes into a page`, () => {
    for (const [how, make] of [
      ['document.createElement', () => document.createElement(tag) as Sheet],
      ['new', () => new (customElements.get(tag) as new () => Sheet)()],
    ] as const)
      it(`made by ${how}, it reckons before it is on any page, and shows the same once it is`, async () => {
        const expected = await mounted(tag);
        const sheet = make();
        expect([...sheet.attributes], 'a constructor leaves attributes alone').to.deep.equal([]);
        for (const [name, value] of Object.entries(EVERY[tag]!)) sheet.setAttribute(name, String(value));
        expect(answered(sheet)).to.deep.equal(answered(expected));
        expected.replaceWith(sheet);
        await settled(sheet);
        expect(words(sheet)).to.equal(words(expected));
      });

    it('has its shadow root from the start, and fills it when it is shown', async () => {
      const sheet = document.createElement(tag) as Sheet;
      const root = sheet.shadowRoot!;
      expect(root.mode).to.equal('open');
      expect(root.querySelector('section')).to.equal(null);
      (await mounted(tag)).replaceWith(sheet);
      await settled(sheet);
      expect(sheet.shadowRoot).to.equal(root);
      expect(root.querySelectorAll('section').length).to.equal(1);
      // Its style sheets came along.
      expect(getComputedStyle(sheet).display).to.equal('block');
    });

    it('says no, not nothing, where a box is not ticked', () => {
      const sheet = document.createElement(tag) as Sheet;
      const flags = Object.entries(sheet.calculator.fields).filter(([, { kind }]) => kind === 'flag');
      const own = sheet as unknown as Record<string, unknown>;
      expect(flags.map(([key]) => own[key])).to.deep.equal(flags.map(() => false));
    });

    it('uses properties that were set before it was defined, and they hide none of its own', async () => {
      const names = [...(customElements.get(tag) as typeof LitElement).elementProperties.keys()] as string[];
      const given = Object.fromEntries(
        Object.entries(EVERY[tag]!).map(([name, value]) => [camel(name), value as unknown]),
      );
      const values: Record<string, unknown> = {
        ...Object.fromEntries(names.map((name) => [name, undefined])),
        ...given,
        shrinkage: '3',
        lock: 'seam',
        fabric: 'B',
        name: 'amount',
        units: 'in',
      };
      // In a document without a window nothing is defined; it is upgraded when it comes to this one.
      const early = document.implementation.createHTMLDocument().createElement(tag) as Sheet;
      expect('result' in early).to.equal(false);
      Object.assign(early, values);
      const expected = await mounted(tag);
      const sheet = Object.assign(expected.cloneNode() as Sheet, values);
      expected.replaceWith(early, sheet);
      await settled(early);
      await settled(sheet);
      expect(answered(early)).to.deep.equal(answered(sheet));
      expect(words(early)).to.equal(words(sheet));
      for (const name of Object.keys(values)) {
        expect(Object.hasOwn(early, name), name).to.equal(false);
        expect((early as unknown as Record<string, unknown>)[name], name).to.equal(values[name]);
      }
      early.shrinkage = '5';
      expect(early.result).not.to.deep.equal(sheet.result);
    });

    it('takes attributes that were changed before it was defined, and those that change afterwards', async () => {
      const early = document.implementation.createHTMLDocument().createElement(tag) as Sheet;
      early.setAttribute('shrinkage', '9');
      for (const [name, value] of Object.entries(EVERY[tag]!)) early.setAttribute(name, String(value));
      early.setAttribute('shrinkage', '3');
      early.setAttribute('units', 'cm');
      early.removeAttribute('units');
      const expected = await mount(tag, { ...EVERY[tag], shrinkage: '3' });
      expected.after(early);
      await settled(early);
      expect(answered(early)).to.deep.equal(answered(expected));
      for (const sheet of [early, expected]) {
        sheet.setAttribute('units', 'cm');
        sheet.removeAttribute('shrinkage');
        await settled(sheet);
      }
      expect(words(early)).to.equal(words(expected));
    });

    it('shows the same, choices and all, whether it was given everything at once or bit by bit', async () => {
      const expected = await mounted(tag);
      const sheet = document.createElement(tag) as Sheet;
      expected.after(sheet);
      await settled(sheet);
      for (const [name, value] of Object.entries(EVERY[tag]!)) {
        sheet.setAttribute(name, String(value));
        await settled(sheet);
      }
      const cells = (at: Sheet): string[] => cellIds(at).map((id) => `${id}: ${valueIn(at, id)}`);
      expect(cells(sheet)).to.deep.equal(cells(expected));
      expect(
        all<HTMLSelectElement>(sheet, 'select').filter(({ selectedIndex }) => selectedIndex < 0),
      ).to.have.length(0);
    });

    it('keeps what was typed when it is moved, or taken away and put back', async () => {
      const page = await show('<form id="one"></form><form id="two"></form>').then((at) => at.parentElement!);
      const [one, two] = [...page.querySelectorAll('form')] as [HTMLFormElement, HTMLFormElement];
      const sheet = await mounted(tag, one);
      sheet.name = 'amount';
      const heard = listen(sheet);
      const id = openCell(sheet);
      const [typed, shown, other] = TYPED[tag] ?? ['63 1/4', '63 1/4 in', '64 1/4'];
      await write(sheet, id, typed);
      const inputs = heard.length;
      const { result } = sheet;
      two.append(sheet);
      await settled(sheet);
      expect(sheet.result).to.deep.equal(result);
      expect([[...new FormData(one)], [...new FormData(two)]]).to.deep.equal([[], [['amount', sheet.value]]]);
      expect(sheet.form?.id).to.equal('two');
      sheet.remove();
      expect(answered(sheet).buy).to.deep.equal(result.buy);
      await new Promise((done) => setTimeout(done));
      one.append(sheet);
      await settled(sheet);
      expect(!find(sheet, '.keys'), 'no cell is being typed in').to.equal(true);
      expect(valueIn(sheet, id)).to.equal(shown);
      expect(
        heard.filter((event) => event.startsWith('input')),
        'moving is no input',
      ).to.have.length(inputs);
      await writeAndLeave(sheet, id, other);
      expect(answered(sheet).buy).to.exist;
      expect(sheet.result).not.to.deep.equal(result);
    });

    it('a clone starts from the attributes as the author wrote them, and the two are independent', async () => {
      const sheet = await mounted(tag);
      const fresh = answered(sheet);
      const id = openCell(sheet);
      const [first, , second] = TYPED[tag] ?? ['63 1/4', '', '65'];
      await writeAndLeave(sheet, id, first);
      const typed = answered(sheet);
      const clone = sheet.cloneNode(true) as Sheet;
      sheet.after(clone);
      await settled(clone);
      expect(answered(clone)).to.deep.equal(fresh);
      await writeAndLeave(clone, id, second);
      expect(answered(sheet)).to.equal(typed);
      expect(answered(clone)).not.to.deep.equal(typed);
    });

    it('works in a frame, adopted fresh or in use, and back', async () => {
      const sheet = await mounted(tag);
      const id = openCell(sheet);
      const expected = looks(sheet);
      const body = await framed();
      body.append(sheet);
      const fresh = document.createElement(tag) as Sheet;
      for (const { name, value } of sheet.attributes) fresh.setAttribute(name, value);
      body.append(fresh);
      for (const at of [sheet, fresh]) {
        await settled(at);
        expect(at.ownerDocument === body.ownerDocument).to.equal(true);
        expect(looks(at)).to.deep.equal(expected);
        expect(answer(at)).to.match(/Buy|Finished/);
        // In a cut list any text is a letter, but not a width.
        const input = find<HTMLInputElement>(at, '.lines [data-at="0 2"]') ?? cell(at, id);
        input.focus();
        await settled(at);
        input.value = 'wrong';
        input.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
        await settled(at);
        expect(at.result.errors).to.have.length(1);
        input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true, cancelable: true }));
        await settled(at);
        expect(answered(at).buy).to.exist;
      }
      fresh.remove();
      document.querySelector('main')!.append(sheet);
      await settled(sheet);
      expect(looks(sheet)).to.deep.equal(expected);
      expect(answered(sheet).buy).to.exist;
    });
  });

it('A fabric takes properties that were set before it was defined, and its worksheet hears of them', async () => {
  const inert = document.implementation.createHTMLDocument();
  const early = Object.assign(inert.createElement('quilt-fabric'), {
    letter: 'A',
    name: 'Slate Roof',
    price: '10',
  });
  const sheet = await show<Sheet>(
    '<quilt-worksheet width="58" length="70"><quilt-backing fabric="A"></quilt-backing></quilt-worksheet>',
  );
  sheet.prepend(early);
  await until(() => !!answered<{ fabrics: { name: string }[] }>(sheet).fabrics[0]?.name);
  const [fabric] = answered<{ fabrics: { name: string; cost: { amount: string } }[] }>(sheet).fabrics;
  // 3 3/4 yd at 10 a yard
  expect([fabric!.name, fabric!.cost.amount]).to.deep.equal(['Slate Roof', '37.50']);
});

it('The language is found from inside a frame, through shadow roots of its own', async () => {
  const body = await framed();
  const outer = body.appendChild(body.ownerDocument.createElement('div'));
  outer.lang = 'fr';
  const root = outer.attachShadow({ mode: 'closed' });
  const sheet = await mount(
    'quilt-backing',
    { units: 'cm', width: '132,5', length: '160', overage: '10' },
    root,
  );
  expect(valueIn(sheet, 'needWidth')).to.equal('152,5 cm');
});

it('A changed language shows at once: on the element, around it, and around its shadow root', async () => {
  const outer = document.body.appendChild(document.createElement('div'));
  const inner = outer.attachShadow({ mode: 'closed' }).appendChild(document.createElement('section'));
  const sheet = await mount(
    'quilt-backing',
    { units: 'cm', width: '132.5', length: '160', overage: '10' },
    inner,
  );
  const shows = async (value: string): Promise<void> => {
    // One turn: the observer and the drawing come before it.
    await new Promise((done) => setTimeout(done));
    expect(valueIn(sheet, 'needWidth')).to.equal(value);
  };
  // 132.5 + 2 × 10
  await shows('152.5 cm');
  outer.lang = 'fr';
  await shows('152,5 cm');
  inner.lang = 'en';
  await shows('152.5 cm');
  sheet.lang = 'fr';
  await shows('152,5 cm');
  sheet.removeAttribute('lang');
  await shows('152.5 cm');
  inner.removeAttribute('lang');
  await shows('152,5 cm');
  // Taken away and back, it goes on.
  sheet.remove();
  outer.lang = 'en';
  inner.append(sheet);
  await shows('152.5 cm');
  outer.lang = 'fr';
  await shows('152,5 cm');
  outer.remove();
});

describe('A page that swaps its content', () => {
  const SHEETS = Object.keys(CALCULATORS)
    .map((name) => tagOf(name))
    .join('');
  const WHOLE = `<quilt-worksheet><quilt-fabric letter="A"></quilt-fabric>${SHEETS}</quilt-worksheet>`;
  const resultsOf = (root: ParentNode): string =>
    JSON.stringify(
      [...root.querySelectorAll<Sheet>(`${Object.keys(EVERY).join()}, quilt-worksheet`)].map(
        (at) => at.result,
      ),
    );

  it('has the same answers each time, and nothing is left over', async () => {
    const page = (await show(`<div>${SHEETS}${WHOLE}</div>`)).parentElement!;
    const first = resultsOf(page);
    for (let turn = 0; turn < 5; turn++) {
      // As the reader types: the cell she is in goes away under her.
      await enter(page.querySelector('quilt-backing')!, 'width');
      page.innerHTML = '<p>Another page</p>';
      page.innerHTML = `<div>${SHEETS}${WHOLE}</div>`;
      await settled(page);
    }
    await until(() => resultsOf(page) === first);
    expect(resultsOf(page)).to.equal(first);
    expect(page.querySelectorAll('quilt-backing')).to.have.length(2);
  });

  it('by parsed documents, as page-swapping scripts do, gets working elements', async () => {
    const page = (await show('<p></p>')).parentElement!;
    for (const width of ['58', '82']) {
      const fetched = new DOMParser().parseFromString(
        `<main><quilt-backing width="${width}" length="70"></quilt-backing></main>`,
        'text/html',
      );
      page.replaceChildren(...fetched.querySelector('main')!.childNodes);
      await settled(page);
      const sheet = page.querySelector('quilt-backing')!;
      expect(answered(sheet)).to.deep.equal(answered(await mount('quilt-backing', { width })));
      await write(sheet, 'width', '60');
      expect(answered(sheet).buy).to.exist;
    }
  });

  it('moves a part from one worksheet to another, and it follows the new one', async () => {
    const page = (
      await show(
        '<div><quilt-worksheet width="58" length="70"><quilt-backing></quilt-backing></quilt-worksheet><quilt-worksheet width="30" length="40"></quilt-worksheet></div>',
      )
    ).parentElement!;
    const [, second] = [...page.querySelectorAll('quilt-worksheet')];
    const part = page.querySelector('quilt-backing')!;
    expect(valueIn(part, 'width')).to.equal('58 in');
    second!.append(part);
    await until(() => valueIn(part, 'width') === '30 in');
    page.append(part);
    await until(() => valueIn(part, 'width') === '');
  });
});

describe('Two builds of the script on one page', () => {
  it('the first stays, the second is harmless, and both kinds of elements work', async () => {
    const first = Object.keys(EVERY).map((tag) => customElements.get(tag));
    const before = await mounted('quilt-backing');
    await new Promise((loaded, failed) => {
      const script = document.createElement('script');
      Object.assign(script, { src: '/dist/quilt-reckoner.classic.js', onload: loaded, onerror: failed });
      document.head.append(script);
    });
    expect(Object.keys(EVERY).every((tag, at) => customElements.get(tag) === first[at])).to.equal(true);
    const after = await mounted('quilt-backing');
    for (const sheet of [before, after]) {
      await writeAndLeave(sheet, 'width', '82');
      expect(answered(sheet)).to.deep.equal(answered(await mount('quilt-backing', { width: '82 in' })));
    }
  });
});

describe('Inside a closed <details>', () => {
  it('it is ready when that is opened', async () => {
    const details = await show<HTMLDetailsElement>(
      '<details><summary>More</summary><quilt-backing width="58" length="70"></quilt-backing></details>',
    );
    const sheet = details.querySelector('quilt-backing')!;
    sheet.width = '60';
    await settled(sheet);
    details.open = true;
    await settled(sheet);
    const calm = await mount('quilt-backing', { width: '60' }, details.parentElement!);
    expect(words(sheet)).to.equal(words(calm));
    const sizes = [sheet, calm].map((at) =>
      all(at, 'table, td, svg').map((part) => {
        const { width, height } = part.getBoundingClientRect();
        return [Math.round(width), Math.round(height)];
      }),
    );
    expect(sizes[0]).to.deep.equal(sizes[1]);
    expect(sizes[0]![0]![0]).to.be.greaterThan(200);
    await writeAndLeave(sheet, 'width', '58');
    expect(valueIn(sheet, 'needWidth')).to.equal('66 in');
  });
});

describe('Inside a <dialog>', () => {
  const opened = async (): Promise<{ dialog: HTMLDialogElement; sheet: Sheet }> => {
    const dialog = await show<HTMLDialogElement>(
      '<dialog><quilt-backing width="58" length="70"></quilt-backing></dialog>',
    );
    dialog.showModal();
    const sheet = dialog.querySelector('quilt-backing')!;
    await settled(sheet);
    return { dialog, sheet };
  };

  it('it has its width, though a dialog is as wide as what is in it', async () => {
    const { sheet } = await opened();
    expect(sheet.getBoundingClientRect().width).to.be.greaterThan(Math.min(500, innerWidth * 0.8));
  });

  it('Escape first puts back what was typed, and only then closes it', async () => {
    const { dialog, sheet } = await opened();
    await write(sheet, 'width', '99');
    await press(sheet, 'Escape');
    expect([valueIn(sheet, 'width'), at(sheet), dialog.open]).to.deep.equal(['58 in', 'width', true]);
    const closed = new Promise((done) => dialog.addEventListener('close', done, { once: true }));
    await press(sheet, 'Escape');
    await closed;
    expect(dialog.open).to.equal(false);
  });

  it('keeps text in a cell that the reader has not left when it closes, and shows it when it opens again', async () => {
    const { dialog, sheet } = await opened();
    await write(sheet, 'width', '99');
    dialog.close();
    await settled(sheet);
    dialog.showModal();
    expect(valueIn(sheet, 'width')).to.match(/^99( in)?$/);
    await pressButton(sheet, 'Change settings');
    expect(answered(sheet).buy).to.exist;
  });
});
