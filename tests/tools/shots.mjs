import { mkdirSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { launchChromium } from './launch.mjs';
import buildIfStale from './fresh-dist.mjs';
import { ROOT } from './run.mjs';
import { serve } from './serve.mjs';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    out: { type: 'string', default: join(tmpdir(), 'quilt-reckoner-shots') },
    widths: { type: 'string', default: '320,768,1280' },
  },
});
const folder = resolve(values.out);
const pages =
  positionals.length > 0 ? positionals : readdirSync(`${ROOT}demo`).filter((name) => name.endsWith('.html'));

await buildIfStale();
mkdirSync(folder, { recursive: true });
const site = await serve();
const browser = await launchChromium();
const page = await browser.newPage();
for (const path of pages)
  for (const scheme of ['light', 'dark'])
    for (const width of values.widths.split(',').map(Number)) {
      await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
      await page.setViewport({ width, height: 900 });
      await page.goto(new URL(path, `${site.address}/`).href, { waitUntil: 'networkidle0' });
      const file = join(folder, `${path.replace(/\W+/g, '-')}-${width}-${scheme}.png`);
      await page.screenshot({ path: file, fullPage: true });
      console.log(file);
    }
await browser.close();
site.close();
