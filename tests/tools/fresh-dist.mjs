import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { filesIn } from './files.mjs';
import { packageSucceedsBeside, ROOT } from './run.mjs';

const INPUTS = [
  'src',
  'demo',
  'tests/tools',
  'tests/config',
  'rollup.config.mjs',
  'tsconfig.json',
  'package.json',
  'package-lock.json',
];
/** A hash of what dist/ was built from, and of what was built. It is committed with dist/, so a fresh clone need not build it once more. */
export const NOTE = 'dist/.built-from';

const printOf = (paths) => {
  const hash = createHash('sha256');
  for (const path of paths.flatMap((path) => filesIn(path)).filter((path) => path !== NOTE))
    hash
      .update(`${path}\0`)
      .update(readFileSync(ROOT + path))
      .update('\0');
  return hash.digest('hex');
};

/**
 * Builds dist/, or into another folder, beside other programs. Says whether it succeeded.
 * @param {string} [folder]
 */
export const buildBeside = (folder) =>
  packageSucceedsBeside('rollup/dist/bin/rollup', [
    '-c',
    '--silent',
    ...(folder ? [`--configOut=${folder}`] : []),
  ]);

const print = () => printOf([...INPUTS, 'dist']);

/** Notes that dist/ is what the build makes of the sources as they are. */
export const noteFresh = () => writeFileSync(ROOT + NOTE, print());

/** Builds dist/, unless it was built from the same sources. */
export default async function buildIfStale() {
  if (existsSync(ROOT + NOTE) && readFileSync(ROOT + NOTE, 'utf8') === print()) return;
  if (!(await buildBeside())) throw new Error('The build failed.');
}
