import { execFile, spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { once } from './once.mjs';
import { ROOT } from './run.mjs';

/** Every element with all its attributes, each written by `write`. */
const everything = (write) =>
  JSON.parse(readFileSync(`${ROOT}dist/custom-elements.json`, 'utf8'))
    .modules.flatMap(({ declarations }) => declarations.filter(({ tagName }) => tagName))
    .map(({ tagName, attributes = [] }) => {
      const written = attributes.map(({ name, fieldName = name, type }) => {
        const [, choice = '1'] = /'([^']+)'/.exec(type.text) ?? [];
        return write({ name, fieldName }, type.text === 'boolean' ? '' : choice);
      });
      return `<${tagName} ${written.join(' ')} />`;
    })
    .join('\n');
const inReact = (key, value) => (value ? `${key}="${value}"` : key);
const inVue = (key, value) => (value ? `${key}="${value}"` : `:${key}="true"`);

/** For each project: the folder of its built pages, and what is added to its sources for the type check. */
const PROJECTS = {
  html: { out: '' },
  react: {
    out: 'dist',
    added: () => [
      'src/every.tsx',
      `export const every = <>${everything(({ name }, value) => inReact(name, value))}
  ${everything(({ fieldName }, value) => inReact(fieldName, value))}</>;\n`,
    ],
  },
  vue: {
    out: 'dist',
    added: () => [
      'src/Every.vue',
      `<template>${everything(({ name }, value) => inVue(name, value))}</template>\n`,
    ],
  },
  site: { out: '_site' },
};

/** The environment without the test runner's settings, which would make a bundler build for tests. */
const env = { ...process.env };
delete env.NODE_ENV;

const settings = { env, encoding: 'utf8', shell: process.platform === 'win32' };

/** Runs npm, and throws its output if it fails. */
const npm = (words, cwd) => {
  const { status, stdout, stderr } = spawnSync('npm', words, { cwd, ...settings });
  if (status !== 0) throw new Error(`npm ${words.join(' ')}\n${stdout}\n${stderr}`);
  return stdout.trim();
};

/** Runs the project's own build without blocking, so that other pages can be served meanwhile. */
const buildIn = (folder) =>
  promisify(execFile)('npm', ['run', '--silent', 'build'], { cwd: folder, ...settings }).catch(
    ({ message, stdout }) => {
      throw new Error(`${message}\n${stdout}`);
    },
  );

/** Packs the project into a folder, as `npm publish` does. Returns the path of the tarball. */
export const packInto = (folder) =>
  join(folder, npm(['pack', '--silent', '--ignore-scripts', '--pack-destination', folder], ROOT));

/** Unpacks an npm tarball into the folder. */
const unpack = (tarball, folder) => {
  mkdirSync(folder, { recursive: true });
  const words = ['-xzf', tarball, '-C', folder, '--strip-components=1'];
  if (spawnSync('tar', words, { stdio: 'inherit' }).status !== 0)
    throw new Error(`tar cannot unpack ${tarball}`);
};

const namesIn = (folder, ...keys) => {
  const manifest = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
  return keys.flatMap((key) => Object.keys(manifest[key] ?? {}));
};

/** Makes a package of this project available in the folder too. */
const link = (name, folder) => {
  const target = `${folder}/node_modules/${name}`;
  if (existsSync(target)) return;
  mkdirSync(dirname(target), { recursive: true });
  symlinkSync(`${ROOT}node_modules/${name}`, target, 'junction');
};

/**
 * Projects of other people that use the packed package, as npm would install it: with what their package.json names, and nothing
 * else. They are deleted when the process ends.
 */
export const consumers = () => {
  const place = mkdtempSync(join(tmpdir(), 'quilt-reckoner-consumers-'));
  process.once('exit', () => rmSync(place, { recursive: true, force: true }));
  const tarball = packInto(place);
  /**
   * Copies a project of tests/consumers/, installs the package, and runs the project's own build, type checks and all.
   * @param {keyof typeof PROJECTS} name
   * @returns {Promise<string>} the folder with its pages
   */
  const make = async (name) => {
    const folder = join(place, name);
    const { out, added } = PROJECTS[name];
    cpSync(`${ROOT}tests/consumers/${name}`, folder, { recursive: true });
    if (added) {
      const [path, text] = added();
      writeFileSync(join(folder, path), text);
    }
    const installed = `${folder}/node_modules/quilt-reckoner`;
    unpack(tarball, installed);
    const wanted = [
      ...namesIn(folder, 'dependencies', 'devDependencies'),
      ...namesIn(installed, 'dependencies'),
    ];
    for (const each of [...wanted, '.bin']) link(each, folder);
    await buildIn(folder);
    return join(folder, out);
  };

  /**
   * The folder with a project's pages, built when it is first asked for.
   * @param {keyof typeof PROJECTS} name
   * @returns {Promise<string>}
   */
  return once(make);
};
