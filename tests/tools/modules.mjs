import { spawn, spawnSync } from 'node:child_process';
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
import { createInterface } from 'node:readline';
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
export const inFreshNode = (folder, code) => {
  const words = ['--input-type=module', '--eval', code];
  const { stdout, stderr } = spawnSync(process.execPath, words, { cwd: folder, encoding: 'utf8' });
  return { stdout, stderr };
};

const SERVE = `
import { createInterface } from 'node:readline';
import { html, render } from '@lit-labs/ssr';
import { collectResultSync } from '@lit-labs/ssr/lib/render-result.js';
import './index.js';
import { writeWhole } from './server.js';
let said = '';
process.stderr.write = (text) => { said += text; return true; };
for await (const line of createInterface({ input: process.stdin })) {
  const { markup, isWhole } = JSON.parse(line);
  const written = Object.assign([markup], { raw: [markup] });
  const write = () => collectResultSync(render(html(written)));
  let page = '';
  try { page = isWhole ? writeWhole(write) : write(); } catch (error) { console.error(error); }
  console.log(JSON.stringify({ page, said }));
  said = '';
}
`;

/**
 * A server with the compiled modules, which writes one page after another, each as if it were the first. It ends with this process.
 * @param {string} folder
 * @returns {(markup: string, isWhole?: boolean) => Promise<string>} what it makes of this HTML; with `isWhole`, of its worksheets too
 */
export const startServer = (folder) => {
  const server = spawn(process.execPath, ['--input-type=module', '--eval', SERVE], {
    cwd: folder,
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const answers = createInterface({ input: server.stdout })[Symbol.asyncIterator]();
  let last = Promise.resolve();
  return (markup, isWhole = false) => {
    const ask = async () => {
      server.stdin.write(`${JSON.stringify({ markup, isWhole })}\n`);
      const { page, said } = JSON.parse((await answers.next()).value);
      if (said) throw new Error(said);
      return page;
    };
    const asked = last.then(ask);
    last = asked.catch(() => undefined);
    return asked;
  };
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
