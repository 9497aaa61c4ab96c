import { expect } from 'chai';
import { mount, show, type Sheet } from './fixture.js';

/** A sheet with an answer and one with something wrong and something locked: between them they show every part. */
const sheets = async (style = ''): Promise<Sheet[]> => {
  await show(`<style>${style}</style>`);
  return [await mount('quilt-backing'), await mount('quilt-borders', { width: 'x', lock: 'length' })];
};
const inside = (all: Sheet[], selector: string): Element[] =>
  all.flatMap(({ shadowRoot }) => [...shadowRoot!.querySelectorAll(selector)]);

/** Every computed value of everything in the sheets. */
const looks = (all: Sheet[]): string =>
  inside(all, '*')
    .map((at) => {
      const style = getComputedStyle(at);
      const names = [...style].filter((name) => !name.startsWith('--'));
      return names.map((name) => style.getPropertyValue(name)).join(';');
    })
    .join('\n');

describe('what a page can style', () => {
  it('every custom property changes how a sheet looks', async () => {
    const all = await sheets();
    const rules = all[0]!.shadowRoot!.adoptedStyleSheets.flatMap(({ cssRules }) => [...cssRules]);
    const properties = new Set(
      rules
        .map(({ cssText }) => cssText)
        .join()
        .match(/--quilt-[a-z]+/g),
    );
    expect([...properties]).to.have.length.greaterThan(4);
    const before = looks(all);
    for (const name of properties) {
      const value = {
        '--quilt-space': '33px',
        '--quilt-rule': '7px dotted red',
        '--quilt-edge': '7px dotted red',
      }[name];
      document.body.style.setProperty(name, value ?? 'rgb(1, 2, 3)');
      expect(looks(all) === before, name).to.be.false;
      document.body.style.removeProperty(name);
      expect(looks(all) === before, name).to.be.true;
    }
  });

  it('a style of the page for a part wins over the sheet’s own', async () => {
    const names = new Set(inside(await sheets(), '[part]').flatMap(({ part }) => [...part]));
    expect([...names]).to.have.length.greaterThan(11);
    for (const name of names) {
      const all = await sheets(
        `::part(${name}) { color: rgb(1, 2, 3); background: rgb(4, 5, 6); border: 3px dashed red; padding: 11px; }`,
      );
      const styled = inside(all, `[part~=${name}]:not([type=checkbox])`).map((at) => {
        const { color, backgroundColor, borderTopStyle, paddingTop } = getComputedStyle(at);
        return [color, backgroundColor, borderTopStyle, paddingTop].join(' ');
      });
      expect([...new Set(styled)], name).to.deep.equal(['rgb(1, 2, 3) rgb(4, 5, 6) dashed 11px']);
    }
  });

  it('no line breaks inside a mixed number or before its unit', async () => {
    await mount('quilt-backing', {
      width: '88 1/2',
      'fabric-width': '41 1/2',
      shrinkage: '3 %',
      max: '1 1/8 yd',
    });
    const all = [...document.querySelectorAll<Sheet>('quilt-backing')];
    const shown = inside(all, 'p, .how, output, td, caption, figcaption').map(
      ({ textContent }) => textContent,
    );
    expect(shown.join('\n')).to.match(/\d\u00a0\d+\/\d+\u00a0yd/);
    expect(shown.filter((text) => /\d (\d|in|cm|yd|m|%)| ×/.test(text))).to.deep.equal([]);
  });

  it('font, colour and direction come from the page', async () => {
    const all = await sheets('main { font: italic 21px monospace; color: rgb(1, 2, 3); direction: rtl; }');
    for (const selector of ['[part=cell][type=text]', '[part=value]', '[part=label]']) {
      const [at] = inside(all, selector);
      const { fontFamily, fontStyle, fontSize, color, direction } = getComputedStyle(at!);
      expect([fontFamily, fontStyle, fontSize, color, direction], selector).to.deep.equal([
        'monospace',
        'italic',
        '21px',
        'rgb(1, 2, 3)',
        'rtl',
      ]);
    }
  });
});
