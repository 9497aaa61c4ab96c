import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { installMissing, PROGRAMS } from './browsers.mjs';
import { build, filesIn } from './fresh-dist.mjs';
import { packageChecks } from './package.mjs';
import { installPackages, packageSucceeds, ROOT } from './run.mjs';

const folder = mkdtempSync(join(tmpdir(), 'quilt-reckoner-'));
process.once('exit', () => rmSync(folder, { recursive: true, force: true }));

const FAILED = { passed: 0, skipped: 0, failures: ['see above'] };

const check = (...runs) => (runs.every((run) => run()) ? { passed: 1, skipped: 0, failures: [] } : FAILED);

const sumOf = (key, parts) => parts.reduce((total, part) => total + part[key], 0);

/** What the files of a runner came to. A file that broke outside its tests, or a run that ended badly, has failed once. */
const tally = (ended, files) => {
  const failures = files.flatMap(({ file, isGood, failedTests }) =>
    isGood || failedTests.length > 0 ? failedTests.map((test) => `${file}: ${test}`) : [file],
  );
  return {
    passed: sumOf('passed', files),
    skipped: sumOf('skipped', files),
    failures: ended || failures.length > 0 ? failures : FAILED.failures,
  };
};

const readReport = (path) => (existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined);

const vitest = (project) => () => {
  const path = join(folder, `${project}.json`);
  const ended = packageSucceeds('vitest/vitest.mjs', [
    ...['run', '--config', 'tests/config/vitest.config.mjs', '--project', project],
    ...['--reporter=default', '--reporter=json', `--outputFile.json=${path}`],
  ]);
  const files = readReport(path)?.testResults ?? [];
  return tally(
    ended,
    files.map(({ name, status, assertionResults }) => {
      const those = (...states) => assertionResults.filter((test) => states.includes(test.status));
      return {
        file: relative(ROOT, name),
        isGood: status !== 'failed',
        passed: those('passed').length,
        skipped: those('pending', 'skipped', 'todo', 'disabled').length,
        failedTests: those('failed').map(({ fullName }) => fullName),
      };
    }),
  );
};

const browsers = () => {
  const path = join(folder, 'browsers.json');
  const words = ['--config', 'tests/config/web-test-runner.config.mjs'];
  const run = () => packageSucceeds('@web/test-runner/dist/bin.js', words, { RESULTS: path });
  let ended = run();
  // WebKit's driver has been seen to lose its browser, which ends the run before any file has come to something.
  if (!ended && !existsSync(path)) {
    console.error('A browser went away, and nothing came of the run. Once more:');
    ended = run();
  }
  return tally(ended, readReport(path) ?? []);
};

const tsc = (project) => () => packageSucceeds('typescript/bin/tsc', ['--noEmit', '-p', project]);

/** Whether a build from nothing makes dist/ byte for byte as it is. */
const distIsReproduced = () => {
  const fresh = join(folder, 'fresh');
  build(`--configOut=${fresh}/dist`);
  const differing = [...new Set([...filesIn('dist'), ...filesIn('dist', fresh)])].filter((path) => {
    const [here, there] = [ROOT + path, join(fresh, path)];
    return !existsSync(here) || !existsSync(there) || !readFileSync(here).equals(readFileSync(there));
  });
  for (const path of differing) console.error(`${path} is not what the build makes; run: npm run build`);
  return differing.length === 0;
};

const STAGES = {
  // Before the pages, which build dist/ anew.
  dist: () => check(distIsReproduced),
  types: () => check(tsc('tsconfig.json'), tsc('tests/config/tsconfig.headless.json')),
  lint: () =>
    check(() => packageSucceeds('eslint/bin/eslint.js', ['-c', 'tests/config/eslint.config.mjs', '.'])),
  format: () =>
    check(() => packageSucceeds('prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.'])),
  package: () => check(...packageChecks(folder)),
  units: vitest('units'),
  browsers,
  pages: vitest('pages'),
};

/** `npm test` runs every stage but dist, which CI adds; `npm test -- units pages` runs those. */
const stagesFor = (words) => {
  const unknown = words.filter((word) => word !== 'all' && !STAGES[word]);
  if (unknown.length > 0) {
    console.error(
      `There is no stage ${unknown.join(', ')}. There are: ${Object.keys(STAGES).join(', ')}, all.`,
    );
    process.exit(2);
  }
  if (words.includes('all')) return Object.keys(STAGES);
  return words.length > 0 ? words : Object.keys(STAGES).filter((name) => name !== 'dist');
};

const stages = stagesFor(process.argv.slice(2));
installPackages();
if (stages.includes('browsers') || stages.includes('pages')) installMissing();

const outcomeOf = (name) => {
  try {
    return STAGES[name]();
  } catch (error) {
    console.error(error);
    return FAILED;
  }
};

const results = stages.map((name) => {
  console.log(`\n== ${name}`);
  const outcome = outcomeOf(name);
  return { name, failed: outcome.failures.length, ...outcome };
});

console.log('\n== summary');
for (const { name, passed, failed, skipped } of results)
  console.log(`${name.padEnd(9)} ${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`);
for (const { name, failures } of results)
  for (const failure of failures) console.log(`failed: ${name}: ${failure}`);
for (const { name } of PROGRAMS.filter((program) => !program.find()))
  console.log(`skipped: ${name}, which is not installed`);
const failed = sumOf('failed', results);
console.log(`${sumOf('passed', results)} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
