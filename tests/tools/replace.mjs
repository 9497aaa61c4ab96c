import { cpSync, existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { filesIn } from './files.mjs';

const isSame = (one, other) => existsSync(other) && readFileSync(one).equals(readFileSync(other));

/**
 * Makes a folder what another one is, file by file. A file that is the same is not touched, so whoever reads it meanwhile finds it whole.
 * @param {string} folder
 * @param {string} by
 */
export const replaceFolder = (folder, by) => {
  const wanted = filesIn('.', by);
  for (const path of filesIn('.', folder)) if (!wanted.includes(path)) rmSync(join(folder, path));
  for (const path of wanted) {
    const [from, to] = [join(by, path), join(folder, path)];
    if (isSame(from, to)) continue;
    mkdirSync(dirname(to), { recursive: true });
    cpSync(from, to);
  }
};
