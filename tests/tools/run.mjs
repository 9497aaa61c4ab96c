import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The project's folder, with a slash at its end. */
export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const pathOf = (path) => `${ROOT}node_modules/${path}`;

/** Runs a program in the project's folder, shows its output, and returns whether it succeeded. */
const succeeds = (program, words) =>
  spawnSync(program, words, {
    cwd: ROOT,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: program === 'npm' && process.platform === 'win32',
  }).status === 0;

/**
 * The same for the program of an installed package, beside other programs. It shows the output at the end, so that the output of two
 * programs does not mix.
 * @param {string} path
 * @param {string[]} words
 * @param {Record<string, string>} [env]
 * @returns {Promise<boolean>}
 */
export const packageSucceedsBeside = (path, words, env = {}) =>
  new Promise((resolve) => {
    const said = [];
    const child = spawn(process.execPath, [pathOf(path), ...words], {
      cwd: ROOT,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, ...env },
    });
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (data) => said.push(data));
    child.once('error', (error) => said.push(Buffer.from(`${error.message}\n`)));
    child.once('close', (status) => {
      process.stdout.write(Buffer.concat(said));
      resolve(status === 0);
    });
  });
const packagesIn = (lockFile) => {
  try {
    return JSON.parse(readFileSync(ROOT + lockFile, 'utf8')).packages;
  } catch {
    return {};
  }
};

/** Installs what package-lock.json names, unless it is installed already. */
export const installPackages = () => {
  const installed = packagesIn('node_modules/.package-lock.json');
  const isMissing = ([path, { version, optional }]) =>
    path && !optional && installed[path]?.version !== version;
  if (!Object.entries(packagesIn('package-lock.json')).some(isMissing)) return;
  // No package needs its install script, and some of these scripts would download browsers.
  if (!succeeds('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund'])) process.exit(1);
};
