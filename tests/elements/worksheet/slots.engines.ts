import { expect } from 'chai';
import { show, valueIn, writeAndLeave, type Sheet } from '../../face/fixture.js';
import { calm, list, part, PARTS, type Worksheet } from './quilt.js';

let made = 0;

/** A page's own element around parts: other markup, and slots that pass on its content. */
const host = async (inner: string, inside: string, mode: ShadowRootMode = 'open'): Promise<HTMLElement> => {
  const tag = `page-quilt-${++made}`;
  customElements.define(
    tag,
    class extends HTMLElement {
      readonly root = this.attachShadow({ mode });
      constructor() {
        super();
        this.root.innerHTML = inner;
      }
    },
  );
  return show<HTMLElement & Sheet>(`<${tag}>${inside}</${tag}>`);
};
const worksheetIn = (element: Element): Worksheet =>
  (element as HTMLElement & { root: ShadowRoot }).root.querySelector<Worksheet>('quilt-worksheet')!;
const titles = (sheet: Worksheet): string[] =>
  list(sheet)
    .fabrics.flatMap(({ parts }) => parts.map(({ title }) => title))
    .sort();
const make = (html: string): Sheet => {
  const template = document.createElement('template');
  template.innerHTML = html;
  return template.content.firstElementChild as Sheet;
};
/** Waits for both, because the parts are outside the worksheet’s own markup. */
const rest = async (element: Element, sheet: Worksheet): Promise<void> => {
  await calm(element as Sheet);
  await calm(sheet);
};

const SLOT = '<quilt-worksheet><slot></slot></quilt-worksheet>';
const FABRIC = '<quilt-fabric letter="C" name="Slate Roof" price="14.25"></quilt-fabric>';

describe('parts that a slot passes on to a worksheet', () => {
  for (const mode of ['open', 'closed'] as const)
    it(`are parts of it, and come and go (${mode} root)`, async () => {
      const element = await host(SLOT, FABRIC + PARTS.top, mode);
      const sheet = worksheetIn(element);
      await rest(element, sheet);
      expect(titles(sheet).join()).to.include('Sashing');

      const binding = make(PARTS.binding);
      element.append(binding);
      await rest(element, sheet);
      // geometry: 4 × 12 + 5 × 2
      expect(valueIn(binding, 'width')).to.equal('58 in');
      expect(titles(sheet)).to.include('Binding');
      expect(list(sheet).fabrics.map(({ name }) => name)).to.include('Slate Roof');

      await writeAndLeave(part(element, 'top'), 'across', '5');
      await rest(element, sheet);
      expect(valueIn(binding, 'width')).to.equal('72 in');

      document.body.append(binding);
      await rest(element, sheet);
      expect(titles(sheet)).to.not.include('Binding');
      expect(valueIn(binding, 'width')).to.equal('');
      binding.remove();
    });

  it('are parts of it in other markup, added there later, and taken to another slot', async () => {
    const inner = `<quilt-worksheet><section><slot name="quilt"></slot></section></quilt-worksheet><slot></slot>`;
    const element = await host(inner, `<div slot="quilt">${PARTS.top}</div>`);
    const sheet = worksheetIn(element);
    await rest(element, sheet);
    const binding = make(PARTS.binding);
    element.firstElementChild!.append(binding);
    await rest(element, sheet);
    expect(titles(sheet)).to.include('Binding');
    expect(valueIn(binding, 'length')).to.equal('72 in');
    element.firstElementChild!.removeAttribute('slot');
    await rest(element, sheet);
    expect(list(sheet).fabrics).to.deep.equal([]);
    expect(valueIn(binding, 'length')).to.equal('');
  });

  it('are parts of it through two elements, and what a slot shows instead of none is too', async () => {
    const tag = `page-quilt-${++made}`;
    customElements.define(
      tag,
      class extends HTMLElement {
        constructor() {
          super();
          this.attachShadow({ mode: 'open' }).innerHTML =
            `<quilt-worksheet><slot>${PARTS.borders}</slot></quilt-worksheet>`;
        }
      },
    );
    const outer = await host(`<${tag}><slot>${PARTS.top}</slot></${tag}>`, '');
    const inner = (outer as HTMLElement & { root: ShadowRoot }).root.querySelector(tag)!;
    const sheet = inner.shadowRoot!.querySelector<Worksheet>('quilt-worksheet')!;
    await rest(outer, sheet);
    // The outer slot is what the inner one shows, and shows a top itself.
    expect(titles(sheet).join()).to.include('Sashing');
    expect(titles(sheet).join()).to.not.include('Border');
    outer.innerHTML = PARTS.binding.replace('<quilt-binding', '$& width="50" length="60"');
    await rest(outer, sheet);
    expect(titles(sheet)).to.deep.equal(['Binding']);
  });

  it('belong to the worksheet nearest to them, and to one only', async () => {
    const element = await host(
      `<quilt-worksheet id="outer" width="90" length="90">
        ${PARTS.backing}<quilt-worksheet width="50" length="60"><slot></slot></quilt-worksheet>
      </quilt-worksheet>`,
      PARTS.binding,
    );
    const outer = worksheetIn(element);
    const inner = outer.querySelector<Worksheet>('quilt-worksheet')!;
    await rest(element, outer);
    await rest(element, inner);
    expect([titles(outer), titles(inner)]).to.deep.equal([['Backing'], ['Binding']]);
    expect(valueIn(part(element, 'binding'), 'width')).to.equal('50 in');
  });
});
