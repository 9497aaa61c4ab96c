import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import terser from '@rollup/plugin-terser';
import { rollup } from 'rollup';
import { inLayers } from './in-layers.mjs';
import { edited, walk } from './naming.mjs';
import { once } from './once.mjs';
import { slimFraction } from './slim-fraction.mjs';
import { slimLit } from './slim-lit.mjs';
import { shorterCss, shorterTemplates } from './templates.mjs';
import { sourceOf, toJavaScript } from './typescript.mjs';

/** Many bundles hold the same sources, and a source comes to the same in each of them. */
const javaScriptOf = once((id) => once((code) => toJavaScript(code, id, { before: [shorterTemplates] })));

/** Reads TypeScript. An import of `.js` finds its `.ts`; what else is known of that one, the plugins of its bundle say once. */
const typescript = () => {
  const found = new Map();
  return {
    name: 'typescript',
    resolveId(source, importer, options) {
      if (!source.startsWith('.') || !importer) return null;
      const path = sourceOf(resolve(dirname(importer), source));
      if (!path) return null;
      if (!found.has(path)) found.set(path, this.resolve(path, importer, { ...options, skipSelf: true }));
      return found.get(path);
    },
    transform: (code, id) => (id.endsWith('.ts') ? { code: javaScriptOf(id)(code), map: null } : null),
  };
};

/** A file NAME.bundled.ts takes the place of NAME.ts in the bundles. */
const forBundles = {
  name: 'for-bundles',
  load(id) {
    const path = id.replace(/\.ts$/, '.bundled.ts');
    return path !== id && existsSync(path) ? readFileSync(path, 'utf8') : null;
  },
};

/** The parts that are loaded late, by the module that loads them: source, name, and the function that asks for it. */
const LATE = {
  [resolve('src/face/spreadsheet.ts')]: {
    input: 'src/face/spreadsheet-file.ts',
    name: 'spreadsheet',
    asks: 'loadSpreadsheet',
    inside: 'write-excel-file, MIT; fflate, MIT; fraction.js, MIT',
  },
  [resolve('src/face/picture.ts')]: {
    input: 'src/face/picture-file.ts',
    name: 'picture',
    asks: 'loadPicture',
    inside: 'fraction.js, MIT',
  },
  [resolve('src/face/german.ts')]: {
    input: 'src/words/de/de.ts',
    name: 'words-de',
    asks: 'loadGerman',
    inside: 'fraction.js, MIT',
  },
  [resolve('src/face/british.ts')]: {
    input: 'src/words/en-gb/en-gb.ts',
    name: 'words-en-gb',
    asks: 'loadBritish',
    inside: 'fraction.js, MIT',
  },
};

/** Makes one script of it with everything that it needs. The name of its file comes from its content. */
const lateScript = async ({ input, name, inside }) => {
  const bundle = await rollup({ input, plugins: bundling(), logLevel: 'silent' });
  const banner = `/*! quilt-reckoner: MIT. Inside: ${inside}. See third-party-licenses.txt */`;
  const { output } = await bundle.generate({ banner });
  const source = output[0].code;
  const hash = createHash('sha256').update(source).digest('base64url').slice(0, 8);
  return { source, fileName: `chunks/${name}-${hash}.js` };
};
const made = new Map();

/**
 * Makes a bundle load its late parts from scripts beside it, by their addresses. Rollup's own chunks do not work here: they would
 * share modules with a script that the page may know under another address (`…?v=2`), and a classic script has no chunks.
 */
export const lateBeside = ({ isClassic = false } = {}) => ({
  name: 'late-beside',
  async load(id) {
    const late = LATE[id];
    if (!late) return null;
    if (!made.has(id)) made.set(id, lateScript(late));
    const { source, fileName } = await made.get(id);
    const file = this.emitFile({ type: 'asset', fileName, source });
    return isClassic
      ? // The address is known only while the script runs, not later when somebody presses a button.
        `const from = document.currentScript?.src;
         export const ${late.asks} = () => import(new URL('${fileName}', from).href);`
      : `export const ${late.asks} = () => import(import.meta.ROLLUP_FILE_URL_${file});`;
  },
});

/** Writes `let` for `const`, to save bytes. It is safe: an assignment to a constant would not have compiled. */
const letForConst = {
  name: 'let-for-const',
  renderChunk(code) {
    const edits = [];
    walk(this.parse(code), ({ type, kind, start }) => {
      if (type === 'VariableDeclaration' && kind === 'const')
        edits.push({ start, end: start + 5, by: 'let' });
    });
    return { code: edited(code, edits), map: null };
  },
};

const smallest = () =>
  terser({
    ecma: 2022,
    module: true,
    toplevel: true,
    compress: {
      passes: 2,
      inline: 1,
      keep_fargs: false,
      pure_funcs: ['Array.from', 'BigInt'],
      unsafe_arrows: true,
      unsafe_methods: true,
    },
    format: { comments: /^(!|# all)/ },
  });

/** TypeScript to the smallest JavaScript, with Lit and fraction.js inside. */
export const bundling = () => [
  forBundles,
  typescript(),
  nodeResolve({ extensions: ['.ts', '.mjs', '.js'], exportConditions: ['production'] }),
  slimFraction(),
  slimLit(),
  inLayers(),
  letForConst,
  smallest(),
];

/** TypeScript to JavaScript, one module for each file. Libraries stay outside. */
export const unbundling = () => [typescript()];

/** All chunks that a script imports, by what Rollup made. */
const chunksOf = ({ imports }, made) => [
  ...new Set(imports.flatMap((name) => [name, ...chunksOf(made[name], made)])),
];

/** Writes the loader beside the elements' scripts, with the chunks that each of them needs. */
export const loaderBeside = ({ input, name, banner }) => ({
  name: 'loader-beside',
  // Only once it is written are the chunks' names, which follow what is in them, known.
  async writeBundle({ dir }, made) {
    const entries = Object.values(made).filter(({ isEntry }) => isEntry);
    const needs = Object.fromEntries(entries.map((entry) => [entry.name, chunksOf(entry, made)]));
    const bundle = await rollup({ input, plugins: [typescript(), letForConst, smallest()] });
    const intro = `const CHUNKS = ${JSON.stringify(needs)};`;
    await bundle.write({ dir, banner, intro, entryFileNames: `${name}.js` });
  },
});

/** The exports of the modules, loaded in this process with Lit's own substitute for the page. */
export const loaded = async (paths) => {
  const id = 'loaded';
  const code = paths.map((path) => `export * from ${JSON.stringify(resolve(path))};`).join('\n');
  const plugins = [inline(id, code), typescript(), nodeResolve({ exportConditions: ['node', 'production'] })];
  const bundle = await rollup({ input: id, plugins, logLevel: 'silent' });
  const { output } = await bundle.generate({ inlineDynamicImports: true });
  return import(`data:text/javascript;base64,${Buffer.from(output[0].code).toString('base64')}`);
};

/** Makes `id` a module with this code, for a bundle whose entry is not a file. */
export const inline = (id, code) => ({
  name: 'inline',
  resolveId: (source) => (source === id ? { id, moduleSideEffects: true } : null),
  load: (source) => (source === id ? code : null),
});

const SCRIPT = /<script type="module" src="(\.[^"]+)"><\/script>\s*/g;
const STYLE = /<link rel="stylesheet" href="(\.[^"]+)" ?\/?>/g;

/** Escapes text that would end or nest a script inside HTML. */
const insideHtml = (code) => code.replace(/<(?=\/script|script|!--)/gi, '\\x3c');

/**
 * Takes an HTML page as the entry and bundles its module scripts as one. It writes the page with that script and its stylesheets
 * inside, so that the page works from disk.
 */
export const standalonePage = () => ({
  name: 'standalone-page',
  load(id) {
    if (!id.endsWith('.html')) return null;
    const scripts = Array.from(readFileSync(id, 'utf8').matchAll(SCRIPT), ([, path]) => path);
    return scripts.map((path) => `import ${JSON.stringify(path.replace(/\.ts$/, '.js'))};`).join('\n');
  },
  generateBundle(_, bundle) {
    for (const chunk of Object.values(bundle)) {
      if (chunk.type !== 'chunk' || !chunk.facadeModuleId?.endsWith('.html')) continue;
      const code = insideHtml(chunk.code.trim());
      this.parse(code);
      const page = readFileSync(chunk.facadeModuleId, 'utf8');
      const style = (_, path) =>
        `<style>${shorterCss(readFileSync(resolve(dirname(chunk.facadeModuleId), path), 'utf8'))}</style>`;
      const source = page
        .replace(SCRIPT, '')
        .replace(STYLE, style)
        .replace('</body>', () => `<script type="module">${code}</script>\n</body>`);
      delete bundle[chunk.fileName];
      this.emitFile({ type: 'asset', fileName: `${chunk.name}.html`, source });
    }
  },
});
