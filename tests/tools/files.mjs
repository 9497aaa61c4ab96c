import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './run.mjs';

/**
 * All files in a folder, or the file itself, by their paths from the project's folder, sorted.
 * @param {string} path
 * @returns {string[]}
 */
export const filesIn = (path, root = ROOT) => {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path];
  return readdirSync(full)
    .sort()
    .flatMap((name) => filesIn(`${path}/${name}`, root));
};
