import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { rollup } from 'rollup';
import { bundling, inline } from './bundle.mjs';
import { ROOT } from './run.mjs';

const FIRST_FOUR = ['backing', 'binding', 'borders', 'batting'];

const gzipped = (code) => gzipSync(code, { level: 9 }).length;

/** Gzipped bytes of the one file that this code bundles to. */
const bundled = async (code) => {
  const bundle = await rollup({
    input: 'weighed',
    plugins: [inline('weighed', code), ...bundling()],
    logLevel: 'silent',
  });
  const { output } = await bundle.generate({ inlineDynamicImports: true });
  return output.reduce((total, chunk) => total + gzipped(chunk.code), 0);
};

/** Gzipped bytes of files in dist/ with all that they import, each compressed by itself as a server does it. */
const served = (files) => {
  const all = new Set(files);
  // A set also visits what is added to it on the way.
  for (const file of all)
    for (const [, path] of readFileSync(`${ROOT}dist/${file}`, 'utf8').matchAll(
      /(?:from|import)"(\.[^"]+)"/g,
    ))
      all.add(posix.join(posix.dirname(file), path));
  return [...all].reduce((total, file) => total + gzipped(readFileSync(`${ROOT}dist/${file}`)), 0);
};

const importing = (paths) => paths.map((path) => `import ${JSON.stringify(ROOT + path)};`).join('\n');

const weightOf = async (name, elements, limit) => ({
  name,
  limit,
  bundled: await bundled(importing(elements.map((element) => `src/elements/${element}/define.ts`))),
  served: served(elements.map((element) => `quilt-${element}.js`)),
});

/**
 * What each thing costs a page, in gzipped bytes: as one bundle and as served from dist/, which must be fresh. A limit
 * is for both.
 * @returns {Promise<{ name: string, limit?: number, bundled?: number, served?: number }[]>}
 */
export const weights = async () => {
  const elements = readdirSync(`${ROOT}src/elements`)
    .filter((name) => existsSync(`${ROOT}src/elements/${name}/define.ts`))
    .sort();
  const alone = [];
  // A fabric is no calculator: it only stands inside a worksheet, which loads the same chunks.
  for (const element of elements)
    alone.push(await weightOf(element, [element], element === 'fabric' ? undefined : 18_000));
  const firstFour = FIRST_FOUR.filter((name) => elements.includes(name));
  return [
    await weightOf(`${firstFour.join(', ')} together`, firstFour, 28_000),
    ...alone,
    {
      name: 'everything',
      limit: 38_000,
      bundled: await bundled(importing(['src/index.ts'])),
      served: served(['quilt-reckoner.js']),
    },
    {
      name: 'everything, classic script',
      limit: 38_000,
      served: served(['quilt-reckoner.classic.js']),
    },
    {
      name: 'reckon.js',
      bundled: await bundled(`export * from '${ROOT}src/reckon.ts'`),
      served: served(['reckon.js']),
    },
    {
      name: 'floor: lit and fraction.js only',
      bundled: await bundled(
        `export { LitElement, css, html, svg, nothing } from 'lit'; export { default } from 'fraction.js';`,
      ),
    },
  ];
};
