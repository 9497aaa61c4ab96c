import { expect } from 'chai';
import { findingsIn, LISTENING, openFrame } from './frame.js';
import { HOSTILE, pageOf, SCRIPT, SHEETS } from './hostile-pages.js';
import { misfits, readingOf, settle, type Reading } from './reading.js';

/** What is read on the calm page; every other page has to read the same. */
const calm = new Map<number, Reading>();

for (const [name, { css, html, body = SHEETS, widths = [320, 1280], then }] of Object.entries(HOSTILE))
  describe(`A page: ${name}`, () => {
    for (const width of widths)
      it(`reads as on a calm page, with nothing cut off or faint, at ${width} px`, async () => {
        const srcdoc = pageOf(body, {
          ...(css && { css }),
          ...(html && { html }),
          script: LISTENING + SCRIPT,
        });
        const framed = await openFrame({ srcdoc }, { width });
        const { page, faults } = framed;
        then?.(page);
        await settle(page);
        const reading = readingOf(page);
        expect(reading.words.length).to.be.greaterThan(200);
        if (name === 'calm') calm.set(width, reading);
        expect(reading).to.deep.equal(calm.get(width));
        expect(misfits(page)).to.deep.equal([]);
        expect(await findingsIn(framed, { rules: ['color-contrast'] })).to.deep.equal([]);
        expect(faults).to.deep.equal([]);
      });
  });
