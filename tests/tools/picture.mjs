import buildIfStale from './fresh-dist.mjs';
import { launchChromium } from './launch.mjs';
import { ROOT } from './run.mjs';
import { serve } from './serve.mjs';

/** `npm run picture`: takes README's picture again, after the looks have changed. */
const FILE = `${ROOT}demo/picture.png`;

buildIfStale();
const site = await serve();
const browser = await launchChromium();
const page = await browser.newPage();
await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: 'light' }]);
await page.setViewport({ width: 840, height: 900, deviceScaleFactor: 1 });
await page.goto(`${site.address}/index.html`, { waitUntil: 'networkidle0' });
await page.waitForSelector('quilt-backing:defined');
// From the answer down to the end of the drawing, with a margin: the lists below it make the picture too tall.
const clip = await page.$eval(
  '.sheet',
  (sheet, margin) => {
    const { left, top, width } = sheet.getBoundingClientRect();
    const drawing = sheet.querySelector('quilt-backing').shadowRoot.querySelector('[part~=figure]');
    const height = drawing.getBoundingClientRect().bottom - top;
    return { x: left - margin, y: top, width: width + 2 * margin, height: height + margin };
  },
  24,
);
await page.screenshot({ path: FILE, clip, captureBeyondViewport: true });
console.log(FILE);
await browser.close();
site.close();
