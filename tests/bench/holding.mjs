import buildIfStale from '../tools/fresh-dist.mjs';
import { launchChromium } from '../tools/launch.mjs';
import { pasted, TEN, THOUSAND } from '../tools/long-lists.mjs';
import { serve } from '../tools/serve.mjs';

/**
 * How long a cut list holds the page up: the longest task in Chromium between pasting it and a while after its plan was
 * shown, beside that for ten pieces in the same run. A task of less than 50 ms counts as nothing, as browsers have it.
 */
buildIfStale();
const server = await serve();
const browser = await launchChromium();
const page = await browser.newPage();
await page.goto(new URL('/worksheet.html', server.address).href);
await page.$eval('body', (body) => {
  body.innerHTML =
    '<quilt-worksheet><quilt-cutting list="A | square | 3 | 1"></quilt-cutting></quilt-worksheet>';
});

const RUNS = 5;
console.log(`longest task, ms, of ${RUNS} runs each; the page's turns while it was planned`);
for (const [name, list] of [['10 pieces', TEN], ...Object.entries(THOUSAND)]) {
  const runs = [];
  for (let run = 0; run < RUNS; run += 1) runs.push(await page.evaluate(pasted, list));
  const tasks = runs.map(({ longest }) => Math.round(longest)).sort((a, b) => a - b);
  console.log(`${name.padEnd(12)}${tasks.join(' ').padStart(24)}${String(runs[0].turns).padStart(8)}`);
}
await browser.close();
server.close();
