import { readdirSync } from 'node:fs';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { rollup } from 'rollup';
import { bundling, inline } from '../../tools/bundle.mjs';
import { ROOT } from '../../tools/run.mjs';
import { servedWith } from '../../tools/weigh.mjs';

export const title = 'Bytes of a script of dist/ with all that it imports, gzip, brotli';

const sizes = (code) => [gzipSync(code, { level: 9 }).length, brotliCompressSync(code).length];

/** Each file is compressed by itself, as a server does it. */
const sum = (codes) => codes.map(sizes).reduce(([a, b], [c, d]) => [a + c, b + d]);

/** What every entry rests on, bundled like it: the least that any could weigh. */
const floor = async () => {
  const code = `export { LitElement, css, html, svg, nothing } from 'lit'; export { default } from 'fraction.js';`;
  const plugins = [inline('floor', code), ...bundling()];
  const bundle = await rollup({ input: 'floor', plugins, logLevel: 'silent' });
  const { output } = await bundle.generate({});
  return sum(output.map((chunk) => chunk.code));
};

export const measure = async () => {
  const beside = [{ name: 'lit and fraction.js alone', values: await floor() }];
  const entries = readdirSync(`${ROOT}dist`).filter((name) => name.endsWith('.js') && name !== 'frame.js');
  return { rows: entries.map((what) => ({ what, ours: sum(servedWith([what])), beside })) };
};
