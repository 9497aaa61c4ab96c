import { expect } from 'chai';
import { render, type TemplateResult } from 'lit';
import { all, buttonIn, find, pressButton, settled, text, until, type Sheet } from '../../face/fixture.js';
import { calm, part, worksheet, type Worksheet } from './quilt.js';

const QUILT = `<quilt-fabric letter="A" swatch="#3f6f86"></quilt-fabric><quilt-fabric letter="B" swatch="#d9c7a3"></quilt-fabric>
  <quilt-fabric letter="C" swatch="#48505c"></quilt-fabric>
  <quilt-block name="Harbour" chart="A B; B A"></quilt-block>
  <quilt-top block="12" across="2" down="3" sashing="2" fabric="C"></quilt-top>
  <quilt-borders borders="3" fabric="B"></quilt-borders><quilt-binding fabric="C"></quilt-binding>`;
const quilt = (): Promise<Worksheet> => worksheet(QUILT);
const drawing = (sheet: Sheet): SVGSVGElement | null => find<SVGSVGElement>(sheet, '.whole svg');
const open = async (sheet: Sheet): Promise<void> => {
  await pressButton(sheet, 'Show the whole quilt');
  await until(() => !!drawing(sheet));
};
const opened = async (): Promise<Worksheet> => {
  const sheet = await quilt();
  await open(sheet);
  return sheet;
};

/** The one file that is offered for download while this is done. */
const fileOf = async (act: () => Promise<void>): Promise<{ name: string; file: Blob }> => {
  const { createObjectURL } = URL;
  const { click } = HTMLAnchorElement.prototype;
  const files: Blob[] = [];
  let name = '';
  URL.createObjectURL = (file: Blob) => `blob:${files.push(file)}`;
  HTMLAnchorElement.prototype.click = function () {
    name = this.download;
  };
  try {
    await act();
    await until(() => !!name);
  } finally {
    URL.createObjectURL = createObjectURL;
    HTMLAnchorElement.prototype.click = click;
  }
  expect(files).to.have.length(1);
  return { name, file: files[0]! };
};

describe('the picture of the whole quilt', () => {
  it('is folded away at first, and not made; a press shows it in the cloth of its fabrics', async () => {
    const sheet = await quilt();
    expect(drawing(sheet)).to.equal(null);
    expect(buttonIn(sheet, 'Show the whole quilt').getAttribute('aria-expanded')).to.equal('false');
    await open(sheet);
    // 2 × 12 + 2 by 3 × 12 + 2 × 2, and 2 × 3 more with the border
    expect(drawing(sheet)!.getAttribute('aria-label')).to.equal(
      'The whole quilt, 32 × 46 in: 6 Harbour, 1 border, binding.',
    );
    const fills = [...drawing(sheet)!.querySelectorAll('path[fill]')].map((at) => at.getAttribute('fill'));
    expect([...new Set(fills)].sort()).to.deep.equal(['#3f6f86', '#48505c', '#d9c7a3']);
    expect(getComputedStyle(drawing(sheet)!.querySelector('path[fill]')!).strokeDasharray).to.equal('none');
    await pressButton(sheet, 'Hide the whole quilt');
    expect(drawing(sheet)).to.equal(null);
  });

  it('follows while it is open: a number, a chart that takes the same cloth, a swatch', async () => {
    const sheet = await opened();
    const label = (): string => drawing(sheet)!.getAttribute('aria-label')!;
    const paths = (): string =>
      [...drawing(sheet)!.querySelectorAll('path')].map((at) => at.getAttribute('d')).join();
    (part(sheet, 'top') as Sheet & { across: string }).across = '3';
    await calm(sheet);
    expect(label()).to.include('9 Harbour');
    const before = paths();
    sheet.querySelector('quilt-block')!.chart = 'B A; A B';
    await calm(sheet);
    expect(paths()).to.not.equal(before);
    sheet.querySelector('[letter=A]')!.setAttribute('swatch', '#ff0000');
    await calm(sheet);
    expect(drawing(sheet)!.querySelectorAll('path[fill="#ff0000"]')).to.not.have.length(0);
  });

  it('is on the requirement sheet, open or not', async () => {
    const sheet = await quilt();
    const { good, paper, readyForPaper } = sheet as unknown as {
      good: unknown;
      paper(good: unknown): TemplateResult;
      readyForPaper(): Promise<unknown>;
    };
    await readyForPaper();
    expect(drawing(sheet)).to.equal(null);
    const page = document.createElement('div');
    render(paper(good), page);
    expect([...page.querySelectorAll('svg')].map((at) => at.getAttribute('aria-label'))[0]).to.match(
      /^The whole quilt, 32 × 46 in/,
    );
  });

  it('has no button where there is nothing of a quilt', async () => {
    const sheet = await worksheet('<quilt-binding></quilt-binding>', 'width="40" length="50"');
    expect(all(sheet, 'button').map(text)).to.not.include('Show the whole quilt');
  });

  it('is saved as an SVG file that stands alone', async () => {
    const sheet = await opened();
    sheet.parentElement!.style.cssText = 'background: rgb(20, 30, 40); color: rgb(240, 240, 240)';
    const { name, file } = await fileOf(() => pressButton(sheet, 'Save the picture (SVG)'));
    expect([name, file.type]).to.deep.equal(['the whole quilt.svg', 'image/svg+xml']);
    const written = await file.text();
    const svg = new DOMParser().parseFromString(written, 'image/svg+xml').documentElement;
    expect(svg.localName).to.equal('svg');
    expect(svg.querySelector('title')!.textContent).to.match(/^The whole quilt/);
    expect(svg.querySelector('rect')!.getAttribute('fill')).to.equal('#141e28');
    expect(svg.querySelectorAll('path[fill="#3f6f86"]')).to.have.length(1);
    expect(svg.querySelector('text.measure, text')!.getAttribute('fill')).to.match(/^#[\da-f]{6}$/);
    expect(written).to.not.match(/class=|var\(|currentColor|<!--/);
  });

  it('is saved as a PNG file, 2,400 pixels on its longer side, in the colours of the swatches', async () => {
    const sheet = await opened();
    const { name, file } = await fileOf(() => pressButton(sheet, 'Save the picture (PNG)'));
    expect([name, file.type]).to.deep.equal(['the whole quilt.png', 'image/png']);
    const bitmap = await createImageBitmap(file);
    const { width, height } = bitmap;
    expect(Math.max(width, height)).to.equal(2400);
    const canvas = Object.assign(document.createElement('canvas'), { width, height });
    const on = canvas.getContext('2d')!;
    on.drawImage(bitmap, 0, 0);
    // A third into the last patch of A, where no letter is.
    const svg = drawing(sheet)!;
    const d = svg.querySelector('path[fill="#3f6f86"]')!.getAttribute('d')!;
    const corners = d.split('M').at(-1)!.replace('Z', '').split('L');
    const [[left, top], , [right, bottom]] = corners.map((at) => at.split(' ').map(Number)) as [
      number[],
      number[],
      number[],
    ];
    const scale = width / svg.viewBox.baseVal.width;
    const [x, y] = [left! + (right! - left!) / 3, top! + (bottom! - top!) / 3].map((at) => at * scale) as [
      number,
      number,
    ];
    expect([...on.getImageData(Math.round(x), Math.round(y), 1, 1).data]).to.deep.equal([
      0x3f, 0x6f, 0x86, 255,
    ]);
  });

  it('holds the picture of a swatch in both files', async () => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 4, height: 4 });
    const on = canvas.getContext('2d')!;
    on.fillStyle = '#00ff00';
    on.fillRect(0, 0, 4, 4);
    const swatch = canvas.toDataURL();
    const sheet = await opened();
    sheet.querySelector('[letter=B]')!.setAttribute('swatch', swatch);
    await calm(sheet);
    await settled(sheet);
    const { file } = await fileOf(() => pressButton(sheet, 'Save the picture (SVG)'));
    expect(await file.text()).to.include(swatch);
    const bitmap = await createImageBitmap(
      (await fileOf(() => pressButton(sheet, 'Save the picture (PNG)'))).file,
    );
    Object.assign(canvas, { width: bitmap.width, height: bitmap.height });
    on.drawImage(bitmap, 0, 0);
    const { data } = on.getImageData(0, 0, bitmap.width, bitmap.height);
    let green = 0;
    for (let at = 0; at < data.length; at += 4)
      if (data[at] === 0 && data[at + 1] === 255 && data[at + 2] === 0) green += 1;
    expect(green).to.be.greaterThan(10_000);
  });
});
