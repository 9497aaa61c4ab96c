import { expect } from 'chai';
import { PREFERS_DARK } from './hostile-pages.js';
import { standing } from './standing.js';

describe('A reader who told her browser to be dark', () => {
  it('is such a one here', () => {
    expect(matchMedia('(prefers-color-scheme: dark)').matches).to.equal(true);
  });

  for (const width of [320, 1280])
    it(`reads as on a light page, with nothing cut off or faint, at ${width} px`, async () => {
      const light = await standing({ css: ':root { color-scheme: light; background: #fff }' }, width);
      expect(await standing(PREFERS_DARK, width, true)).to.deep.equal(light);
    });
});
