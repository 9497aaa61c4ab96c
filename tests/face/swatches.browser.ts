import { expect } from 'chai';
import { all, find, settled, show, text, type Sheet } from './fixture.js';

const GREEN = 'data:image/svg+xml,%3Csvg xmlns="http://www.w3.org/2000/svg"/%3E'.replaceAll('"', "'");
const FABRICS = `<quilt-fabric letter="A" swatch="#d9c7a3"></quilt-fabric><quilt-fabric letter="B" swatch="midnightblue"></quilt-fabric>
  <quilt-fabric letter="C" swatch="${GREEN}"></quilt-fabric><quilt-fabric letter="D"></quilt-fabric>
  <quilt-fabric letter="E" swatch="var(--none, url(asked.png))"></quilt-fabric>`;
const part = async (html: string): Promise<Sheet> => {
  const around = await show(`<quilt-worksheet width="60" length="70">${FABRICS}${html}</quilt-worksheet>`);
  await settled(around.parentElement!);
  return [...around.children].find((inner) => 'outcome' in inner) as Sheet;
};

interface Piece {
  fill: string | null;
  seen: string;
}
const pieces = (sheet: Sheet): Piece[] =>
  [...find(sheet, 'svg[role=img]')!.querySelectorAll('path:is(.cloth, .piece, .other)')].map((at) => ({
    fill: at.getAttribute('fill'),
    seen: getComputedStyle(at).fill,
  }));
const fills = (sheet: Sheet): string[] => [...new Set(pieces(sheet).map(({ fill }) => fill ?? ''))];
const letters = (sheet: Sheet): SVGTextElement[] =>
  all<SVGTextElement>(sheet, 'svg[role=img] text:not(.measure)');

describe('a picture in the cloth itself', () => {
  it('is filled with the colour of the fabric’s swatch, with its letter in words that can be read on it', async () => {
    const sheet = await part('<quilt-block block="12" chart="A B; D A"></quilt-block>');
    // silver on a canvas is #c0c0c0; midnightblue is #191970 by the list of CSS Color 4
    expect(pieces(sheet).map(({ fill }) => fill)).to.deep.equal(['#d9c7a3', '#191970', null, '#d9c7a3']);
    expect(pieces(sheet)[0]!.seen).to.equal('rgb(217, 199, 163)');
    const wash = pieces(sheet)[2]!.seen;
    expect(wash).to.not.equal('none');
    const said = letters(sheet).slice(0, 4);
    expect(said.map(text)).to.deep.equal(['A', 'B', 'D', 'A']);
    expect(said.map((at) => getComputedStyle(at).fill)).to.deep.equal([
      'rgb(0, 0, 0)',
      'rgb(255, 255, 255)',
      getComputedStyle(sheet).color,
      'rgb(0, 0, 0)',
    ]);
  });

  it('is filled with the picture of a swatch, in a pattern of the same picture', async () => {
    const sheet = await part('<quilt-binding fabric="C"></quilt-binding>');
    const [fill] = fills(sheet) as [string];
    expect(fill).to.match(/^url\(#swatch-\d+\)$/);
    const pattern = find(sheet, `svg pattern[id="${fill.slice(5, -1)}"]`);
    expect(pattern?.querySelector('image')?.getAttribute('href')).to.equal(GREEN);
  });

  it('stays a wash where the swatch is no colour by itself, and loads nothing', async () => {
    const sheet = await part('<quilt-binding fabric="E"></quilt-binding>');
    expect(fills(sheet)).to.deep.equal(['']);
    const asked = performance.getEntriesByType('resource').map(({ name }) => name);
    expect(asked.filter((name) => name.includes('asked'))).to.deep.equal([]);
  });

  it('follows the swatch, with the same result', async () => {
    const sheet = await part('<quilt-backing fabric="A"></quilt-backing>');
    const before = JSON.stringify(sheet.result);
    sheet.parentElement!.querySelector('[letter=A]')!.setAttribute('swatch', 'red');
    await settled(sheet.parentElement!.parentElement!);
    expect(fills(sheet)).to.deep.equal(['#ff0000']);
    expect(JSON.stringify(sheet.result)).to.equal(before);
  });

  for (const [html, wanted] of Object.entries({
    '<quilt-top block="12" across="3" down="3" sashing="2" cornerstones fabric="A B"></quilt-top>': [
      '#d9c7a3',
      '',
      '#191970',
    ],
    '<quilt-top block="12" across="3" down="3" sashing="2" cornerstones set="on-point" fabric="A B D"></quilt-top>':
      ['', '#d9c7a3', '#191970'],
    '<quilt-top block="12" across="3" down="3" set="on-point" fabric="B"></quilt-top>': ['#191970', ''],
    '<quilt-borders borders="2, 3" fabric="A B"></quilt-borders>': ['#d9c7a3', '#191970'],
    '<quilt-borders borders="2" corners="mitred" fabric="B"></quilt-borders>': ['#191970'],
    '<quilt-backing fabric="B"></quilt-backing>': ['#191970'],
    '<quilt-binding cut="bias" fabric="B"></quilt-binding>': ['#191970'],
    '<quilt-sleeve fabric="A"></quilt-sleeve>': ['#d9c7a3'],
    '<quilt-cutting list="B | square | 4 | 6"></quilt-cutting>': ['#191970'],
    '<quilt-cutting fabric="A" list="| square | 4 | 6"></quilt-cutting>': ['#d9c7a3'],
    '<quilt-batting></quilt-batting>': [''],
  }))
    it(`in ${html}`, async () => expect(fills(await part(html))).to.deep.equal(wanted));

  it('outside a worksheet is drawn in the wash alone', async () => {
    const sheet = await show<Sheet>('<quilt-binding width="60" length="70" fabric="A"></quilt-binding>');
    expect(fills(sheet)).to.deep.equal(['']);
  });
});
