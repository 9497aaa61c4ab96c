import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { findWebKitPrinter, startScreen } from './browsers.mjs';
import { once } from './once.mjs';
import { ROOT } from './run.mjs';

const screen = once(() => startScreen(findWebKitPrinter().screen));

/**
 * Shows a page in WebKit, as this HTML at this address, and prints it once for each job: a script runs in the page that asks
 * for the print, as a reader would, and what comes out is written to `pdf`, on paper with margins of 1 cm.
 */
export const printFromWebKit = async ({ html, address, jobs }) => {
  const folder = mkdtempSync(join(tmpdir(), 'quilt-reckoner-page-'));
  const page = join(folder, 'page.html');
  writeFileSync(page, html);
  // The dialog would ask whether to overwrite it.
  for (const { pdf } of jobs) rmSync(pdf, { force: true });
  try {
    const told = jobs.map((job) => JSON.stringify(job));
    const words = ['-m', `${ROOT}tests/tools/print.gjs.mjs`, page, address, ...told];
    await promisify(execFile)(findWebKitPrinter().gjs, words, { env: await screen(), timeout: 300_000 });
  } finally {
    rmSync(folder, { recursive: true });
  }
};
