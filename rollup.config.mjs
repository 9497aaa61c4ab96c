import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { writeBeside } from './tests/tools/beside.mjs';
import {
  bundling,
  inline,
  lateBeside,
  loaderBeside,
  standalonePage,
  unbundling,
} from './tests/tools/bundle.mjs';
import { noteFresh } from './tests/tools/fresh-dist.mjs';
import { replaceFolder } from './tests/tools/replace.mjs';

const BANNER =
  '/*! quilt-reckoner: MIT. Inside: lit, BSD-3-Clause; fraction.js, MIT. See third-party-licenses.txt */';

/**
 * Chrome makes the functions of such a script ready while it loads, on another thread, and not one by one as each is first called.
 * Elsewhere it is a comment.
 */
const FOR_PAGES = `//# allFunctionsCalledOnLoad\n${BANNER}`;

/** One script for each folder of src/elements/. */
const elements = Object.fromEntries(
  readdirSync('src/elements')
    .filter((name) => existsSync(`src/elements/${name}/define.ts`))
    .sort()
    .map((name) => [`quilt-${name}`, `src/elements/${name}/define.ts`]),
);

/** What every calculator needs, in one chunk: each file is compressed by itself, and few compress better than many. */
const SHARED =
  /node_modules|src\/(measure|ledger\/(?!strips|strip-list|rough|bed)|face\/(?!background|planning|list-face|grid|table|picture-file)|words\/(?!en\/)|words\/en\/(common|face|english)|planner\/joins)/;

/** `rollup -c` writes dist/; `rollup -c --configOut=FOLDER` writes the same elsewhere. */
export default ({ configOut: out = 'dist' }) => {
  // Everything is written aside first, so that a build that fails leaves the last one as it was.
  const folder = mkdtempSync(join(tmpdir(), 'quilt-reckoner-build-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  const finish = {
    name: 'finish',
    writeBundle() {
      writeBeside(folder);
      replaceFolder(out, folder);
      if (out === 'dist') noteFresh();
    },
  };

  const onwarn = ({ message }) => {
    throw new Error(message);
  };
  const bundle = (input, output = {}, ...plugins) => ({
    input,
    output: { dir: folder, banner: FOR_PAGES, ...output },
    plugins: [...plugins, ...bundling()],
    onwarn,
  });
  /** What npm users' own bundlers take apart: a module a file, Lit and fraction.js left to them. */
  const modules = {
    input: [
      ...['src/index.ts', 'src/reckon.ts', 'src/server.ts'],
      ...['src/words/de/de.ts', 'src/words/en-gb/en-gb.ts'],
    ],
    external: /^[^./]/,
    output: {
      dir: `${folder}/modules`,
      preserveModules: true,
      preserveModulesRoot: 'src',
      entryFileNames: '[name].js',
    },
    plugins: unbundling(),
    onwarn,
  };
  const classic = 'quilt-reckoner.classic';
  const everything = `import ${JSON.stringify(resolve('src/index.ts'))}`;
  return [
    modules,
    bundle(
      elements,
      {
        chunkFileNames: 'chunks/[name]-[hash].js',
        manualChunks: (id) => (SHARED.test(id) ? 'sheet' : undefined),
      },
      lateBeside(),
      loaderBeside({ input: 'src/loader.ts', name: 'quilt-loader', banner: '/*! quilt-reckoner: MIT */' }),
    ),
    bundle({ 'quilt-reckoner': 'src/index.ts' }, {}, lateBeside()),
    // A server would make ready what it never calls.
    bundle({ reckon: 'src/reckon.ts' }, { banner: BANNER }),
    bundle(
      { [classic]: classic },
      { format: 'iife' },
      lateBeside({ isClassic: true }),
      inline(classic, everything),
    ),
    // One page has all inside, and works from disk.
    bundle(
      { quick: 'demo/quick.html' },
      {
        inlineDynamicImports: true,
        banner: BANNER.replace('. See', '; write-excel-file, MIT; fflate, MIT. See'),
      },
      standalonePage(),
      finish,
    ),
  ];
};
