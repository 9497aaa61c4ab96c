import { expect } from 'chai';
import { all, cell, mount, row, settled, show, TAGS, text, unfold, type Sheet } from './fixture.js';

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
    const shown = inside(all, 'p, .how, [part~=value], td, caption, figcaption').map(
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

/** Where each line of some words stands. */
const linesOf = (at: Node): DOMRect[] => {
  const range = document.createRange();
  range.selectNodeContents(at);
  return [...range.getClientRects()];
};
const middle = ({ top, bottom }: DOMRect): number => (top + bottom) / 2;

describe('what a reader sees', () => {
  const onPhone = async (tag: string, attributes: Record<string, string | true> = {}): Promise<Sheet> => {
    const phone = await show(`<div style="inline-size: 288px; font: 17px serif"></div>`);
    const sheet = await mount(tag, attributes, phone);
    await unfold(sheet);
    return sheet;
  };

  /** Just wide enough for the drawing beside the rows. */
  const besideDrawing = async (tag: string, attributes: Record<string, string> = {}): Promise<Sheet> => {
    const column = await show(`<div style="inline-size: 620px; font: 17px serif"></div>`);
    const sheet = await mount(tag, attributes, column);
    await unfold(sheet);
    return sheet;
  };

  const wide = async (tag: string): Promise<Sheet> => {
    const sheet = await mount(tag);
    await unfold(sheet);
    return sheet;
  };

  it('what every sheet says is said once on a page, by the first that is there', async () => {
    const size = 'width="58" length="70"';
    const page = await show(
      `<div><quilt-binding ${size}></quilt-binding><quilt-backing ${size}></quilt-backing></div>`,
    );
    const sheets = [...page.querySelectorAll<Sheet>('quilt-binding, quilt-backing')];
    const saying = (words: string): string[] =>
      sheets
        .filter((sheet) => all(sheet, 'p').some((at) => at.checkVisibility() && text(at).includes(words)))
        .map(({ localName }) => localName);
    await settled(page);
    expect(saying('Amounts are for planning')).to.deep.equal(['quilt-binding']);
    expect(saying('Rotary cutter')).to.deep.equal([]);
    for (const sheet of [...sheets].reverse()) await unfold(sheet);
    expect(saying('Rotary cutter')).to.deep.equal(['quilt-backing']);
    sheets[0]!.remove();
    sheets[1]!.requestUpdate();
    await settled(page);
    expect(saying('Amounts are for planning')).to.deep.equal(['quilt-backing']);
  });

  it('a worksheet, which has nothing to cut itself, leaves the caution to its parts', async () => {
    const worksheet = await show(
      `<quilt-worksheet width="58" length="70"><quilt-binding></quilt-binding></quilt-worksheet>`,
    );
    const binding = worksheet.querySelector<Sheet>('quilt-binding')!;
    await unfold(binding);
    expect(
      all(binding, 'p').some((at) => at.checkVisibility() && text(at).includes('Rotary cutter')),
    ).to.equal(true);
  });

  it('a box to tick stands beside the first line of its label', async () => {
    for (const put of [wide, onPhone]) {
      const sheet = await put('quilt-backing');
      const label = row(sheet, 'oneWay').querySelector('label')!;
      const line = linesOf(label)[0]!;
      const box = cell(sheet, 'oneWay').getBoundingClientRect();
      expect(Math.abs(middle(line) - middle(box))).to.be.lessThan(4);
    }
  });

  it('no choice is cut off on a phone or beside a drawing, whichever it is', async () => {
    const pen = document.createElement('canvas').getContext('2d')!;
    const given: Record<string, Record<string, string>> = {
      'quilt-top': { block: '12', across: '4', down: '5' },
      'quilt-block': { block: '12', chart: 'A B; B A' },
      'quilt-cutting': { list: 'A | square | 4 | 10' },
    };
    for (const tag of ['quilt-binding', 'quilt-borders', 'quilt-batting', ...Object.keys(given)])
      for (const put of [onPhone, besideDrawing]) {
        const sheet = await put(tag, given[tag] ?? {});
        const selects = inside([sheet], 'select') as HTMLSelectElement[];
        expect(selects.length, tag).to.be.greaterThan(0);
        for (const select of selects)
          for (const { text } of select.options) {
            const { fontSize, fontFamily } = getComputedStyle(select);
            pen.font = `${fontSize} ${fontFamily}`;
            // a browser’s own arrow takes 20px, and its inset up to 4px
            expect(pen.measureText(text).width, text).to.be.at.most(select.clientWidth - 20);
          }
      }
  });

  it('choices and cells to type in begin and end at the same edges, on a phone too', async () => {
    for (const put of [wide, onPhone]) {
      const sheet = await put('quilt-borders');
      const edges = inside([sheet], 'select, [type=text]').map((at) => {
        const { left, right } = at.getBoundingClientRect();
        return `${Math.round(left)} to ${Math.round(right)}`;
      });
      expect(edges.length).to.be.greaterThan(5);
      expect([...new Set(edges)]).to.have.length(1);
    }
  });

  it('no size is parted in the largest type, where there are words that can be', async () => {
    const sheet = await onPhone('quilt-batting');
    const amount = inside([sheet], '[part=amount]')[0]!.textContent;
    expect(amount.split(' ').at(-1)).to.equal('72\u00a0×\u00a090\u00a0in');
  });

  it('the words of a measured length keep off the ticks at its ends, in a low drawing too', async () => {
    // 3 to 12 strips, from far too low for their words to more than high enough
    for (const strips of [3, 5, 7, 8, 12]) {
      const sheet = await mount('quilt-binding', { perimeter: `${strips * 37}`, 'strip-width': '2 1/4' });
      for (const line of inside([sheet], 'g:has(> .dimension)')) {
        const path = line.querySelector('path')!.getAttribute('d')!;
        const text = line.querySelector('text')!;
        // each end begins with a stroke away from what is measured, and the line itself lies on one level
        const [start, end] = [...path.matchAll(/M([-.\d]+) [-.\d]+V/g)].map(([, at]) => Number(at));
        const level = Number(/M[-.\d]+ ([-.\d]+)H/.exec(path)![1]);
        const moved = text.getAttribute('transform')!;
        const across = Number(/translate\([-.\d]+ ([-.\d]+)\)/.exec(moved)![1]);
        const { width, height } = text.getBBox();
        const told = `${strips} strips: ${text.textContent}`;
        if (across === level) expect(width, told).to.be.at.most(end! - start! - 6);
        else {
          const half = (moved.includes('rotate') ? width : height) / 2;
          expect(Math.abs(across - level) - half, told).to.be.at.least(2);
        }
      }
    }
  });

  it('words in a drawing are no smaller than 12px on a phone', async () => {
    for (const tag of TAGS) {
      const sheet = await onPhone(tag);
      const [svg] = inside([sheet], 'svg') as SVGSVGElement[];
      const size =
        parseFloat(getComputedStyle(svg!.querySelector('text')!).fontSize) * svg!.getScreenCTM()!.a;
      expect(size, tag).to.be.at.least(12);
    }
  });

  it('drawn cloth stands out from the page, on light ones and on dark ones', async () => {
    for (const [ink, paper] of [
      ['#222', '#fff'],
      ['#eee', '#111'],
    ] as const) {
      const page = await show(`<div style="color: ${ink}; background: ${paper}"></div>`);
      const sheet = await mount('quilt-borders', {}, page);
      const pen = document.createElement('canvas').getContext('2d', { willReadFrequently: true })!;
      const lightness = (): number => {
        const [red, green, blue] = [...pen.getImageData(0, 0, 1, 1).data].map((level) =>
          level / 255 <= 0.04 ? level / 255 / 12.92 : ((level / 255 + 0.055) / 1.055) ** 2.4,
        );
        return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue! + 0.05;
      };
      const paint = (colour: string): number => {
        pen.fillStyle = colour;
        pen.fillRect(0, 0, 1, 1);
        return lightness();
      };
      const bare = paint(paper);
      const cloth = paint(getComputedStyle(inside([sheet], '.cloth')[0]!).fill);
      paint(paper);
      const piece = paint(getComputedStyle(inside([sheet], '.piece')[0]!).fill);
      const apart = (a: number, b: number): number => Math.max(a, b) / Math.min(a, b);
      // "Contrast ratio", WCAG 2.2; that a wash this faint is seen is our own judgement.
      expect(apart(bare, cloth), `${ink} cloth`).to.be.at.least(1.15);
      expect(apart(cloth, piece), `${ink} piece`).to.be.at.least(1.15);
    }
  });
});
