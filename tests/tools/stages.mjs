import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn } from './files.mjs';
import { buildBeside, NOTE, noteFresh } from './fresh-dist.mjs';
import { packageChecks } from './package.mjs';
import { FAILED, readBrowsers, readVitest, tally } from './reports.mjs';
import { packageSucceedsBeside, ROOT } from './run.mjs';

/** One check of several runs, all of which have to end well. */
const check = async (...runs) => {
  let isGood = true;
  for (const run of runs) isGood = (await run()) && isGood;
  return isGood ? { passed: 1, skipped: 0, failures: [] } : FAILED;
};

const tsc = (project) => () => packageSucceedsBeside('typescript/bin/tsc', ['--noEmit', '-p', project]);

/**
 * The stages of `npm test`, by their names; each gives what it came to. What they write goes into the folder.
 * @param {string} folder
 */
export const stagesIn = (folder) => {
  const vitest = async (project, words) => {
    const path = join(folder, `${project}.json`);
    const ended = await packageSucceedsBeside('vitest/vitest.mjs', [
      ...words,
      ...['--config', 'tests/config/vitest.config.mjs', '--project', project],
      ...['--reporter=default', '--reporter=json', `--outputFile.json=${path}`],
    ]);
    return tally(ended, readVitest(path));
  };

  const browsers = async (env = {}, more = [], name = 'browsers') => {
    const path = join(folder, `${name}.json`);
    const words = ['--config', 'tests/config/web-test-runner.config.mjs', ...more];
    const run = () => packageSucceedsBeside('@web/test-runner/dist/bin.js', words, { RESULTS: path, ...env });
    let ended = await run();
    // WebKit's driver has been seen to lose its browser, which ends the run before any file has come to something.
    if (!ended && !existsSync(path)) {
      console.error('A browser went away, and nothing came of the run. Once more:');
      ended = await run();
    }
    return tally(ended, readBrowsers(path) ?? []);
  };

  /** Whether a build from nothing makes dist/ byte for byte as it is. */
  const distIsReproduced = async () => {
    const fresh = join(folder, 'fresh');
    if (!(await buildBeside(join(fresh, 'dist')))) return false;
    const files = new Set([...filesIn('dist'), ...filesIn('dist', fresh)]);
    files.delete(NOTE);
    const differing = [...files].filter((path) => {
      const [here, there] = [ROOT + path, join(fresh, path)];
      return !existsSync(here) || !existsSync(there) || !readFileSync(here).equals(readFileSync(there));
    });
    for (const path of differing) console.error(`${path} is not what the build makes; run: npm run build`);
    // The stages after this one need not build it once more to know.
    if (differing.length === 0) noteFresh();
    return differing.length === 0;
  };

  return {
    dist: () => check(distIsReproduced),
    types: () => check(tsc('tsconfig.json'), tsc('tests/config/tsconfig.headless.json')),
    lint: (files = ['.']) =>
      check(() =>
        packageSucceedsBeside('eslint/bin/eslint.js', ['-c', 'tests/config/eslint.config.mjs', ...files]),
      ),
    format: () =>
      check(() =>
        packageSucceedsBeside('prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.']),
      ),
    package: async () => check(...(await packageChecks(folder))),
    units: (...words) => vitest('units', words.length > 0 ? words : ['run']),
    browsers,
    pages: () => vitest('pages', ['run']),
  };
};
