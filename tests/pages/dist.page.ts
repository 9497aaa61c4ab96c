import { readFileSync, readdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { filesIn } from '../tools/files.mjs';
import { ROOT } from '../tools/run.mjs';
import { site } from './site.js';

const { open } = site();
const tags = readdirSync(`${ROOT}src/elements`)
  .filter((name) => filesIn(`src/elements/${name}/define.ts`).length > 0)
  .map((name) => `quilt-${name}`);

/** An empty page that loads one script of dist/, and the elements that are then defined on it. */
const definedBy = async (script: string): Promise<string[]> => {
  const { page, faults } = await open('/dist/third-party-licenses.txt');
  await page.setContent(`<!doctype html><title>Empty</title>${script}`, { waitUntil: 'load' });
  const defined = await page.evaluate((names) => names.filter((name) => customElements.get(name)), tags);
  expect(faults).toEqual([]);
  await page.close();
  return defined;
};

describe('dist/', () => {
  it.each(tags)('%s.js defines its element', async (tag) => {
    expect(await definedBy(`<script type="module" src="/dist/${tag}.js"></script>`)).toContain(tag);
  });

  it('quilt-reckoner.js defines them all, and a second time does no harm', async () => {
    const every = '<script type="module" src="/dist/quilt-reckoner.js"></script>';
    const one = `<script type="module" src="/dist/${tags[0]}.js"></script>`;
    expect(await definedBy(every + one)).toEqual(tags);
  });

  it('quilt-reckoner.classic.js does the same from a plain script, and adds no global name', async () => {
    expect(await definedBy('<script src="/dist/quilt-reckoner.classic.js"></script>')).toEqual(tags);
    const code = readFileSync(`${ROOT}dist/quilt-reckoner.classic.js`, 'utf8');
    expect(code).not.toMatch(/^\s*(?:var|let|const|class|function|import|export)\b/m);
  });

  it.each(['quilt-reckoner.js', 'quilt-reckoner.classic.js', ...tags.map((tag) => `${tag}.js`)])(
    '%s, and what it imports, begins by asking Chrome to make its functions ready while it loads',
    (name) => {
      const code = (path: string): string => readFileSync(`${ROOT}dist/${path}`, 'utf8');
      const imported = [...code(name).matchAll(/from"\.\/(chunks\/[^"]+)"/g)].map(([, path]) => path!);
      expect(imported.length > 0).toBe(!name.startsWith('quilt-reckoner'));
      for (const path of [name, ...imported])
        expect(code(path).split('\n')[0]).toBe('//# allFunctionsCalledOnLoad');
    },
  );

  it('reckon.js works without a page', async () => {
    const reckon = (await import(/* @vite-ignore */ pathToFileURL(`${ROOT}dist/reckon.js`).href)) as object;
    expect(Object.keys(reckon)).not.toEqual([]);
  });

  it('quick.html works from disk, alone', async () => {
    const { page, faults } = await open(pathToFileURL(`${ROOT}dist/quick.html`).href);
    const used = await page.evaluate(
      (names) => names.filter((name) => document.querySelector(`${name}:defined`)),
      tags,
    );
    const requests = await page.evaluate(() =>
      performance.getEntriesByType('resource').map(({ name }) => name),
    );
    expect(used).not.toEqual([]);
    expect(requests).toEqual([]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('custom-elements.json describes every element', () => {
    const manifest = readFileSync(`${ROOT}dist/custom-elements.json`, 'utf8');
    const { modules } = JSON.parse(manifest) as {
      modules: { path: string; declarations: { tagName?: string }[] }[];
    };
    const described = modules.flatMap(({ declarations }) => declarations.map(({ tagName }) => tagName));
    expect(described.filter(Boolean).sort()).toEqual([...tags].sort());
    for (const { path } of modules) expect(filesIn(path), path).toEqual([path]);
  });

  it('has every file that package.json offers', () => {
    const { exports } = JSON.parse(readFileSync(`${ROOT}package.json`, 'utf8')) as {
      exports: Record<string, unknown>;
    };
    const targets = Object.values(exports)
      .flatMap((target) =>
        typeof target === 'string' ? [target] : Object.values(target as Record<string, string>),
      )
      .flatMap((target) =>
        tags.map((tag) => target.replace('./', '').replaceAll('*', tag.replace('quilt-', ''))),
      )
      .filter((target) => !/^dist\/[a-z]+$/.test(target));
    for (const target of new Set(targets)) expect(filesIn(target), target).toEqual([target]);
  });

  it('says nothing of the machine that made it', () => {
    for (const path of filesIn('dist')) expect(readFileSync(ROOT + path, 'utf8'), path).not.toContain(ROOT);
  });
});
