import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { packageSucceeds, packageSucceedsBeside, ROOT } from './run.mjs';

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

/**
 * All files in a folder, or the file itself, by their paths from the project's folder, sorted.
 * @param {string} path
 * @returns {string[]}
 */
export const filesIn = (path, root = ROOT) => {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path];
  return readdirSync(full)
    .sort()
    .flatMap((name) => filesIn(`${path}/${name}`, root));
};

const printOf = (paths) => {
  const hash = createHash('sha256');
  for (const path of paths.flatMap((path) => filesIn(path)))
    hash
      .update(`${path}\0`)
      .update(readFileSync(ROOT + path))
      .update('\0');
  return hash.digest('hex');
};

const ROLLUP = 'rollup/dist/bin/rollup';
const WORDS = ['-c', '--silent'];

const build = () => {
  if (!packageSucceeds(ROLLUP, WORDS)) throw new Error('The build failed.');
};

/** Builds into another folder, beside other programs. Says whether it succeeded. */
export const buildBeside = (folder) => packageSucceedsBeside(ROLLUP, [...WORDS, `--configOut=${folder}`]);

const print = () => printOf([...INPUTS, 'dist']);

/** Notes that dist/ is what the build makes of the sources as they are. */
export const noteFresh = () => {
  mkdirSync(dirname(NOTE), { recursive: true });
  writeFileSync(NOTE, print());
};

/** Builds dist/, unless the last build already used the same sources. */
export default function buildIfStale() {
  if (existsSync(NOTE) && readFileSync(NOTE, 'utf8') === print()) return;
  build();
  noteFresh();
}
