import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { filesIn } from './tools/files.mjs';
import { ROOT } from './tools/run.mjs';

const read = (file: string): string => readFileSync(ROOT + file, 'utf8');
const FILES = ['rollup.config.mjs', ...['src', 'tests', 'demo', 'dist'].flatMap((folder) => filesIn(folder))];

/** The anchor that a heading gets: small letters, hyphens for spaces, no other signs. */
const anchorOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');
/** The anchors of a document, or those that a page has before its scripts run. */
const anchorsIn = (file: string): string[] =>
  file.endsWith('.html')
    ? [...read(file).matchAll(/ id="([^"]+)"/g)].map(([, id = '']) => id)
    : [...read(file).matchAll(/^#+ (.+)$/gm)].map(([, heading = '']) => anchorOf(heading));

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (document) => {
  const text = read(document);

  it('links to files and headings that are there', () => {
    const broken = [...text.matchAll(/\]\(([^)\s]+)\)/g)]
      .map(([, link = '']) => link)
      .filter((link) => !link.startsWith('https:'))
      .filter((link) => {
        const [file, anchor] = link.split('#');
        const target = file || document;
        return !existsSync(ROOT + target) || (anchor && !anchorsIn(target).includes(anchor));
      });
    expect(broken).toEqual([]);
  });

  it('names commands that package.json has', () => {
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
    const named = [...text.matchAll(/npm run ([\w-]+)/g)].map(([, name = '']) => name);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });

  it('names files that are there', () => {
    const named = [...text.matchAll(/`((?:[\w.-]+\/)*[\w-]+(?:\.[\w-]+)*\.(?:ts|mjs|js|html))`/g)]
      .map(([, name = '']) => name)
      .filter((name) => !name.includes('NAME'));
    const missing = named.filter((name) => !FILES.some((file) => `/${file}`.endsWith(`/${name}`)));
    expect(missing).toEqual([]);
  });
});
