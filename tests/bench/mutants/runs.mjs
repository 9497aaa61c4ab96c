import { fork, spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { clearTimeout } from 'node:timers';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { ROOT } from '../../tools/run.mjs';
import { filesIn, read } from './faults.mjs';

/** A mutant that keeps a round of tests busy for longer than this hangs. Milliseconds. */
export const HANGS = { quick: 240_000, slow: 900_000, chromium: 1_200_000 };

/** Everything a file imports, and what that imports, by path from the project's folder. */
export const reached = (file, seen = new Set()) => {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const { fileName } of ts.preProcessFile(read(file)).importedFiles) {
    const target = fileName.startsWith('.') && join(dirname(file), fileName).replace(/\.js$/, '.ts');
    if (target && existsSync(join(ROOT, target))) reached(target, seen);
  }
  return seen;
};

/** Runs unit tests in a process that stays warm, and is ended with its own when they hang. */
export const unitRunner = () => {
  let child;
  const stop = () => {
    if (child?.exitCode === null) process.kill(-child.pid, 'SIGKILL');
    child = undefined;
  };
  process.on('exit', stop);
  const run = (files, changed, hangs = HANGS.slow, bail = 1) =>
    new Promise((done) => {
      child ??= fork(fileURLToPath(import.meta.url), {
        detached: true,
        stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
      });
      const timer = setTimeout(() => finish({ by: 'it hangs' }), hangs);
      const ended = () => finish({ by: 'the tests’ process ended' });
      const finish = (answer) => {
        clearTimeout(timer);
        child.off('exit', ended).removeAllListeners('message');
        if (!answer.times) stop();
        done(answer);
      };
      child.once('message', finish).once('exit', ended);
      child.send({ files, changed, bail });
    });
  return { run, stop };
};

/** The other side of {@link unitRunner}: `by` names the first test that failed. */
const answerRuns = async () => {
  const { createVitest } = await import('vitest/node');
  let order = [];
  /** Only of this run: Vitest itself keeps what failed in one before. */
  let ended = [];
  class InOrder {
    shard = (specs) => specs;
    sort = (specs) => specs.sort((a, b) => order.indexOf(a.moduleId) - order.indexOf(b.moduleId));
  }
  const vitest = await createVitest('test', {
    ...{ root: ROOT, config: join(ROOT, 'tests/config/vitest.config.mjs'), project: 'units', watch: false },
    ...{
      bail: 1,
      isolate: false,
      maxWorkers: 1,
      reporters: [{ onTestModuleEnd: (module) => ended.push(module) }],
      sequence: { sequencer: InOrder },
    },
  });
  const specs = await vitest.globTestSpecifications();
  const project = vitest.getProjectByName('units');
  process.on('message', async ({ files, changed, bail }) => {
    order = files.map((file) => join(ROOT, file));
    project.config.bail = vitest.config.bail = bail;
    changed.forEach((file) => vitest.invalidateFile(join(ROOT, file)));
    ended = [];
    let errors = [];
    // A test that puts another module in a real one's place needs modules of its own; the others share them.
    for (const isolate of [false, true]) {
      const own = specs.filter(
        ({ moduleId }) =>
          order.includes(moduleId) && /\bvi\.mock\(/.test(readFileSync(moduleId, 'utf8')) === isolate,
      );
      if (own.length === 0 || (bail > 0 && ended.some((module) => !module.ok()))) continue;
      project.config.isolate = isolate;
      errors = [...errors, ...(await vitest.runTestSpecifications(own)).unhandledErrors];
    }
    const failed = ended.find((module) => module.state() === 'failed');
    const [test] = failed?.children.allTests('failed') ?? [];
    const by = failed ? `${failed.relativeModuleId}: ${test?.fullName ?? 'it does not load'}` : undefined;
    const times = ended.map((module) => [module.relativeModuleId, Math.round(module.diagnostic().duration)]);
    process.send({ by: by ?? (errors.length > 0 ? 'an error nothing caught' : undefined), times });
  });
};

/** Leaves dist/ as it is: these tests read the sources, and nobody wants a build with a fault in it. */
const DIST_AS_IT_IS = (() => {
  const url = (code) => `data:text/javascript,${encodeURIComponent(code)}`;
  const stub = 'export default () => {}; export const build = () => {}; export const filesIn = () => [];';
  const load = `export const load = (url, context, next) => url.endsWith('/fresh-dist.mjs')
    ? { format: 'module', shortCircuit: true, source: ${JSON.stringify(stub)} } : next(url, context);`;
  return url(`import { register } from 'node:module'; register(${JSON.stringify(url(load))});`);
})();

/** The Chromium tests that look at this drawing. */
const browserTests = (file) => {
  const name = file.replace(/.*\/|\.ts$/g, '');
  const all = ['tests/elements', 'tests/sheet'].flatMap((folder) =>
    ['.browser.ts', '.engines.ts'].flatMap((ending) => filesIn(folder, ending)),
  );
  const own = all.filter((test) => test.startsWith(`tests/elements/${name}/`));
  const isSeen = (test) => /drawn\(|svg|viewBox|\.drawing/.test(read(test));
  return own.length > 0 ? own : all.filter(isSeen);
};

export const inChromium = (file) =>
  new Promise((done) => {
    const files = browserTests(file);
    const wtr = join(ROOT, 'node_modules/@web/test-runner/dist/bin.js');
    const words = [
      '--import',
      DIST_AS_IT_IS,
      wtr,
      '--config',
      'tests/config/web-test-runner.config.mjs',
      '--files',
    ];
    const env = { ...process.env, ENGINES: 'chromium' };
    const child = spawn(process.execPath, [...words, ...files], { cwd: ROOT, env });
    let out = '';
    // Told to stop, not killed: so it ends its Chromium.
    const end = () => child.kill();
    process.once('exit', end);
    const timer = setTimeout(end, HANGS.chromium);
    child.stdout.on('data', (text) => (out += text));
    child.on('close', (code) => {
      clearTimeout(timer);
      process.off('exit', end);
      const by = /❌ (.*)/.exec(out)?.[1] ?? (code === null ? 'it hangs' : 'a file fails');
      done(code === 0 ? undefined : `in Chromium: ${by}`);
    });
  });

if (process.send) await answerRuns();
