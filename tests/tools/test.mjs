import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { installMissing, PROGRAMS } from './browsers.mjs';
import { quickStages } from './quick.mjs';
import { FAILED, sumOf } from './reports.mjs';
import { installPackages } from './run.mjs';
import { stagesIn } from './stages.mjs';

const folder = mkdtempSync(join(tmpdir(), 'quilt-reckoner-'));
process.once('exit', () => rmSync(folder, { recursive: true, force: true }));

const STAGES = stagesIn(folder);
const NAMES = Object.keys(STAGES);
/**
 * What runs side by side; the stages of a line one after another. `dist` looks at dist/ before another stage builds it
 * anew, and browsers have the machine to themselves.
 */
const ROUNDS = [[['dist', 'package', 'types', 'lint', 'format'], ['units']], [['browsers']], [['pages']]];
const QUICK_ROUNDS = [[['types', 'lint'], ['units', 'elements'], ['face']]];

/** `npm test` runs every stage but dist, which CI adds; `npm test -- units pages` runs those; `quick` what a change touches. */
const stagesFor = (words) => {
  const unknown = words.filter((word) => !['all', 'quick', ...NAMES].includes(word));
  if (unknown.length > 0) {
    console.error(
      `There is no stage ${unknown.join(', ')}. There are: ${NAMES.join(', ')}, all; and quick, by itself.`,
    );
    process.exit(2);
  }
  if (words.includes('quick')) return quickStages(STAGES);
  const wanted = words.includes('all')
    ? NAMES
    : words.length > 0
      ? words
      : NAMES.filter((name) => name !== 'dist');
  return Object.fromEntries(wanted.map((name) => [name, () => STAGES[name]()]));
};

installPackages();
const stages = stagesFor(process.argv.slice(2));
if (stages.browsers || stages.elements || stages.face || stages.pages) installMissing();

const results = [];
const seconds = (ms) => `${(ms / 1000).toFixed(ms < 10_000 ? 1 : 0)} s`;
const run = async (name) => {
  const started = Date.now();
  console.log(`== ${name} …`);
  const outcome = await stages[name]().catch((error) => {
    console.error(error);
    return FAILED;
  });
  const result = { name, failed: outcome.failures.length, time: seconds(Date.now() - started), ...outcome };
  results.push(result);
  console.log(`== ${name}: ${result.passed} passed, ${result.failed} failed, ${result.time}\n`);
};
for (const lines of process.argv.includes('quick') ? QUICK_ROUNDS : ROUNDS)
  await Promise.all(
    lines.map(async (line) => {
      for (const name of line) if (stages[name]) await run(name);
    }),
  );

console.log('== summary');
for (const { name, passed, failed, skipped, time } of results)
  console.log(
    `${name.padEnd(9)} ${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}, ${time}`,
  );
const slowest = results.flatMap(({ took = [] }) => took).sort((a, b) => b.ms - a.ms);
for (const { name, ms } of slowest.slice(0, 5)) console.log(`slowest: ${seconds(ms)}, ${name}`);
for (const { name, failures } of results)
  for (const failure of failures) console.log(`failed: ${name}: ${failure}`);
for (const { name } of PROGRAMS.filter((program) => !program.find()))
  console.log(`skipped: ${name}, which is not installed`);
const failed = sumOf('failed', results);
console.log(`${sumOf('passed', results)} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
