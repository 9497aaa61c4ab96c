import { expect } from 'chai';
import { openFrame } from './frame.js';
import { pageOf, SHEETS } from './hostile-pages.js';
import { settle } from './reading.js';
import { standing } from './standing.js';

describe('A reader who gave her browser colours of her own', () => {
  it('is such a one here', () => {
    expect(matchMedia('(forced-colors: active)').matches).to.equal(true);
  });

  for (const width of [320, 1280])
    it(`reads everything, with nothing cut off or faint, at ${width} px`, async () => {
      const reading = await standing({}, width, true);
      expect(reading.results.length).to.be.greaterThan(8);
    });

  it('sees which rows a marked one was reckoned from', async () => {
    const { page, window } = await openFrame({ srcdoc: pageOf(SHEETS) });
    await settle(page);
    const backing = page.querySelector('quilt-backing')!;
    const root = backing.shadowRoot!;
    backing.working = 'open';
    await backing.updateComplete;
    root.querySelector<HTMLElement>('[part=value], .reckoned input')!.focus();
    await backing.updateComplete;
    const marked = [...root.querySelectorAll('.marked')];
    expect(marked.length).to.be.greaterThan(0);
    for (const row of marked) expect(window.getComputedStyle(row).outlineStyle).to.equal('solid');
  });
});
