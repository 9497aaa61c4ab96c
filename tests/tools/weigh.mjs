import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { ROOT } from './run.mjs';

/**
 * Files of dist/ with all that they import, as a browser loads them.
 * @param {string[]} files
 * @returns {Buffer[]}
 */
export const servedWith = (files) => {
  const all = new Set(files);
  // A set also visits what is added to it on the way.
  for (const file of all)
    for (const [, path] of readFileSync(`${ROOT}dist/${file}`, 'utf8').matchAll(
      /(?:from|import)\s?\(?"(\.[^"]+)"/g,
    ))
      all.add(posix.join(posix.dirname(file), path));
  return [...all].map((file) => readFileSync(`${ROOT}dist/${file}`));
};

const FIRST_FOUR = ['backing', 'binding', 'borders', 'batting'];
const elements = readdirSync(`${ROOT}src/elements`).filter((name) =>
  existsSync(`${ROOT}src/elements/${name}/define.ts`),
);

/** What a page may load, by the scripts of dist/ that it names. */
const LOADED = {
  ...Object.fromEntries(elements.sort().map((name) => [name, [`quilt-${name}.js`]])),
  [`${FIRST_FOUR.join(', ')} together`]: FIRST_FOUR.map((name) => `quilt-${name}.js`),
  'the loader': ['quilt-loader.js'],
  everything: ['quilt-reckoner.js'],
  'everything, classic script': ['quilt-reckoner.classic.js'],
  'the arithmetic alone': ['reckon.js'],
};

/**
 * What each costs a page, in gzipped bytes, each file compressed by itself as a server does it. dist/ must be fresh.
 * @returns {{ name: string, bytes: number }[]}
 */
export const weights = () =>
  Object.entries(LOADED).map(([name, files]) => ({
    name,
    bytes: servedWith(files).reduce((total, code) => total + gzipSync(code, { level: 9 }).length, 0),
  }));
