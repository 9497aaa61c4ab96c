import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { initialOf, type Field, type Fields } from '../../src/ledger/field.js';
import { loaded } from '../tools/bundle.mjs';
import { filesIn } from '../tools/files.mjs';
import { ROOT } from '../tools/run.mjs';
import { site } from './site.js';

const textOf = (path: string): string => readFileSync(ROOT + path, 'utf8');
const json = (path: string): unknown => JSON.parse(textOf(path));

interface Named {
  name: string;
  description?: string;
}
interface Attribute extends Named {
  type: { text: string };
  default?: string;
  fieldName?: string;
}
interface Element extends Named {
  tagName: string;
  attributes: Attribute[];
  members: (Named & { kind: string })[];
  events?: Named[];
  cssParts?: Named[];
  cssProperties?: (Named & { default?: string })[];
}
const { modules } = json('dist/custom-elements.json') as { modules: { declarations: Element[] }[] };
const described = modules.flatMap(({ declarations }) => declarations.filter(({ tagName }) => tagName));
const names = readdirSync(`${ROOT}src/elements`).sort();
const sheets = described.filter(({ tagName }) => tagName !== 'quilt-fabric');

const classes = (await loaded(names.map((name) => `src/elements/${name}/${name}.ts`))) as Record<
  string,
  { observedAttributes: string[]; formAssociated?: boolean }
>;
/** What a calculator takes; nothing for the fabric, which is none. */
const fieldsOf = async ({ tagName }: Element): Promise<Fields> => {
  const name = tagName.replace('quilt-', '');
  if (name === 'fabric') return {};
  const shape = (
    name === 'worksheet'
      ? await import('../../src/workbook/shape.js')
      : await import(`../../src/calculators/${name}/shape.ts`)
  ) as Record<string, Fields>;
  return shape[`${name}Fields`]!;
};
const choices = (type: string): string[] => Array.from(type.matchAll(/'([^']+)'/g), ([, value]) => value!);

describe('custom-elements.json', () => {
  it('describes every element that there is', () => {
    expect(described.map(({ tagName }) => tagName).sort()).toEqual(names.map((name) => `quilt-${name}`));
  });

  it.each(described)('$tagName: the attributes that its class observes, each with its words', (element) => {
    const written = element.attributes.map(({ name }) => name);
    // The browser itself watches a form field’s `disabled`.
    const { observedAttributes, formAssociated } = classes[element.name]!;
    const watched = formAssociated ? [...observedAttributes, 'disabled'] : observedAttributes;
    expect([...written].sort()).toEqual([...watched].sort());
    for (const { name, description, type } of element.attributes) {
      expect(description, name).toMatch(/^[A-Z`].{10,}\.$/s);
      expect(type.text, name).toMatch(/string|boolean|'/);
    }
  });

  it.each(described)(
    '$tagName: what an attribute starts at and may be is what its calculator says',
    async (element) => {
      const fields: Record<string, Field> = await fieldsOf(element);
      for (const { name, fieldName, default: said, type } of element.attributes) {
        const field = fields[fieldName!];
        if (!field) continue;
        // Where the calculator itself has none, it is found from other inputs or by the worksheet.
        const initial = field.kind === 'flag' ? undefined : initialOf(field, { units: 'in' });
        // A seam’s words are the same for all of them, and what it starts at is not.
        if (initial && name !== 'seam')
          expect([said, `${said} %`, said?.replace(/ in$/, '')], name).toContain(initial);
        if (choices(type.text).length > 0) expect(choices(type.text), name).toEqual(field.options ?? []);
      }
    },
  );

  it.each(sheets)('$tagName: its events, its parts and its properties for CSS', (element) => {
    expect(element.events?.map(({ name }) => name)).toEqual(expect.arrayContaining(['input', 'change']));
    const all = [...element.events!, ...element.cssParts!, ...element.cssProperties!, ...element.members];
    for (const { name, description } of all) expect(description, name).toBeTruthy();
    expect(element.members.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['result', 'value', 'form', 'formAssociated']),
    );
  });

  it('names the parts and the properties for CSS that the sources have, and no others', () => {
    const sources = ['face', 'elements']
      .flatMap((folder) => filesIn(`src/${folder}`))
      .map(textOf)
      .join('\n');
    const found = (pattern: RegExp): string[] =>
      [...new Set(Array.from(sources.matchAll(pattern), ([, name]) => name!))].sort();
    const said = (key: 'cssParts' | 'cssProperties'): string[] =>
      [...new Set(described.flatMap((element) => (element[key] ?? []).map(({ name }) => name)))].sort();
    expect(said('cssParts')).toEqual(found(/\bpart="(\w+)"/g));
    expect(said('cssProperties')).toEqual(found(/var\((--quilt-[\w-]+)/g));
  });
});

describe('what editors read', () => {
  it('is in VS Code’s form, with the values that may be chosen', () => {
    const { tags } = json('dist/vscode.html-custom-data.json') as {
      tags: (Named & { attributes: (Named & { values: Named[] })[] })[];
    };
    for (const { tagName, attributes } of described) {
      const tag = tags.find(({ name }) => name === tagName)!;
      expect(tag.description).toBeTruthy();
      expect(tag.attributes.map(({ name, values }) => [name, values.map((value) => value.name)])).toEqual(
        attributes.map(({ name, type }) => [name, choices(type.text)]),
      );
    }
    const css = json('dist/vscode.css-custom-data.json') as { properties: Named[] };
    expect(css.properties.map(({ name }) => name)).toEqual(sheets[0]!.cssProperties!.map(({ name }) => name));
  });

  it('is in JetBrains’ form too', () => {
    const { version, contributions } = json('dist/web-types.json') as {
      version: string;
      contributions: { html: { elements: (Named & { attributes: Named[] })[] } };
    };
    expect(version).toBe((json('package.json') as { version: string }).version);
    const listed = contributions.html.elements.map(({ name, attributes }) => [
      name,
      attributes.map((each) => each.name),
    ]);
    expect(listed).toEqual(
      described.map(({ tagName, attributes }) => [tagName, attributes.map(({ name }) => name)]),
    );
  });
});

describe('integrity.json', () => {
  const { open } = site();
  const hashes = json('dist/integrity.json') as Record<string, string>;

  it('has the hash of every script for copying', () => {
    const scripts = filesIn('dist').filter((path) => /^dist\/(?:chunks\/)?[^/]+\.js$/.test(path));
    const expected = scripts.map((path) => [
      path.replace('dist/', ''),
      `sha384-${createHash('sha384').update(textOf(path)).digest('base64')}`,
    ]);
    expect(scripts.length).toBeGreaterThan(10);
    expect(hashes).toEqual(Object.fromEntries(expected));
  });

  /** Whether a page of this head has the element. */
  const defines = async (head: string): Promise<boolean> => {
    const { page } = await open('/dist/third-party-licenses.txt');
    await page.setContent(`<!doctype html><head>${head}</head>`, { waitUntil: 'load' });
    const found = await page.evaluate(() => !!customElements.get('quilt-backing'));
    await page.close();
    return found;
  };
  /** A hash of the same form, of nothing. */
  const wrong = (hash: string): string => hash.replace(/.$/, (last) => (last === 'A' ? 'B' : 'A'));

  it('lets a browser run the classic script that it was made of, and no other', async () => {
    const name = 'quilt-reckoner.classic.js';
    const script = (hash: string): string =>
      `<script src="/dist/${name}" integrity="${hash}" crossorigin="anonymous"></script>`;
    expect(await defines(script(hashes[name]!))).toBe(true);
    expect(await defines(script(wrong(hashes[name]!)))).toBe(false);
  });

  it('lets a browser run a module with its chunks, by an import map', async () => {
    const chunk = Object.keys(hashes).find((name) => name.includes('chunks/sheet'))!;
    const modules = (changed: Record<string, string> = {}): string => {
      const integrity = Object.fromEntries(
        Object.entries({ ...hashes, ...changed }).map(([name, hash]) => [`/dist/${name}`, hash]),
      );
      return `<script type="importmap">${JSON.stringify({ integrity })}</script>
        <script type="module" src="/dist/quilt-backing.js"></script>`;
    };
    expect(await defines(modules())).toBe(true);
    expect(await defines(modules({ [chunk]: wrong(hashes[chunk]!) }))).toBe(false);
  });
});

describe('package.json', () => {
  /** What Node prints when it runs this code as somebody who has installed the package. */
  const printed = (code: string): unknown =>
    JSON.parse(
      execFileSync(process.execPath, ['--input-type=module', '-e', code], { cwd: ROOT, encoding: 'utf8' }),
    );
  const tags = names.map((name) => `quilt-${name}`);
  const defined = `${JSON.stringify(tags)}.filter((tag) => customElements.get(tag))`;

  it('lists as having side effects just the modules that define an element', () => {
    const { sideEffects } = json('package.json') as { sideEffects: string[] };
    const listed = new Set(
      sideEffects.flatMap((pattern) =>
        pattern.includes('/elements/*/') ? names.map((name) => pattern.replace('*', name)) : [pattern],
      ),
    );
    const paths = filesIn('dist/modules').map((path) => `./${path}`);
    const modulesListed = [...listed].filter((path) => path.startsWith('./dist/modules/'));
    expect(paths).toEqual(expect.arrayContaining(modulesListed));
    const without = paths.filter((path) => !listed.has(path));
    const importing = without.map((path) => `await import('${path}');`).join('');
    // Lit itself leaves its versions, and its stand-in for the page in Node.
    const globals = `Object.getOwnPropertyNames(globalThis)`;
    expect(
      printed(
        `await import('lit'); await import('fraction.js'); const before = new Set(${globals}); ${importing}
         console.log(JSON.stringify({ defined: ${defined}, added: ${globals}.filter((name) => !before.has(name)) }));`,
      ),
    ).toEqual({ defined: [], added: [] });
    for (const name of names)
      expect(
        printed(
          `await import('./dist/modules/elements/${name}/define.js'); console.log(JSON.stringify(${defined}));`,
        ),
      ).toEqual([`quilt-${name}`]);
  });

  it('offers each element defined, each class alone, all of them, and the arithmetic', () => {
    const entries = names.flatMap((name) => [name, `${name}/class`]);
    expect(
      printed(
        `const found = {}; for (const entry of ${JSON.stringify(entries)}) found[entry] = Object.keys(await import('quilt-reckoner/' + entry));
         console.log(JSON.stringify(found));`,
      ),
    ).toEqual(
      Object.fromEntries(
        entries.map((entry) => [
          entry,
          [described.find(({ tagName }) => tagName === `quilt-${entry.replace('/class', '')}`)!.name],
        ]),
      ),
    );
    expect(printed(`await import('quilt-reckoner'); console.log(JSON.stringify(${defined}));`)).toEqual(tags);
    expect(
      printed(
        `const { reckonBacking } = await import('quilt-reckoner/reckon');
         console.log(JSON.stringify([reckonBacking({ width: 58, length: 70 }).buy.text, typeof customElements]));`,
      ),
    ).toEqual(['3 3/4 yd', 'undefined']);
  });

  it('offers German and British words for the arithmetic alone', () => {
    expect(
      printed(
        `import { learn, reckonBacking, reckonBatting } from 'quilt-reckoner/reckon';
         import { de } from 'quilt-reckoner/words/de';
         import { enGB } from 'quilt-reckoner/words/en-gb';
         learn(de);
         learn(enGB);
         const size = { width: 58, length: 70 };
         const needWidth = ({ working }) => working.find(({ id }) => id === 'needWidth').label;
         console.log(JSON.stringify([
           ...['de', 'de-AT', 'en'].map((lang) => needWidth(reckonBacking({ ...size, lang }))),
           needWidth(reckonBatting({ ...size, lang: 'en-GB' })),
         ]));`,
      ),
    ).toEqual(['Breite der Rückseite', 'Breite der Rückseite', 'Backing width', 'Wadding width']);
  });
});
