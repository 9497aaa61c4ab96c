import { expect } from 'chai';
import type { QuiltBacking } from '../../src/elements/backing/backing.js';
import { goTo, LISTENING, openFrame, type Framed } from './frame.js';
import { pageOf } from './hostile-pages.js';
import { until } from '../until.js';
import { settle } from './reading.js';

const ORDER = pageOf(
  `<form action="/demo/index.html">
    <input name="cloth" value="long-horizon">
    <quilt-backing name="yards" width="58" length="70" max="6 yd" required></quilt-backing>
    <fieldset disabled><quilt-binding name="binding" width="58" length="70"></quilt-binding></fieldset>
    <button>Order</button>
  </form>`,
  { script: `${LISTENING}<script src="/dist/quilt-reckoner.classic.js" defer></script>` },
);
const order = (): Promise<Framed> =>
  openFrame({ src: `/hosts/page?${new URLSearchParams({ html: ORDER, policy: "default-src 'self'" })}` });

const backingOf = ({ page }: Framed): QuiltBacking => page.querySelector('quilt-backing')!;
const cell = (framed: Framed, id: string): HTMLInputElement =>
  backingOf(framed).shadowRoot!.querySelector<HTMLInputElement>(`[data-row=${id}]`)!;
/** Replaces the text of a cell, like typing. */
const write = async (framed: Framed, id: string, text: string): Promise<void> => {
  cell(framed, id).focus();
  cell(framed, id).select();
  framed.page.execCommand(text ? 'insertText' : 'delete', false, text);
  cell(framed, id).blur();
  await settle(framed.page, false);
};
const press = ({ page }: Framed, selector: string): void =>
  page.querySelector<HTMLElement>(selector)!.click();
const textOf = ({ page }: Framed, selector: string): string =>
  page.querySelector<HTMLElement>(selector)!.innerText.replace(/\s+/g, ' ').trim();

describe('a form that is sent', () => {
  it('carries the amount under its name, and nothing of what is disabled', async () => {
    const framed = await order();
    await settle(framed.page, false);
    await write(framed, 'width', '82');
    expect(framed.faults).to.deep.equal([]);
    const { window } = await goTo(framed, () => press(framed, 'form > button'));
    // geometry: 90 × 78 in is two panels of 90 in across, 180 in
    expect(window.location.search).to.equal('?cloth=long-horizon&yards=5');
  });

  for (const [what, id, text, words] of [
    ['a wrong width', 'width', 'abc', /^“abc” /],
    ['no width', 'width', '', /^Quilt width is missing/],
    ['a width beyond the stock', 'width', '110', /^In stock: 6 yd, and this takes /],
    ['a wrong shrinkage, folded away', 'shrinkage', '99', /^Shrinkage is between 0 and 50/],
  ] as const)
    it(`stays with ${what}: the browser goes to the cell, and the sentence is there`, async () => {
      const framed = await order();
      await settle(framed.page, false);
      const backing = backingOf(framed);
      if (id === 'shrinkage')
        backing.shadowRoot!.querySelector<HTMLElement>('[aria-expanded=false]')!.click();
      await settle(framed.page, false);
      await write(framed, id, text);
      let sends = 0;
      framed.page.querySelector('form')!.addEventListener('submit', () => (sends += 1));
      press(framed, 'form > button');
      await until(() => (backing.shadowRoot!.activeElement as HTMLElement | null)?.dataset['row'] === id);
      expect([sends, framed.window.location.pathname]).to.deep.equal([0, '/hosts/page']);
      expect(backing.validationMessage).to.match(words);
      expect(framed.faults).to.deep.equal([]);
    });
});

describe('the product page', () => {
  it('sells what is reckoned and no more than is on the bolt, and starts again on request', async () => {
    const framed = await openFrame({ src: '/demo/product.html' });
    await settle(framed.page, false);
    const add = framed.page.querySelector<HTMLButtonElement>('#backing .add')!;
    // 72 + 8 = 80 in of cloth 106 in wide = 2 2/9 yd: 2 1/4 yd × 19.80 = 44.55; 5 1/2 yd are on the bolt.
    expect(textOf(framed, '#backing .sum')).to.equal('2 1/4 yd: €44.55');
    await write(framed, 'width', 'wide');
    expect([add.disabled, textOf(framed, '#backing .sum').slice(0, 7)]).to.deep.equal([true, '“wide” ']);
    press(framed, '#backing [type=reset]');
    await until(() => !add.disabled && cell(framed, 'width').value === '72 in');
    expect([add.disabled, cell(framed, 'width').value]).to.deep.equal([false, '72 in']);
    for (const left of ['3 1/4 yd left on the bolt', '1 yd left on the bolt']) {
      add.click();
      await settle(framed.page, false);
      expect(textOf(framed, '#stock')).to.equal(left);
    }
    expect(add.disabled).to.equal(true);
    expect(textOf(framed, '#backing .sum')).to.match(/^In stock: 1 yd, and this takes 2 1\/4 yd\./);
    expect(textOf(framed, '#basket li')).to.include('Long Horizon, 2 1/4 yd');
    expect(framed.faults).to.deep.equal([]);
  });
});
