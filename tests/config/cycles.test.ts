import { readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { expect, it } from 'vitest';
import { filesIn } from '../tools/files.mjs';
import { ROOT } from '../tools/run.mjs';

const sources = filesIn('src').filter((path) => path.endsWith('.ts'));

/** What each file imports of the others, types too. */
const imports = new Map(
  sources.map((path) => {
    const text = readFileSync(join(ROOT, path), 'utf8');
    const named = [...text.matchAll(/(?:from|import)\s*\(?'(\.[^']+)\.js'/g)].map(([, to]) => to!);
    return [path, named.map((to) => `${normalize(join(dirname(path), to))}.ts`)];
  }),
);

/** A way from a file back to it, if there is one. */
const circleFrom = (start: string): string[] | undefined => {
  const seen = new Set<string>();
  const search = (path: string, way: string[]): string[] | undefined => {
    for (const next of imports.get(path) ?? []) {
      if (next === start) return [...way, next];
      if (seen.has(next)) continue;
      seen.add(next);
      const found = search(next, [...way, next]);
      if (found) return found;
    }
    return undefined;
  };
  return search(start, [start]);
};

it('no file imports itself by way of others, types included', () => {
  expect(sources.length).toBeGreaterThan(50);
  expect(sources.flatMap((path) => circleFrom(path)?.join(' → ') ?? [])).toEqual([]);
});
