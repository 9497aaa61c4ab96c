import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { posix } from 'node:path';
import { filesIn } from './files.mjs';
import { ROOT } from './run.mjs';

const git = (...words) =>
  execFileSync('git', words, { cwd: ROOT, encoding: 'utf8' }).split('\n').filter(Boolean);

/** The files that differ from the last commit. If there are none, the files that the last commit changed. */
const changedFiles = () => {
  const open = [...git('diff', '--name-only', 'HEAD'), ...git('ls-files', '--others', '--exclude-standard')];
  const changed = open.length > 0 ? open : git('show', '--name-only', '--format=', 'HEAD');
  return changed.filter((path) => existsSync(ROOT + path));
};

/** A source with everything that it imports, directly or not. */
const withImports = (path) => {
  const all = new Set([path]);
  // A loop over a set also visits items that are added meanwhile.
  for (const file of all)
    for (const [, imported] of readFileSync(ROOT + file, 'utf8').matchAll(/(?:from|import\(?) ?'(\.[^']+)'/g))
      all.add(posix.join(posix.dirname(file), imported).replace(/\.js$/, '.ts'));
  return all;
};

/** The browser tests that a change touches: changed tests, those of elements that use the change, and those of the face. */
const browserTestsOf = (changed) => {
  const isTest = (path) => /\.(browser|engines)\.ts$/.test(path);
  const elements = readdirSync(`${ROOT}src/elements`).filter((name) => {
    const own = [...withImports(`src/elements/${name}/define.ts`), ...filesIn(`tests/elements/${name}`)];
    return changed.some((path) => own.includes(path));
  });
  const isFace = changed.some((path) => /^(src|tests)\/face\//.test(path));
  const folders = [...elements.map((name) => `tests/elements/${name}`), ...(isFace ? ['tests/face'] : [])];
  return [...new Set([...changed, ...folders.flatMap((folder) => filesIn(folder))])].filter(isTest);
};

/**
 * What `npm test -- quick` runs of these stages: types, lint of what changed, and the tests that the change touches, those
 * in browsers in Chromium alone.
 */
export const quickStages = ({ types, lint, units, browsers }) => {
  const changed = changedFiles();
  const isOfAll = changed.some((path) => /^(package|tsconfig|tests\/(config|tools)\/)/.test(path));
  const linted = changed.filter((path) => /^(src|tests|demo)\/.*\.(ts|mjs)$/.test(path));
  const inChromium = browserTestsOf(changed);
  const isOfElement = (path) => path.startsWith('tests/elements/');
  /** Two runs side by side, one for each core. */
  const run = (name, files) =>
    files.length > 0 && { [name]: () => browsers({ ENGINES: 'chromium' }, ['--files', ...files], name) };
  console.log(`Changed: ${changed.join(', ')}`);
  return {
    types,
    ...(linted.length > 0 && { lint: () => lint(linted) }),
    units: () =>
      isOfAll
        ? units()
        : units('related', '--run', '--passWithNoTests', ...changed.filter((path) => path.endsWith('.ts'))),
    ...run('elements', inChromium.filter(isOfElement)),
    ...run(
      'face',
      inChromium.filter((path) => !isOfElement(path)),
    ),
  };
};
