import { spawnSync } from 'node:child_process';
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
import { ROOT } from './run.mjs';

/** A test runner's own settings would make a bundler build for tests. */
const env = { ...process.env };
delete env.NODE_ENV;

/** Runs npm, and throws what it said where that ended badly. */
const npm = (words, cwd) => {
  const { status, stdout, stderr } = spawnSync('npm', words, {
    cwd,
    env,
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });
  if (status !== 0) throw new Error(`npm ${words.join(' ')}\n${stdout}\n${stderr}`);
  return stdout.trim();
};

/** Packs the project as `npm publish` does, into a folder; tells the tarball's path. */
export const packInto = (folder) =>
  join(folder, npm(['pack', '--silent', '--ignore-scripts', '--pack-destination', folder], ROOT));

/** Unpacks a tarball of npm's, so that the folder holds what it installs. */
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

/** Makes a package that is installed in the project the folder's own too. */
const link = (name, folder) => {
  const target = `${folder}/node_modules/${name}`;
  if (existsSync(target)) return;
  mkdirSync(dirname(target), { recursive: true });
  symlinkSync(`${ROOT}node_modules/${name}`, target, 'junction');
};

/**
 * A place where other people's projects use the packed package, as npm would have installed it: with what the package
 * and the project name in their package.json, and nothing else.
 */
export const consumers = () => {
  const place = mkdtempSync(join(tmpdir(), 'quilt-reckoner-consumers-'));
  const tarball = packInto(place);

  /**
   * Copies a project of tests/consumers/, adds files to it, installs the package, and runs the project's own build.
   * @param {string} name
   * @param {Record<string, string>} [files]
   * @returns {string} the folder
   */
  const consumer = (name, files = {}) => {
    const folder = join(place, name);
    cpSync(`${ROOT}tests/consumers/${name}`, folder, { recursive: true });
    for (const [path, text] of Object.entries(files)) writeFileSync(join(folder, path), text);
    const installed = `${folder}/node_modules/quilt-reckoner`;
    unpack(tarball, installed);
    const wanted = [
      ...namesIn(folder, 'dependencies', 'devDependencies'),
      ...namesIn(installed, 'dependencies'),
    ];
    for (const each of [...wanted, '.bin']) link(each, folder);
    npm(['run', '--silent', 'build'], folder);
    return folder;
  };
  const remove = () => rmSync(place, { recursive: true, force: true });
  return { consumer, remove };
};
