import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
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
const NOTE = `${ROOT}node_modules/.cache/quilt-reckoner/dist.txt`;

const printOf = (paths) => {
  const hash = createHash('sha256');
  for (const path of paths.flatMap((path) => filesIn(path)))
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
export const noteFresh = () => {
  mkdirSync(dirname(NOTE), { recursive: true });
  writeFileSync(NOTE, print());
};

/** Builds dist/, unless the last build already used the same sources. */
export default async function buildIfStale() {
  if (existsSync(NOTE) && readFileSync(NOTE, 'utf8') === print()) return;
  if (!(await buildBeside())) throw new Error('The build failed.');
  noteFresh();
}
