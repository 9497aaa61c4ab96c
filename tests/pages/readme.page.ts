import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../tools/run.mjs';

interface Attribute {
  name: string;
  default?: string;
}
interface Described {
  tagName?: string;
  attributes?: Attribute[];
}
const { modules } = JSON.parse(readFileSync(`${ROOT}dist/custom-elements.json`, 'utf8')) as {
  modules: { declarations: Described[] }[];
};
/** The attributes of each element, by its name without `quilt-`. */
const ATTRIBUTES = new Map(
  modules
    .flatMap(({ declarations }) => declarations)
    .flatMap(({ tagName, attributes = [] }) =>
      tagName ? [[tagName.replace('quilt-', ''), attributes] as const] : [],
    ),
);
const ELEMENTS = [...ATTRIBUTES.keys()].sort();

const readme = readFileSync(`${ROOT}README.md`, 'utf8');
const section = /\n### All attributes\n([^]*?)\n## /.exec(readme)?.[1] ?? '';
const rows = [...section.matchAll(/^\| `([\w-]+)` +\|[^|]*\|([^|]*)\|([^|]*)\|$/gm)].map(
  ([, name = '', start = '', users = '']) => ({ name, start: start.trim(), users: users.trim() }),
);

/** `all`, `all but top`, or names with commas. */
const elementsIn = (users: string): string[] => {
  const named = users
    .replace(/^all( but )?/, '')
    .split(/, */)
    .filter(Boolean);
  return users.startsWith('all') ? ELEMENTS.filter((name) => !named.includes(name)) : named;
};

describe('the table of attributes in README', () => {
  it('has every attribute of every element, once', () => {
    const all = [...ATTRIBUTES.values()].flat().map(({ name }) => name);
    expect(rows.map(({ name }) => name)).toEqual([...new Set(all)].sort());
  });

  it.each(rows)('says which elements take $name', ({ name, users }) => {
    const taking = ELEMENTS.filter((element) => ATTRIBUTES.get(element)?.some((one) => one.name === name));
    expect(elementsIn(users)).toEqual(taking);
  });

  it.each(rows)('says what $name starts as', ({ name, start }) => {
    const defaults = [...ATTRIBUTES.values()]
      .flat()
      .filter((attribute) => attribute.name === name)
      .map((attribute) => attribute.default)
      .filter((value): value is string => value !== undefined && value !== 'undefined');
    for (const value of defaults) expect(start).toContain(value === 'false' ? 'off' : `\`${value}\``);
  });
});
