/**
 * What the tests catch: small faults are put into the sources one at a time, and each is killed, when a test fails, or
 * survives.
 *
 *   node tests/bench/mutants.mjs --out before.json                   picks 15 in each of four folders, adds NAMED, runs them
 *   node tests/bench/mutants.mjs --again before.json --out after.json   the same ones later, each beside what it came to before
 *
 * `--seed N` and `--each N` pick others. The quick unit tests that import the file run first, then the slow ones; a
 * mutant in src/drawing that they leave alive meets the Chromium tests that look at that drawing. Run it in a working
 * copy that nobody else uses: a source file is changed while its mutant runs, and put back at the end or on Ctrl-C. A mutant
 * is found again by its file, the text of its line and which line of that text it is; one whose line is gone is named so.
 * When it is stopped, `--again` with the same file for `--out` goes on: what has its answer there is not run again.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import { ROOT } from '../tools/run.mjs';
import { filesIn, mutated, NAMED, picked } from './mutants/faults.mjs';
import { HANGS, inChromium, reached, unitRunner } from './mutants/runs.mjs';

/** Unit tests that took longer than this together with nothing wrong run after those that did not. Milliseconds. */
const QUICK = 3_000;

/** Puts the fault in while `work` runs; whatever ends this process puts the source back. */
const withFault = async (mutant, work) => {
  const path = join(ROOT, mutant.file);
  const [source, text] = [readFileSync(path, 'utf8'), mutated(mutant)];
  const putBack = () => writeFileSync(path, source);
  process.once('exit', putBack);
  writeFileSync(path, text);
  try {
    return await work();
  } finally {
    putBack();
    process.off('exit', putBack);
  }
};

const told = ({ file, line, from, to, at }) =>
  `${file}: ${line.slice(0, at)}[${from} → ${to}]${line.slice(at + from.length)}`;

const main = async () => {
  const { values } = parseArgs({
    options: {
      ...{ out: { type: 'string' }, again: { type: 'string' } },
      ...{ seed: { type: 'string', default: '11' }, each: { type: 'string', default: '15' } },
    },
  });
  ['SIGINT', 'SIGTERM'].forEach((signal) => process.once(signal, () => process.exit(1)));
  const before = values.again ? JSON.parse(readFileSync(values.again, 'utf8')) : undefined;
  const goesOn = values.again === values.out;
  const mutants = before?.mutants.map(({ result, by, ...mutant }) =>
    goesOn ? { ...mutant, result, by } : { ...mutant, before: result },
  ) ?? [...NAMED, ...picked(Number(values.seed), Number(values.each))];
  const tests = filesIn('tests', '.test.ts').map((test) => ({ test, reaches: reached(test) }));
  const { run, stop } = unitRunner();
  let times = (goesOn && before.times) || {};
  const save = () => values.out && writeFileSync(values.out, JSON.stringify({ mutants, times }, null, 1));
  save();

  const concerned = tests.filter(({ reaches }) => mutants.some(({ file }) => reaches.has(file)));
  if (Object.keys(times).length === 0) {
    const sound = await run(
      concerned.map(({ test }) => test),
      [],
      HANGS.slow,
      0,
    );
    if (sound.by) throw new Error(`Without any fault a test fails already: ${sound.by}`);
    times = Object.fromEntries(sound.times);
    save();
  }
  const firstWord = (file) => basename(file).split(/[.-]/)[0].replace(/s$/, '');
  /** Those named like the file first, then the shortest. */
  const related = ({ file }, quick) => {
    const cost = (test) => (firstWord(test) === firstWord(file) ? 0 : 1e9) + (times[test] ?? 0);
    return concerned
      .filter(({ test, reaches }) => reaches.has(file) && (times[test] ?? 0) <= QUICK === quick)
      .map(({ test }) => test)
      .sort((a, b) => cost(a) - cost(b));
  };
  let last;
  const units = (quick) => async (mutant) => {
    const files = related(mutant, quick);
    if (files.length === 0) return undefined;
    const { by } = await run(files, [last, mutant.file].filter(Boolean), quick ? HANGS.quick : HANGS.slow);
    last = mutant.file;
    return by;
  };
  const rounds = {
    'quick units': units(true),
    'slow units': units(false),
    Chromium: ({ file }) => (/\/draw(ing)?\.ts$/.test(file) ? inChromium(file) : undefined),
  };
  for (const [name, round] of Object.entries(rounds)) {
    const open = mutants.filter(({ result }) => !result);
    console.log(`${name}: ${open.length} of ${mutants.length} mutants are alive`);
    for (const mutant of open) {
      if (mutated(mutant) === undefined) mutant.result = 'gone';
      else if (mutant.lived?.includes(name)) continue;
      else {
        mutant.by = await withFault(mutant, () => round(mutant));
        if (mutant.by) mutant.result = 'killed';
      }
      if (mutant.result) console.log(`${mutant.result} ${told(mutant)}\n       ${mutant.by ?? ''}`);
      else mutant.lived = [...(mutant.lived ?? []), name];
      save();
    }
  }
  stop();
  for (const mutant of mutants) {
    mutant.result ??= 'survived';
    delete mutant.lived;
    if (mutant.result !== 'killed') console.log(`${mutant.result} ${told(mutant)}`);
    if (mutant.before && mutant.before !== mutant.result)
      console.log(`${mutant.before} before, ${mutant.result} now: ${told(mutant)}`);
  }
  save();
  const count = (of, result) => mutants.filter((mutant) => mutant[of] === result).length;
  for (const of of before && !goesOn ? ['before', 'result'] : ['result'])
    console.log(
      `${of === 'before' ? 'before' : 'now'}: ${count(of, 'killed')} of ${mutants.length} killed, ${count(of, 'survived')} survived, ${count(of, 'gone')} gone`,
    );
};

await main();
