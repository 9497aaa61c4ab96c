import { readdirSync } from 'node:fs';
import { packInto } from './consumer.mjs';
import buildIfStale from './fresh-dist.mjs';
import { packageSucceedsBeside, ROOT } from './run.mjs';

/** What the packed package is checked with, each by the tarball in the folder. It is ESM only: `require` needs Node 20.19. */
export const packageChecks = (folder) => {
  buildIfStale();
  const tarball = packInto(folder);
  // Patterns of package.json that a program cannot list by itself.
  const entries = readdirSync(`${ROOT}src/elements`).flatMap((name) => [name, `${name}/class`]);
  const words = ['--profile', 'esm-only', '--format', 'table-flipped', '--include-entrypoints', ...entries];
  return [
    () => packageSucceedsBeside('publint/src/cli.js', ['run', tarball, '--strict']),
    () => packageSucceedsBeside('@arethetypeswrong/cli/dist/index.js', [tarball, ...words]),
  ];
};
