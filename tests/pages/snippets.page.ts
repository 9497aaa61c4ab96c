import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { CALCULATORS, NAMES, tagOf } from '../calculators.js';
import { ROOT } from '../tools/run.mjs';
import { site } from './site.js';

const { openWith } = site();

interface Snippet {
  language: string;
  code: string;
  /** Where it stands: `README.md:42`. */
  at: string;
}

const snippetsIn = (file: string): Snippet[] => {
  const text = readFileSync(ROOT + file, 'utf8');
  return Array.from(text.matchAll(/^( *)```(\w+)\n([^]*?)^\1```$/gm), (found) => ({
    language: found[2]!,
    code: found[3]!,
    at: `${file}:${text.slice(0, found.index).split('\n').length}`,
  }));
};

const snippets = ['README.md', 'DEVELOPERS.md'].flatMap(snippetsIn);
const named = (...languages: string[]): [string, string][] =>
  snippets.filter(({ language }) => languages.includes(language)).map(({ at, code }) => [at, code]);

const SCRIPT = '<script type="module" src="/dist/quilt-reckoner.js"></script>';
/** The files lie beside the page in the snippets, or where example.org stands for the author’s own site; here in /dist/. */
const placed = (code: string): string =>
  code
    .replace(
      /(src|href)="(?:https:\/\/example\.org\/(?:quilt-reckoner\/)?|\.\/)?(quilt-[\w.-]+)"/g,
      '$1="/dist/$2"',
    )
    .replace(/'quilt-reckoner\.js'/g, "'/dist/quilt-reckoner.js'");

/** What in a page is of ours, by tag, and what of it is not there yet: not defined, or a calculator without an answer. */
const look = (page: Page): Promise<{ tags: string[]; missing: string[] }> =>
  page.evaluate(() => {
    const ours = [...document.querySelectorAll('*')].filter(({ localName }) =>
      localName.startsWith('quilt-'),
    );
    const isThere = (at: Element): boolean =>
      at.matches(':defined') &&
      (at.localName === 'quilt-fabric' ||
        (at as unknown as { result: { buy?: object } }).result.buy !== undefined);
    return {
      tags: ours.map(({ localName }) => localName),
      missing: ours.filter((at) => !isThere(at)).map(({ outerHTML }) => outerHTML),
    };
  });

/** The same once a long cut list has been planned, which a page does in the background. */
const elementsIn = async (page: Page): Promise<{ tags: string[]; missing: string[] }> => {
  let found = await look(page);
  for (let tries = 0; found.missing.length > 0 && tries < 100; tries++) {
    await new Promise((done) => setTimeout(done, 100));
    found = await look(page);
  }
  return found;
};

describe('the snippets of the documents', () => {
  it('are found, and every one is of a kind that is run here or by the sample consumers', () => {
    expect(named('html').length).toBeGreaterThan(7);
    expect(named('js').length).toBeGreaterThan(0);
    const known = ['html', 'css', 'js', 'jsx', 'tsx', 'vue', 'ts', 'sh', 'json', 'njk', 'text'];
    expect(snippets.filter(({ language }) => !known.includes(language))).toEqual([]);
  });

  it.each(named('html'))(
    '%s: its elements upgrade and have an answer, and the console stays clean',
    async (_, code) => {
      const placedCode = placed(code);
      // A snippet may be the script alone.
      const element = /<quilt-/.test(code) ? '' : '<quilt-backing width="58" length="70"></quilt-backing>';
      const { page, faults } = await openWith((/<script/.test(code) ? '' : SCRIPT) + placedCode + element);
      const { tags, missing } = await elementsIn(page);
      expect(tags.length).toBeGreaterThan(0);
      expect(missing).toEqual([]);
      expect(faults).toEqual([]);
      await page.close();
    },
  );

  it.each(named('html').filter(([, code]) => /<quilt-[\w-]+[^>]*>\s*<p>/.test(code)))(
    '%s: what stands inside its tags is what the calculator says',
    async (_, code) => {
      const { page } = await openWith((/<script/.test(code) ? '' : SCRIPT) + placed(code));
      const said = await page.$$eval('*', (all) =>
        all.flatMap((at) => {
          const { result } = at as unknown as { result?: { buy: { text: string } } };
          return result && at.querySelector('p') ? [[at.textContent, result.buy.text] as const] : [];
        }),
      );
      expect(said.length).toBeGreaterThan(0);
      for (const [words, amount] of said) expect(words.replace(/\s+/g, ' ')).toContain(amount);
      await page.close();
    },
  );

  it.each(named('css'))('%s: every declaration of it takes effect', async (_, code) => {
    const name = /quilt-([a-z]+)/.exec(code)?.[1] ?? 'backing';
    const { page, faults } = await openWith(`${SCRIPT}<style>${code}</style>${tagOf(name)}`);
    const without = await page.evaluate(
      ({ tag }) => {
        const element = document.querySelector(tag)!;
        const rules = [...document.styleSheets[0]!.cssRules].filter((rule) => rule instanceof CSSStyleRule);
        return rules.flatMap(({ selectorText, style }) => {
          const [, part] = /::part\(([\w-]+)\)/.exec(selectorText) ?? [];
          const styled = part ? element.shadowRoot!.querySelector(`[part~=${part}]`)! : element;
          const host = selectorText.replace(/::part\(.*/, '');
          return [...style]
            .filter((name) => {
              const value = (): string => getComputedStyle(styled).getPropertyValue(name);
              const on = value();
              const kept = style.getPropertyValue(name);
              style.removeProperty(name);
              const off = value();
              style.setProperty(name, kept);
              return !element.matches(host) || on === off;
            })
            .map((name) => `${selectorText} { ${name} }`);
        });
      },
      { tag: `quilt-${name}` },
    );
    expect(without).toEqual([]);
    expect(faults).toEqual([]);
    await page.close();
  });

  const isOfPage = (code: string): boolean => /\b(document|window|addEventListener)\b/.test(code);

  it.each(named('js').filter(([, code]) => isOfPage(code)))('%s: runs in a page', async (_, code) => {
    const elements = NAMES.map((name) => tagOf(name, { ...CALCULATORS[name]?.given, id: name })).join('');
    const map = JSON.stringify({
      imports: {
        'quilt-reckoner': '/dist/quilt-reckoner.js',
        'quilt-reckoner/reckon': '/dist/reckon.js',
        'quilt-reckoner/': '/dist/quilt-',
      },
    });
    const { page, faults } = await openWith(
      `<script type="importmap">${map}</script>${SCRIPT}<form>${elements}<output></output></form><script type="module">${placed(code)}</script>`,
    );
    expect(faults).toEqual([]);
    await page.close();
  });

  it.each(named('js').filter(([, code]) => !isOfPage(code)))(
    '%s: runs in Node, and each line gives what its remark says',
    (_, code) => {
      const folder = mkdtempSync(join(tmpdir(), 'quilt-reckoner-snippet-'));
      try {
        // As it would be installed: this project itself under its own name, and what the snippet imports besides.
        for (const [, name] of code.matchAll(/from '((?:@[\w-]+\/)?[\w-]+)/g)) {
          const link = join(folder, 'node_modules', name!);
          mkdirSync(dirname(link), { recursive: true });
          symlinkSync(name === 'quilt-reckoner' ? ROOT : `${ROOT}node_modules/${name}`, link);
        }
        const checked = code.replace(
          /^(.+); \/\/ ("[^"]*"|\d+)$/gm,
          (_line, expression: string, value: string) =>
            `if (${expression} !== ${value}) throw new Error(String(${expression}));\nconsole.log('checked');`,
        );
        writeFileSync(join(folder, 'snippet.mjs'), checked);
        const said = execFileSync(process.execPath, [join(folder, 'snippet.mjs')], { encoding: 'utf8' });
        expect(said.match(/checked/g)?.length ?? 0).toBe(
          code.match(/^.+; \/\/ ("[^"]*"|\d+)$/gm)?.length ?? 0,
        );
        if (/reckon\w+\(/.test(code)) expect(said).toContain('checked');
      } finally {
        rmSync(folder, { recursive: true });
      }
    },
  );
});
