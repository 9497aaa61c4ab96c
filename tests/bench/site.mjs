import { mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import { rollup } from 'rollup';
import { unbundling } from '../tools/bundle.mjs';
import { launchChromium } from '../tools/launch.mjs';
import { ROOT } from '../tools/run.mjs';
import { serve } from '../tools/serve.mjs';
import { PEERS } from './peers.mjs';

const PAGES = `${ROOT}tests/bench/pages`;

/** The scripts of tests/bench/pages, each with all that it imports, and Lit's own build for pages. */
const bundled = async (folder) => {
  for (const name of readdirSync(PAGES)) {
    const bundle = await rollup({
      input: join(PAGES, name),
      plugins: [...unbundling(), nodeResolve({ exportConditions: ['production'] })],
      logLevel: 'silent',
    });
    await bundle.write({ file: join(folder, name.replace('.ts', '.js')) });
  }
};

const scriptTag = (src) =>
  `<script ${src.includes('/node_modules/') ? '' : 'type="module" '}src="${src}"></script>`;

/** A page of these scripts, in order, with that in its body. */
export const pageOf = (scripts, body = '') =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Bench</title>
<link rel="icon" href="data:,"></head><body>${body}${scripts.map(scriptTag).join('\n')}</body></html>`;

/** A Chromium, and a server of dist/, the peers, the bench's scripts and the pages that are put there. */
export const openSite = async () => {
  const folder = mkdtempSync(join(tmpdir(), 'quilt-bench-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  symlinkSync(`${ROOT}dist`, join(folder, 'dist'), 'junction');
  symlinkSync(join(PEERS, 'node_modules'), join(folder, 'node_modules'), 'junction');
  await bundled(folder);
  const { address, close } = await serve(0, folder);
  const browser = await launchChromium();
  return {
    version: await browser.version(),
    /** Puts a page there, and tells where. */
    put: (name, html) => {
      writeFileSync(join(folder, name), html);
      return `${address}/${name}`;
    },
    /** A tab of its own, in which a fault of the page ends the bench. */
    tab: async () => {
      const page = await browser.newPage();
      await page.setViewport({ width: 1600, height: 900 });
      page.setDefaultTimeout(0);
      page.on('pageerror', (error) => {
        console.error(error);
        process.exit(1);
      });
      return page;
    },
    close: async () => {
      await browser.close();
      close();
    },
  };
};
