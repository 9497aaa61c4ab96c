import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CALCULATORS } from './calculators.js';
import { SHEETS } from './hosts/hostile-pages.js';
import { ROOT } from './tools/run.mjs';

const read = (file: string): string => readFileSync(ROOT + file, 'utf8');
const has = (file: string): boolean => existsSync(ROOT + file);
/** All folders but those of the elements that hold calculators, or are held beside them. */
const FOLDERS = readdirSync(`${ROOT}src/elements`).filter((name) => !['fabric', 'worksheet'].includes(name));
const RECKONING = readdirSync(`${ROOT}src/calculators`).filter((name) => !name.endsWith('.ts'));
/** What the folder of a calculator holds at least. */
const FILES = ['shape', 'reckon', 'draw'];

/** Every place that names each calculator, by what has to stand there. */
const PLACES: [place: string, has: (name: string) => boolean][] = [
  ...FILES.map((file): [string, (name: string) => boolean] => [
    `src/calculators/NAME/${file}.ts`,
    (name) => has(`src/calculators/${name}/${file}.ts`),
  ]),
  ['src/calculators/NAME/NAME.ts', (name) => has(`src/calculators/${name}/${name}.ts`)],
  ['src/words/en/NAME.ts', (name) => has(`src/words/en/${name}.ts`)],
  ['a line in src/words/language.ts', (name) => read('src/words/language.ts').includes(`/en/${name}.js`)],
  ['src/elements/NAME/define.ts', (name) => has(`src/elements/${name}/define.ts`)],
  ['a line in src/index.ts', (name) => read('src/index.ts').includes(`/elements/${name}/define.js`)],
  ['a line in src/reckon.ts', (name) => read('src/reckon.ts').includes(`/calculators/${name}/${name}.js`)],
  ['tests/reckon/NAME.test.ts', (name) => has(`tests/reckon/${name}.test.ts`)],
  ['tests/elements/NAME/', (name) => has(`tests/elements/${name}`)],
  ['an entry in tests/calculators.ts', (name) => name in CALCULATORS],
  ['one of EACH in tests/hosts/hostile-pages.ts', (name) => SHEETS.includes(`<quilt-${name}`)],
  [
    'a tile in demo/embed.html',
    (name) => read('demo/embed.html').includes(`name="calculator" value="${name}"`),
  ],
  ['an entry of STARTS in demo/embed.js', (name) => read('demo/embed.js').includes(`\n  ${name}: { alone: `)],
  ['a part of README.md with a snippet', (name) => read('README.md').includes(`<quilt-${name}`)],
  [
    'a section of demo/elements.html with an example',
    (name) => read('demo/elements.html').includes(`<section class="element" id="quilt-${name}">`),
  ],
];

describe('a calculator', () => {
  it.each(FOLDERS)('%s stands wherever calculators are named', (name) => {
    const missing = PLACES.filter(([, has]) => !has(name)).map(([place]) => place.replace('NAME', name));
    expect(missing, `quilt-${name} still needs`).toEqual([]);
  });

  it('that is gone is named no more', () => {
    expect(RECKONING.filter((name) => !FOLDERS.includes(name))).toEqual([]);
    expect(Object.keys(CALCULATORS).filter((name) => !FOLDERS.includes(name))).toEqual([]);
  });
});
