import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import { bundling, inline, standalonePage } from './tests/tools/bundle.mjs';

const BANNER =
  '/*! quilt-reckoner: MIT. Inside: lit, BSD-3-Clause; fraction.js, MIT. See third-party-licenses.txt */';

/** One script for each folder of src/elements/. */
const elements = Object.fromEntries(
  readdirSync('src/elements')
    .filter((name) => existsSync(`src/elements/${name}/define.ts`))
    .sort()
    .map((name) => [`quilt-${name}`, `src/elements/${name}/define.ts`]),
);

const run = (program, ...words) =>
  execFileSync(process.execPath, [`node_modules/${program}`, ...words], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });

/** Writes what stands beside the scripts: types, the manifest of elements, the page for frames, and the licences of what is inside. */
const writeBeside = (folder) => {
  for (const name of ['frame.html', 'frame.css', 'frame.js'])
    writeFileSync(`${folder}/${name}`, readFileSync(`demo/${name}`, 'utf8').replaceAll('../dist/', './'));
  run('typescript/bin/tsc', '-p', 'tests/config/tsconfig.declarations.json', '--outDir', `${folder}/types`);
  const manifest = ['--config', 'tests/config/manifest.config.mjs', '--outdir', relative('.', folder)];
  run('@custom-elements-manifest/analyzer/cem.js', 'analyze', '--quiet', ...manifest);
  const licence = (name) => `${name}\n\n${readFileSync(`node_modules/${name}/LICENSE`, 'utf8').trim()}\n`;
  writeFileSync(`${folder}/third-party-licenses.txt`, ['lit', 'fraction.js'].map(licence).join('\n\n'));
};

/** `rollup -c` writes dist/; `rollup -c --configOut=FOLDER` writes the same elsewhere. */
export default ({ configOut: out = 'dist' }) => {
  // Everything is written aside first, so that a build that fails leaves the last one as it was.
  const folder = mkdtempSync(join(tmpdir(), 'quilt-reckoner-build-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  const finish = {
    name: 'finish',
    writeBundle() {
      writeBeside(folder);
      rmSync(out, { recursive: true, force: true });
      cpSync(folder, out, { recursive: true });
    },
  };

  const bundle = (input, output = {}, ...plugins) => ({
    input,
    output: { dir: folder, banner: BANNER, ...output },
    plugins: [...plugins, ...bundling()],
    onwarn: ({ message }) => {
      throw new Error(message);
    },
  });
  const classic = 'quilt-reckoner.classic';
  const everything = `import ${JSON.stringify(resolve('src/index.ts'))}`;
  return [
    bundle(elements, { chunkFileNames: 'chunks/[name]-[hash].js' }),
    bundle({ 'quilt-reckoner': 'src/index.ts' }),
    bundle({ reckon: 'src/reckon.ts' }),
    bundle({ [classic]: classic }, { format: 'iife' }, inline(classic, everything)),
    bundle({ quick: 'demo/quick.html' }, {}, standalonePage(), finish),
  ];
};
