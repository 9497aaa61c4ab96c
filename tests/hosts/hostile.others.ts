import { expect } from 'chai';
import { HOSTILE } from './hostile-pages.js';
import type { Reading } from './reading.js';
import { standing } from './standing.js';

/** What is read on the calm page; every other page has to read the same. */
const calm = new Map<number, Reading>();

for (const [name, hostile] of Object.entries(HOSTILE))
  describe(`A page: ${name}`, () => {
    for (const width of hostile.widths ?? [320, 1280])
      it(`reads as on a calm page, with nothing cut off, at ${width} px`, async () => {
        const reading = await standing(hostile, width);
        if (name === 'calm') calm.set(width, reading);
        expect(reading).to.deep.equal(calm.get(width));
      });
  });
