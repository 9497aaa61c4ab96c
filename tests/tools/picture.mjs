import buildIfStale from './fresh-dist.mjs';
import { launchChromium } from './launch.mjs';
import { ROOT } from './run.mjs';
import { serve } from './serve.mjs';

/** `npm run picture`: takes README's picture again, after the looks have changed. */
const FILE = `${ROOT}demo/picture.png`;

await buildIfStale();
const site = await serve();
const browser = await launchChromium();
const page = await browser.newPage();
await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: 'light' }]);
await page.setViewport({ width: 840, height: 900, deviceScaleFactor: 1 });
await page.goto(`${site.address}/index.html`, { waitUntil: 'networkidle0' });
await page.waitForSelector('quilt-backing:defined');
// A reader sees it after one press. The picture shows every step.
const unfold = 'quilt-backing >>> button[aria-expanded=false]';
await page.$$eval(unfold, (all) => all.find(({ textContent }) => /working/.test(textContent)).click());
await page.$eval('quilt-backing', (at) => at.updateComplete);
// From the answer down to the end of the rows and the drawing, with a margin: the lists below make the picture too tall.
const clip = await page.$eval(
  '.sheet',
  (sheet, margin) => {
    const { left, top, width } = sheet.getBoundingClientRect();
    const { shadowRoot } = sheet.querySelector('quilt-backing');
    const ends = [...shadowRoot.querySelectorAll('[part~=figure], [part~=table]')].map(
      (at) => at.getBoundingClientRect().bottom,
    );
    return {
      x: left - margin,
      y: top,
      width: width + 2 * margin,
      height: Math.max(...ends) - top + margin / 2,
    };
  },
  24,
);
await page.screenshot({ path: FILE, clip, captureBeyondViewport: true });
console.log(FILE);
await browser.close();
site.close();
