import { spawnSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import { rollup } from 'rollup';
import { ROOT } from './run.mjs';
import { toJavaScript } from './typescript.mjs';

/**
 * The sources as modules, one for each file and without Lit inside, for a server or another bundler. The folder is deleted when
 * the process ends.
 */
export const compiledModules = () => {
  const folder = mkdtempSync(join(tmpdir(), 'quilt-modules-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  const sources = readdirSync(`${ROOT}src`, { recursive: true, encoding: 'utf8' });
  const paths = sources.filter((path) => path.endsWith('.ts')).map((path) => path.replace(/\.ts$/, '.js'));
  for (const path of paths) {
    const source = `${ROOT}src/${path.replace(/\.js$/, '.ts')}`;
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), toJavaScript(readFileSync(source, 'utf8'), source));
  }
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  symlinkSync(`${ROOT}node_modules`, join(folder, 'node_modules'), 'junction');
  return { folder, paths };
};

/** Runs a module in its own Node process, without any globals of ours. Returns what it printed. */
export const inFreshNode = (folder, code, input = '') => {
  const words = ['--input-type=module', '--eval', code];
  const { stdout, stderr } = spawnSync(process.execPath, words, { cwd: folder, input, encoding: 'utf8' });
  return { stdout, stderr };
};

const RENDER = `
import { readFileSync } from 'node:fs';
import { html, render } from '@lit-labs/ssr';
import { collectResultSync } from '@lit-labs/ssr/lib/render-result.js';
import './index.js';
import { writeWhole } from './server.js';
const { markup, isWhole } = JSON.parse(readFileSync(0, 'utf8'));
const written = Object.assign([markup], { raw: [markup] });
const write = () => collectResultSync(render(html(written)));
process.stdout.write(isWhole ? writeWhole(write) : write());
`;

/** What a server with the compiled modules makes of this HTML; with `isWhole`, of its worksheets too. */
export const renderedOnServer = (folder, markup, isWhole = false) => {
  const { stdout, stderr } = inFreshNode(folder, RENDER, JSON.stringify({ markup, isWhole }));
  if (stderr) throw new Error(stderr);
  return stdout;
};

/** One browser script of the compiled modules, made by another bundler. */
export const scriptOf = async (folder, ...imports) => {
  const entry = join(folder, `entry-${imports.join('-').replace(/[^a-z]+/g, '-')}.js`);
  writeFileSync(entry, imports.map((path) => `import ${JSON.stringify(path)};`).join('\n'));
  const bundle = await rollup({
    input: entry,
    preserveSymlinks: true,
    plugins: [nodeResolve({ browser: true, exportConditions: ['production'] })],
    logLevel: 'silent',
  });
  const { output } = await bundle.generate({});
  return output[0].code;
};
