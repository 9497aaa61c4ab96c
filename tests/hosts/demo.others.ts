import { expect } from 'chai';
import { until } from '../until.js';
import { openFrame } from './frame.js';
import { misfits, readingOf, settle } from './reading.js';

/** Every page for readers, by its path. quick.html is the built one. */
const PAGES = [
  ...[
    'index',
    'elements',
    'recipes',
    'arithmetic',
    'tutorial',
    'product',
    'worksheet',
    'themed',
    'embed',
  ].map((name) => `/demo/${name}.html`),
  '/dist/quick.html',
];

for (const src of PAGES)
  describe(`The page ${src}`, () => {
    for (const width of [320, 1280])
      it(`stands with nothing cut off, and nothing to report, at ${width} px`, async () => {
        const framed = await openFrame({ src }, { width });
        await until(() => !framed.page.querySelector(':not(:defined), [aria-busy=true]'));
        await settle(framed.page, false);
        expect(readingOf(framed.page).words.length).to.be.greaterThan(20);
        expect(misfits(framed.page)).to.deep.equal([]);
        expect(framed.faults).to.deep.equal([]);
      });
  });
