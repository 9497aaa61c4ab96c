import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import { getWebTypesData } from 'custom-element-jet-brains-integration';
import { getVsCodeCssCustomData, getVsCodeHtmlCustomData } from 'custom-element-vs-code-integration';
import { filesIn } from './files.mjs';
import { frameworkTypes } from './framework-types.mjs';

const run = (program, ...words) =>
  execFileSync(process.execPath, [`node_modules/${program}`, ...words], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });

/** The hash of a script, for `integrity`. */
const hashOf = (code) => `sha384-${createHash('sha384').update(code).digest('base64')}`;

/** Every script for copying, by its path in dist/. */
const integrityOf = (folder) =>
  ['.', 'chunks']
    .flatMap((inner) => filesIn(inner, folder).filter((path) => path.split('/').length === 2))
    .map((path) => path.replace('./', ''))
    .filter((path) => path.endsWith('.js'))
    .reduce((all, path) => ({ ...all, [path]: hashOf(readFileSync(`${folder}/${path}`)) }), {});

/** The generator lists a property for every element that has it. */
const eachOnce = (data) => ({
  ...data,
  properties: [...new Map(data.properties.map((property) => [property.name, property])).values()],
});

const LICENSED = ['lit', 'fraction.js', 'write-excel-file', 'fflate'];
// A licence may have other line ends, and Git would change them.
const licenceOf = (name) =>
  `${name}\n\n${readFileSync(`node_modules/${name}/LICENSE`, 'utf8').replaceAll('\r\n', '\n').trim()}\n`;

/** The page for a frame on another site, with paths to the scripts beside it. */
const FRAME = ['frame.html', 'frame.css', 'frame.js'];

/** Writes the files beside the scripts: the frame's page, types, data for editors, hashes, and the licences of the libraries inside. */
export const writeBeside = (folder) => {
  const write = (name, text) => writeFileSync(`${folder}/${name}`, text);
  const json = (value) => `${JSON.stringify(value, null, 2)}\n`;

  for (const name of FRAME) write(name, readFileSync(`demo/${name}`, 'utf8').replaceAll('../dist/', './'));
  run('typescript/bin/tsc', '-p', 'tests/config/tsconfig.declarations.json', '--outDir', `${folder}/types`);
  const manifestWords = ['--config', 'tests/config/manifest.config.mjs', '--outdir', relative('.', folder)];
  run('@custom-elements-manifest/analyzer/cem.js', 'analyze', '--quiet', ...manifestWords);
  const manifest = () => JSON.parse(readFileSync(`${folder}/custom-elements.json`, 'utf8'));

  const quiet = { hideLogs: true, packageJson: false };
  write('vscode.html-custom-data.json', json(JSON.parse(getVsCodeHtmlCustomData(manifest(), quiet))));
  write('vscode.css-custom-data.json', json(eachOnce(JSON.parse(getVsCodeCssCustomData(manifest(), quiet)))));
  write('web-types.json', json(JSON.parse(getWebTypesData(manifest(), quiet))));

  for (const [name, text] of Object.entries(frameworkTypes(manifest()))) write(`types/${name}.d.ts`, text);
  for (const name of ['react', 'vue']) write(`modules/${name}.js`, 'export {};\n');
  write('integrity.json', json(integrityOf(folder)));
  write('third-party-licenses.txt', LICENSED.map(licenceOf).join('\n\n'));
};
