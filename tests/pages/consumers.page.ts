import { readFileSync, readdirSync } from 'node:fs';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import { type Page } from 'puppeteer-core';
import { rollup } from 'rollup';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reckonBacking } from '../../src/reckon.js';
import { inline } from '../tools/bundle.mjs';
import { consumers } from '../tools/consumer.mjs';
import { ROOT } from '../tools/run.mjs';
import { serve } from '../tools/serve.mjs';
import { site } from './site.js';

interface Described {
  tagName?: string;
  attributes?: { name: string; fieldName?: string; type: { text: string } }[];
}
const { modules } = JSON.parse(readFileSync(`${ROOT}dist/custom-elements.json`, 'utf8')) as {
  modules: { declarations: Described[] }[];
};
const elements = modules.flatMap(({ declarations }) => declarations.filter(({ tagName }) => tagName));

/** Every element with everything that can be written on it, by its names or its properties' names. */
const everything = (
  write: (attribute: { name: string; fieldName?: string }, value: string) => string,
): string =>
  elements
    .map(({ tagName, attributes = [] }) => {
      const written = attributes.map((attribute) => {
        const [, choice = '1'] = /'([^']+)'/.exec(attribute.type.text) ?? [];
        return write(attribute, attribute.type.text === 'boolean' ? '' : choice);
      });
      return `<${tagName} ${written.join(' ')} />`;
    })
    .join('\n');

const inReact = (key: string, value: string): string => (value ? `${key}="${value}"` : key);
const everyProp = `export const every = <>${everything(({ name }, value) => inReact(name, value))}
  ${everything(({ name, fieldName }, value) => inReact(fieldName ?? name, value))}</>;\n`;
const everyInVue = `<template>${everything(({ name }, value) =>
  value ? `${name}="${value}"` : `:${name}="true"`,
)}</template>\n`;

/** Each project with the pages that its build makes, and the files added to it. */
const PROJECTS = [
  { name: 'html', pages: ['index.html', 'import-map.html'] },
  { name: 'react', out: 'dist', pages: ['index.html'], files: { 'src/every.tsx': everyProp } },
  { name: 'vue', out: 'dist', pages: ['index.html'], files: { 'src/Every.vue': everyInVue } },
  { name: 'site', out: '_site', pages: ['index.html'] },
];

const { open } = site();
let place: ReturnType<typeof consumers>;
beforeAll(() => {
  place = consumers();
});
afterAll(() => place.remove());

const bought = (page: Page): Promise<string | undefined> =>
  page.$eval('quilt-backing', (element) => {
    const { buy } = element.result;
    return buy?.text;
  });
const textIn = (page: Page, selector: string): Promise<string> =>
  page.$eval(selector, ({ textContent }) => textContent ?? '');
const toBuy = (input: { width: number; length: number }): string | undefined =>
  reckonBacking({ ...input, fabricWidth: 40 }).buy?.text;

describe.each(PROJECTS)('$name, built from the packed package', ({ name, out = '', pages, files = {} }) => {
  let server: Awaited<ReturnType<typeof serve>>;
  // The type checks of a project are part of its build.
  beforeAll(async () => {
    server = await serve(0, `${place.consumer(name, files as Record<string, string>)}/${out}`);
  }, 180_000);
  afterAll(() => server?.close());

  it.each(pages)('%s: the element follows the page, and the page hears the element', async (path) => {
    const { page, faults } = await open(`${server.address}/${path}`, { warnings: true });
    expect(faults).toEqual([]);
    await page.waitForSelector('quilt-backing:defined');
    expect(await bought(page)).toBe(toBuy({ width: 58, length: 70 }));

    await page.click('#wider');
    await page.waitForFunction(() => `${document.querySelector('quilt-backing')!.width}` === '80');
    const wider = toBuy({ width: 80, length: 70 });
    expect(wider).not.toBe(toBuy({ width: 58, length: 70 }));
    expect(await bought(page)).toBe(wider);
    await page.waitForSelector(`quilt-backing >>> strong ::-p-text(${wider})`);

    const cell = await page.waitForSelector('quilt-backing >>> #length');
    await cell!.click({ count: 3 });
    await cell!.type('100');
    const typed = toBuy({ width: 80, length: 100 })!;
    expect(typed).not.toBe(wider);
    expect(await bought(page)).toBe(typed);
    expect(await textIn(page, '#typed')).toBe(typed);
    expect(await textIn(page, '#left'), 'before the cell is left').toBe('');
    await page.keyboard.press('Tab');
    expect(await textIn(page, '#left')).toBe(await page.$eval('quilt-backing', ({ value }) => value));
    expect(await textIn(page, '#left')).not.toBe('');
    expect(faults).toEqual([]);
    await page.close();
  });
});

describe('what a bundler keeps of the packed package', () => {
  let folder: string;
  beforeAll(() => {
    folder = place.consumer('html');
  });

  /** The modules of which something is left in a bundle of this code, by their paths in node_modules. */
  const kept = async (code: string): Promise<string[]> => {
    const bundle = await rollup({
      input: `${folder}/entry.js`,
      plugins: [inline(`${folder}/entry.js`, code), nodeResolve({ preserveSymlinks: true } as object)],
      logLevel: 'silent',
    });
    const { output } = await bundle.generate({ inlineDynamicImports: true });
    return Object.entries(output[0].modules)
      .filter(([id, { renderedLength }]) => id.includes('node_modules') && renderedLength > 0)
      .map(([id]) => id.replaceAll('\\', '/').replace(/.*node_modules\//, ''));
  };
  const others = (paths: string[], own: string): string[] =>
    paths.filter(
      (path) => /\/elements\/(\w+)\/(?:\1|define)\.js$/.test(path) && !path.includes(`/elements/${own}/`),
    );

  it('of one reckoner: neither Lit nor the sheet nor another trade’s tables', async () => {
    const paths = await kept(
      "import { reckonBacking } from 'quilt-reckoner/reckon'; console.log(reckonBacking);",
    );
    expect(paths).toContain('quilt-reckoner/dist/modules/reckon/backing.js');
    expect(paths.filter((path) => /^(?:lit|@lit)/.test(path))).toEqual([]);
    expect(paths.filter((path) => /batting|beds|sheet|drawing|elements/.test(path))).toEqual([]);
  });

  it.each(readdirSync(`${ROOT}src/elements`))('of quilt-%s: no other element', async (name) => {
    const paths = await kept(`import 'quilt-reckoner/${name}';`);
    expect(paths).toContain(`quilt-reckoner/dist/modules/elements/${name}/define.js`);
    expect(others(paths, name)).toEqual([]);
  });

  it('of one class picked from all, or from its own entry', async () => {
    const own = await kept("import { QuiltTop } from 'quilt-reckoner/top/class'; console.log(QuiltTop);");
    expect(own).toContain('quilt-reckoner/dist/modules/elements/top/top.js');
    expect(own.filter((path) => path.endsWith('/define.js'))).toEqual([]);
    expect(others(own, 'top')).toEqual([]);
  });

  it('of types alone, or of a name that is not used: nothing', async () => {
    expect(await kept("import 'quilt-reckoner/react'; import 'quilt-reckoner/reckon';")).toEqual([]);
    expect(await kept("import { QuiltTop } from 'quilt-reckoner/top/class';")).toEqual([]);
  });
});
