import { readdirSync } from 'node:fs';
import { packInto } from './consumer.mjs';
import buildIfStale from './fresh-dist.mjs';
import { packageSucceedsBeside, ROOT } from './run.mjs';

/** The checks of the packed package in the folder. It has ES modules only: `require` needs Node 20.19. */
export const packageChecks = async (folder) => {
  await buildIfStale();
  const tarball = packInto(folder);
  // The programs cannot list the patterns of package.json themselves.
  const entries = readdirSync(`${ROOT}src/elements`).flatMap((name) => [name, `${name}/class`]);
  const languages = ['words/de', 'words/en-gb'];
  const words = [
    '--profile',
    'esm-only',
    '--format',
    'table-flipped',
    '--include-entrypoints',
    ...entries,
    ...languages,
  ];
  return [
    () => packageSucceedsBeside('publint/src/cli.js', ['run', tarball, '--strict']),
    () => packageSucceedsBeside('@arethetypeswrong/cli/dist/index.js', [tarball, ...words]),
  ];
};
