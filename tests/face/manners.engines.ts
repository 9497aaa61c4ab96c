import { expect } from 'chai';
import {
  answer,
  answered,
  camel,
  at,
  cell,
  GIVEN,
  isOpen,
  listen,
  mount,
  settled,
  show,
  TAGS,
  text,
  words,
  write,
  type Sheet,
} from './fixture.js';

const put = (sheet: Sheet, values: Record<string, unknown>): void => void Object.assign(sheet, values);

for (const tag of TAGS)
  describe(`${tag}, as the browser’s own elements behave`, () => {
    it('fires nothing for what the page itself sets, and input for what the reader writes', async () => {
      const sheet = await mount(tag, { name: 'amount' });
      const heard = listen(sheet, document);
      put(sheet, { width: '60', length: 71, units: 'cm', shrinkage: '3', measured: { washedWidth: '100' } });
      await settled(sheet);
      sheet.setAttribute('width', '50');
      sheet.removeAttribute('length');
      sheet.lock = 'width';
      await settled(sheet);
      expect(heard).to.deep.equal([]);
      put(sheet, { units: 'in', length: '70', lock: '' });
      await settled(sheet);
      await write(sheet, 'width', '61');
      expect(heard).to.have.length(1);
    });

    it('is a block, hides with `hidden`, and lets the author say otherwise', async () => {
      const sheet = await mount(tag);
      const display = (): string => getComputedStyle(sheet).display;
      expect(display()).to.equal('block');
      sheet.hidden = true;
      expect([display(), sheet.getBoundingClientRect().height]).to.deep.equal(['none', 0]);
      sheet.hidden = false;
      sheet.parentElement!.insertAdjacentHTML('beforeend', `<style>${tag} { display: inline-block }</style>`);
      expect(display()).to.equal('inline-block');
      expect(sheet.getBoundingClientRect().width, 'as wide as a reader needs').to.be.greaterThan(300);
    });

    it('changes nothing of the author’s: neither global attributes nor its content', async () => {
      const inside = '<p class="printed">Buy <b>4 yd</b></p><!-- as the pattern has it -->';
      const plain = await show<Sheet>(`<${tag}></${tag}>`);
      expect(plain.getAttributeNames()).to.deep.equal([]);
      const theirs = {
        id: 'calculator',
        class: 'wide',
        style: 'color: rgb(1, 2, 3)',
        role: 'group',
        tabindex: '3',
        title: 'Ours',
        'aria-label': 'The back',
        lang: 'fr',
        dir: 'rtl',
        'data-more': '{"a":1}',
        width: '58',
      };
      const written = Object.entries(theirs)
        .map(([name, value]) => `${name}='${value}'`)
        .join(' ');
      const sheet = await show<Sheet>(`<${tag} ${written}>${inside}</${tag}>`);
      sheet.width = '60';
      await settled(sheet);
      expect(Object.fromEntries([...sheet.attributes].map(({ name, value }) => [name, value]))).to.deep.equal(
        theirs,
      );
      expect(sheet.innerHTML).to.equal(inside);
      expect([sheet.tabIndex, sheet.role ?? sheet.getAttribute('role')]).to.deep.equal([3, 'group']);
    });

    it('writes its settings as attributes, but not what the reader types, so that a reset can go back', async () => {
      const sheet = await mount(tag);
      put(sheet, {
        units: 'cm',
        lock: 'seam',
        fabric: 'B',
        name: 'amount',
        width: '60',
        measured: { x: '1' },
      });
      await settled(sheet);
      expect(
        ['units', 'lock', 'fabric', 'name', 'width', 'measured'].map((name) => sheet.getAttribute(name)),
      ).to.deep.equal(['cm', 'seam', 'B', 'amount', '58', null]);
      put(sheet, { units: undefined, lock: undefined, fabric: undefined, name: undefined });
      await settled(sheet);
      expect(sheet.getAttributeNames()).to.have.members(Object.keys(GIVEN[tag]!));
    });

    it('has the same answer for any order of attributes and properties', async () => {
      const values: [string, string][] = [
        ...(Object.entries(GIVEN[tag]!) as [string, string][]),
        ['shrinkage', '3'],
        ['units', 'cm'],
        ['fabric-width', '44 in'],
        ['lang', 'fr'],
        ['price', '12,50'],
        ['currency', 'EUR'],
        ['increment', '25 cm'],
        ['lock', 'width'],
      ];
      const outcomes: string[] = [];
      for (let turn = 0; turn < values.length; turn++) {
        const turned = [...values.slice(turn), ...values.slice(0, turn)];
        for (const order of [turned, turned.toReversed()]) {
          const written = (sheet: Sheet): void => {
            for (const [name, value] of order) sheet.setAttribute(name, value);
          };
          const set = (sheet: Sheet): void => {
            for (const [name, value] of order) put(sheet, { [camel(name)]: value });
          };
          for (const give of [written, set]) {
            const sheet = await mount(tag, { width: undefined, length: undefined, borders: undefined });
            give(sheet);
            await settled(sheet);
            outcomes.push(JSON.stringify(answered(sheet)) + words(sheet));
            sheet.remove();
          }
        }
      }
      expect(new Set(outcomes).size).to.equal(1);
    });

    it('treats an empty attribute as none or says what is missing, and forgets a removed one', async () => {
      const optional = ['units', 'lock', 'fabric', 'price', 'currency', 'lang', 'name', 'shown'];
      for (const name of [...optional, 'increment', 'shrinkage', 'fabric-width', 'seam', 'width', 'foo']) {
        const plain = await mount(tag);
        const { result } = plain;
        const shown = words(plain);
        plain.setAttribute(name, '');
        const errors = plain.result.errors ?? [];
        if (optional.includes(name) || !errors.length) expect(plain.result, name).to.deep.equal(result);
        else {
          expect(errors, name).to.have.length(1);
          expect([errors[0]!.input, errors[0]!.message]).to.deep.equal([
            camel(name),
            errors[0]!.message.match(/^.* is missing\. Write it like .*\.$/)?.[0],
          ]);
        }
        await settled(plain);
        plain.setAttribute(name, name === 'lang' ? 'fr' : '1/4');
        await settled(plain);
        if (name in GIVEN[tag]!) plain.setAttribute(name, String(GIVEN[tag]![name]));
        else plain.removeAttribute(name);
        await settled(plain);
        expect(plain.result, name).to.deep.equal(result);
        expect(words(plain), name).to.equal(shown);
        plain.remove();
      }
    });

    it('takes the focus into its first cell, from the page and from its label', async () => {
      const sheet = await mount(tag, { lock: 'width bed' });
      const first = (): string =>
        sheet.shadowRoot!.querySelector<HTMLElement>('input, select')!.dataset['row']!;
      sheet.focus();
      expect([document.activeElement === sheet, at(sheet)]).to.deep.equal([true, first()]);
      const { outlineStyle, outlineWidth } = getComputedStyle(cell(sheet, first()));
      expect([outlineStyle, parseFloat(outlineWidth) >= 2]).to.deep.equal(['solid', true]);
      sheet.blur();
      (sheet.shadowRoot!.activeElement as HTMLElement | null)?.blur();
      sheet.id = 'one';
      const label = document.createElement('label');
      label.htmlFor = 'one';
      label.textContent = 'The cloth';
      sheet.before(label);
      label.click();
      expect([document.activeElement === sheet, at(sheet)]).to.deep.equal([true, first()]);
    });

    it('does not take it when a word is pressed, so that text can be marked', async () => {
      const sheet = await mount(tag);
      sheet.shadowRoot!.querySelector<HTMLElement>('.how')!.click();
      sheet.click();
      expect(document.activeElement === document.body).to.equal(true);
    });
  });

describe('The host of a sheet', () => {
  it('lets the page style it, and through parts and properties what is inside', async () => {
    const page = (
      await show(
        `<style>
          quilt-backing { padding: 7px; --quilt-accent: rgb(1, 2, 3); font-family: monospace; color: rgb(4, 5, 6) }
          quilt-backing::part(answer) { letter-spacing: 3px }
        </style><quilt-backing width="58" length="70"></quilt-backing>`,
      )
    ).parentElement!;
    const sheet = page.querySelector('quilt-backing')!;
    const style = (selector: string): CSSStyleDeclaration =>
      getComputedStyle(sheet.shadowRoot!.querySelector(selector)!);
    expect(getComputedStyle(sheet).padding).to.equal('7px');
    expect(style('.answer').letterSpacing).to.equal('3px');
    expect(style('.buy').borderBlockEndColor).to.equal('rgb(1, 2, 3)');
    expect([style('strong').fontFamily, style('strong').color]).to.deep.equal(['monospace', 'rgb(4, 5, 6)']);
    expect(style('input').color).to.equal('rgb(4, 5, 6)');
    expect(text(cell(sheet, 'needWidth'))).to.equal('66 in');
  });
});

describe('A name in lock that is not an input', () => {
  it('is said, with names that are', async () => {
    const sheet = await mount('quilt-backing', { lock: 'Width fabric' });
    expect(answer(sheet)).to.include('“fabric” in lock is not the name of an input here. Write it like');
    expect([isOpen(sheet, 'width'), isOpen(sheet, 'fabricWidth')]).to.deep.equal([false, true]);
    sheet.lock = 'width fabric-width units';
    await settled(sheet);
    expect(answer(sheet)).not.to.include('in lock');
  });
});
