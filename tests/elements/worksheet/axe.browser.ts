import { expect } from 'chai';
import { LONG_LIST, redrawn, show, unfold, writeAndLeave, type Sheet } from '../../face/fixture.js';
import { findings } from '../../face/findings.js';
import { calm, quilt } from './quilt.js';

const PAGES = {
  'a light page': 'color: #222; background: #fff',
  'a dark page': 'color: #e8e4da; background: #1b1d22; color-scheme: dark',
  'a narrow column': 'color: #222; background: #fff; width: 320px',
};

for (const [where, style] of Object.entries(PAGES))
  describe(`axe on a whole quilt, on ${where}`, () => {
    const on = (sheet: Sheet): Element => {
      const page = sheet.parentElement!;
      page.style.cssText = style;
      return page;
    };

    it('finds nothing when everything is reckoned', async () => {
      const sheet = await quilt();
      expect(await findings(on(sheet))).to.deep.equal([]);
    });

    it('finds nothing with errors, kits and open refinements', async () => {
      const sheet = await quilt('kits="12"', {
        binding: '<quilt-binding fabric="C" strip-width="wide"></quilt-binding>',
      });
      await unfold(sheet);
      await writeAndLeave(sheet, 'bolt', 'long');
      await calm(sheet);
      expect(await findings(on(sheet))).to.deep.equal([]);
    });
  });

describe('axe', () => {
  for (const [what, html] of [
    ['a top on point', '<quilt-top block="12" across="3" down="3" set="on-point" sashing="2"></quilt-top>'],
    ['a cutting plan', '<quilt-cutting sheet="fat-quarter" list="A | square | 4 1/2 | 20"></quilt-cutting>'],
    ['a cut list with an error', '<quilt-cutting list="A | square | large | 20"></quilt-cutting>'],
    ['a long list that is being planned', `<quilt-cutting list="${LONG_LIST}"></quilt-cutting>`],
  ] as const)
    it(`finds nothing in ${what}`, async () => {
      const sheet = await show<Sheet>(html, redrawn);
      sheet.parentElement!.style.cssText = PAGES['a light page'];
      expect(await findings(sheet.parentElement!)).to.deep.equal([]);
    });
});
