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
import { fork, spawn } from 'node:child_process';
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { clearTimeout } from 'node:timers';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import ts from 'typescript';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const FOLDERS = ['src/measure', 'src/cutting', 'src/reckon', 'src/drawing'];
/** Unit tests that took longer than this together with nothing wrong run after those that did not. Milliseconds. */
const QUICK = 3_000;
/** A mutant that keeps a round of tests busy for longer than this hangs. Milliseconds. */
const HANGS = { quick: 240_000, slow: 900_000, chromium: 1_200_000 };

/** These once survived. */
const NAMED = [
  {
    file: 'src/trade/conventions.ts',
    line: "export const QUILT_THICKNESS = '1/8 in';",
    from: '1/8',
    to: '1/4',
  },
  { file: 'src/drawing/picture.ts', line: 'const TALLEST = 330;', from: '330', to: '900' },
  // The plan's search, switched off: its effort is spent before it begins.
  {
    file: 'src/cutting/search.ts',
    line: 'for (const end = effort() + total * share; goal >= bound && effort() < end;) {',
    from: 'total * share',
    to: '0',
  },
].map((mutant) => ({ ...mutant, occurrence: 0, at: mutant.line.indexOf(mutant.from) }));

const read = (file) => readFileSync(join(ROOT, file), 'utf8');
const filesIn = (folder, ending) =>
  readdirSync(join(ROOT, folder), { recursive: true })
    .filter((name) => name.endsWith(ending))
    .map((name) => `${folder}/${name}`)
    .sort();

// ---- Picking

const dice = (seed) => (sides) => {
  seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
  return Math.floor((seed / 2 ** 32) * sides);
};
const shuffled = (list, roll) => {
  const all = [...list];
  for (let at = all.length - 1; at > 0; at -= 1) {
    const other = roll(at + 1);
    [all[at], all[other]] = [all[other], all[at]];
  }
  return all;
};

const SWAPPED = [
  ...[
    '< <=',
    '> >=',
    '+ -',
    '* /',
    '&& ||',
    '=== !==',
    '+= -=',
    'true false',
    'lt lte',
    'gt gte',
    'add sub',
    'mul div',
  ],
  ...[
    'ceil floor',
    'upTo downTo',
    'least most',
    'min max',
    'some every',
    'wholeUp wholeDown',
    'rootUp rootDown',
  ],
].map((pair) => pair.split(' '));
const OTHER = new Map([...SWAPPED, ...SWAPPED.map(([a, b]) => [b, a])]);
const RETURNED = ['false', 'true', '0', "''", '[]', 'undefined'];

const larger = (number) => String(Number.isInteger(number) && number < 10 ? number + 1 : number * 2);

/** The ways in which one node of the syntax can be wrong: the kind, the node to replace and its new text. */
const faultsOf = (node) => {
  const faults = [];
  const add = (kind, at, to) => faults.push({ kind, node: at, to });
  const not = (condition) => add('condition', condition, `!(${condition.getText()})`);
  if (ts.isBinaryExpression(node)) {
    const sign = node.operatorToken;
    if (OTHER.has(sign.getText())) add('operator', sign, OTHER.get(sign.getText()));
  } else if (ts.isNumericLiteral(node)) add('number', node, larger(Number(node.text)));
  else if (node.kind === ts.SyntaxKind.TrueKeyword || node.kind === ts.SyntaxKind.FalseKeyword)
    add('flag', node, OTHER.get(node.getText()));
  else if (ts.isConditionalExpression(node)) {
    const [test, yes, no] = [node.condition, node.whenTrue, node.whenFalse].map((part) => part.getText());
    add('ternary', node, `${test} ? ${no} : ${yes}`);
  } else if (ts.isIfStatement(node) || ts.isWhileStatement(node)) not(node.expression);
  else if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken)
    add('condition', node, node.operand.getText());
  else if (ts.isReturnStatement(node) && node.expression)
    for (const value of RETURNED) add('return', node.expression, value);
  else if (ts.isCallExpression(node)) {
    const name = ts.isPropertyAccessExpression(node.expression) ? node.expression.name : node.expression;
    if (OTHER.has(name.getText())) add('method', name, OTHER.get(name.getText()));
    if (ts.isExpressionStatement(node.parent)) add('statement', node, 'undefined');
  }
  return faults;
};

/** Where a line of this text stands for the nth time; undefined when it is gone. */
const startOf = (source, { line, occurrence }) => {
  let start = 0;
  let seen = 0;
  for (const text of source.split('\n')) {
    if (text.trim() === line && seen++ === occurrence) return start + text.indexOf(line);
    start += text.length + 1;
  }
  return undefined;
};

/** The source with its fault, or undefined where its line is gone. */
const mutated = (mutant) => {
  const source = read(mutant.file);
  const start = startOf(source, mutant);
  if (start === undefined) return undefined;
  const at = start + mutant.at;
  return source.slice(0, at) + mutant.to + source.slice(at + mutant.from.length);
};

/** Every fault of a file that lies within one line. */
const candidates = (file) => {
  const source = ts.createSourceFile(file, read(file), ts.ScriptTarget.Latest, true);
  const found = [];
  const visit = (node) => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node)) return;
    for (const { kind, node: at, to } of faultsOf(node)) {
      const from = at.getText();
      if (from.includes('\n') || to === from) continue;
      const number = source.getLineAndCharacterOfPosition(at.getStart()).line;
      const lines = source.text.split('\n');
      const line = lines[number].trim();
      const occurrence = lines.slice(0, number).filter((text) => text.trim() === line).length;
      const mutant = { file, line, occurrence, kind, from, to };
      found.push({ ...mutant, at: at.getStart() - startOf(source.text, mutant) });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};

/** Whether a changed file still has the right types; that something is no longer used is no wrong type. */
const compiler = () => {
  const { config } = ts.readConfigFile(join(ROOT, 'tsconfig.json'), (path) => readFileSync(path, 'utf8'));
  const { options } = ts.parseJsonConfigFileContent({ ...config, include: ['src'] }, ts.sys, ROOT);
  const changed = new Map();
  const versions = new Map();
  const host = {
    ...{ fileExists: ts.sys.fileExists, directoryExists: ts.sys.directoryExists, readFile: ts.sys.readFile },
    getCompilationSettings: () => ({ ...options, noEmit: true }),
    getScriptFileNames: () =>
      FOLDERS.flatMap((folder) => filesIn(folder, '.ts')).map((file) => join(ROOT, file)),
    getScriptVersion: (path) => String(versions.get(path) ?? 0),
    getScriptSnapshot: (path) => {
      const text = changed.get(path) ?? ts.sys.readFile(path);
      return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
    },
    getCurrentDirectory: () => ROOT,
    getDefaultLibFileName: ts.getDefaultLibFilePath,
  };
  const service = ts.createLanguageService(host);
  return (mutant) => {
    const path = join(ROOT, mutant.file);
    const set = (text) => {
      if (text === undefined) changed.delete(path);
      else changed.set(path, text);
      versions.set(path, (versions.get(path) ?? 0) + 1);
    };
    set(mutated(mutant));
    const wrong = [...service.getSyntacticDiagnostics(path), ...service.getSemanticDiagnostics(path)];
    set(undefined);
    return wrong.every(({ reportsUnnecessary }) => reportsUnnecessary);
  };
};

/** So many in each folder, spread over its files, and in each file over the kinds of fault. */
const picked = (seed, each) => {
  const roll = dice(seed);
  const compiles = compiler();
  return FOLDERS.flatMap((folder) => {
    const files = shuffled(filesIn(folder, '.ts'), roll).map((file) => {
      const all = shuffled(candidates(file), roll);
      const kinds = shuffled([...new Set(all.map(({ kind }) => kind))], roll);
      return kinds.map((kind) => all.filter((mutant) => mutant.kind === kind));
    });
    const taken = [];
    for (let turn = 0; taken.length < each && turn < 50 * each; turn += 1) {
      const kinds = files[turn % files.length];
      const of = kinds[Math.floor(turn / files.length) % kinds.length];
      for (let mutant; (mutant = of?.pop());)
        if (compiles(mutant)) {
          taken.push(mutant);
          break;
        }
    }
    return taken;
  });
};

// ---- Running

/** Everything a file imports, and what that imports, by path from the project's folder. */
const reached = (file, seen = new Set()) => {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const { fileName } of ts.preProcessFile(read(file)).importedFiles) {
    const target = fileName.startsWith('.') && join(dirname(file), fileName).replace(/\.js$/, '.ts');
    if (target && existsSync(join(ROOT, target))) reached(target, seen);
  }
  return seen;
};

/** Runs unit tests in a process that stays warm, and is ended with its own when they hang. */
const unitRunner = () => {
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
  const all = [...filesIn('tests/elements', '.browser.ts'), ...filesIn('tests/sheet', '.browser.ts')];
  const own = all.filter((test) => test.startsWith(`tests/elements/${name}/`));
  const isSeen = (test) => /drawn\(|svg|viewBox|\.drawing/.test(read(test));
  return own.length > 0 ? own : all.filter(isSeen);
};

const inChromium = (file) =>
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
    Chromium: ({ file }) => (file.startsWith('src/drawing/') ? inChromium(file) : undefined),
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

if (process.send) await answerRuns();
else await main();
