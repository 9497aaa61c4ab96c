import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { snippetsIn } from '../hosts/snippets.js';
import { ROOT } from '../tools/run.mjs';
import { ELEMENTS } from './manifest.js';

const readme = readFileSync(`${ROOT}README.md`, 'utf8');
const snippets = snippetsIn('README.md', readme).map(({ code }) => code);

describe('README', () => {
  it.each(ELEMENTS.map(({ tagName }) => tagName))('has a snippet of %s, and leads to all it takes', (tag) => {
    expect(snippets.filter((code) => code.includes(`<${tag}`)).length).toBeGreaterThan(0);
    expect(readme).toContain(`](demo/elements.html#${tag})`);
  });

  it('writes only attributes that the elements take', () => {
    const written = snippets.flatMap((code) =>
      [...code.matchAll(/<(quilt-[a-z]+)([^>]*)>/g)].flatMap(([, tag = '', attributes = '']) =>
        [...attributes.matchAll(/ ([a-z-]+)(?==|\s|$)/g)].map(([, name = '']) => [tag, name] as const),
      ),
    );
    expect(written.length).toBeGreaterThan(ELEMENTS.length);
    const taken = (tag: string): string[] =>
      ELEMENTS.find(({ tagName }) => tagName === tag)?.attributes.map(({ name }) => name) ?? [];
    expect(written.filter(([tag, name]) => !taken(tag).includes(name))).toEqual([]);
  });

  it('is short', () => {
    expect(readme.split(/\s+/).length).toBeLessThan(1000);
  });
});
