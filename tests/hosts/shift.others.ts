import { expect } from 'chai';
import { until } from '../until.js';
import { LISTENING, openFrame } from './frame.js';
import { waysToLoad, WHOLE } from './loading.js';
import { blog } from './quilt-parts.js';
import { isShown, placesIn, WATCHING } from './watching.js';

/** So slow is the network that the page is shown without the script wherever it may be. */
const LATE = { classic: '/hosts/late/quilt-reckoner.classic.js', module: '/hosts/late/quilt-reckoner.js' };
const CAN_HOLD = document.createElement('script').blocking?.supports('render') ?? false;

/** Many frames of the page around, between which a page in it could have been shown. */
const manyFrames = async (): Promise<void> => {
  for (let frames = 0; frames < 20; frames++) await new Promise((done) => requestAnimationFrame(done));
};

let loads = Date.now();
const see = async (html: string, width: number, waits: boolean): ReturnType<typeof placesIn> => {
  // A browser that has the script from the test before would not wait for it.
  const load = ++loads;
  const anew = html.replace(/src="[^"]+/, `$&?${load}`);
  const srcdoc = anew.replace('<head>', `<head>${LISTENING}${WATCHING}`);
  const opening = openFrame({ srcdoc }, { width, height: 3000 });
  const { contentWindow } = [...document.querySelectorAll('iframe')].at(-1)!;
  if (waits) await until(() => isShown(contentWindow!));
  else await manyFrames();
  await fetch(`/hosts/come?${load}`);
  const framed = await opening;
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
        const seen = await see(html, width, isShownBefore || isUnheld);
        expect(seen.isShownBefore).to.equal(isShownBefore || isUnheld);
        if (isUnheld) expect(seen.places).to.have.length.greaterThan(1);
        else expect(seen.places).to.have.length(1);
      }
    });
  }

  for (const [what, written] of Object.entries(WHOLE))
    it(`is not so by itself, and the measure sees it: a late script, ${what}`, async () => {
      const foot = `<script type="module" src="${LATE.module}"></script>`;
      const { places, isShownBefore } = await see(blog(written, { foot }), 1280, true);
      expect(isShownBefore).to.equal(true);
      expect(places).to.have.length.greaterThan(1);
    });
});
