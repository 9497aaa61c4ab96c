import { expect } from 'chai';
import { LISTENING, openFrame } from './frame.js';
import { waysToLoad, WHOLE } from './loading.js';
import { blog } from './quilt-parts.js';
import { placesIn, WATCHING } from './watching.js';

/** So slow is the network that the page is shown without the script wherever it may be. */
const LATE = { classic: '/hosts/late/quilt-reckoner.classic.js', module: '/hosts/late/quilt-reckoner.js' };
const CAN_HOLD = document.createElement('script').blocking?.supports('render') ?? false;

let loads = 0;
const see = async (html: string, width: number): ReturnType<typeof placesIn> => {
  // A browser that has the script from the test before would not wait for it.
  const anew = html.replace(/src="[^"]+/, `$&?${++loads}`);
  const srcdoc = anew.replace('<head>', `<head>${LISTENING}${WATCHING}`);
  const framed = await openFrame({ srcdoc }, { width, height: 3000 });
  const seen = await placesIn(framed);
  const element = framed.page.querySelector('quilt-backing, quilt-cutting, quilt-worksheet')!;
  expect(element.shadowRoot!.querySelector('section')!.clientHeight).to.be.greaterThan(300);
  expect(framed.faults).to.deep.equal([]);
  return seen;
};

describe('no jump when it loads', () => {
  for (const [way, what, html, isShownBefore] of waysToLoad(LATE)) {
    const isUnheld = html.includes('blocking=') && !CAN_HOLD;
    it(`${way}: ${what}${isUnheld ? ' (this browser does not know how, and shows the page at once)' : ''}`, async () => {
      for (const width of [320, 1280]) {
        const seen = await see(html, width);
        expect(seen.isShownBefore).to.equal(isShownBefore || isUnheld);
        if (isUnheld) expect(seen.places).to.have.length.greaterThan(1);
        else expect(seen.places).to.have.length(1);
      }
    });
  }

  for (const [what, written] of Object.entries(WHOLE))
    it(`is not so by itself, and the measure sees it: a late script, ${what}`, async () => {
      const foot = `<script type="module" src="${LATE.module}"></script>`;
      const { places, isShownBefore } = await see(blog(written, { foot }), 1280);
      expect(isShownBefore).to.equal(true);
      expect(places).to.have.length.greaterThan(1);
    });
});
