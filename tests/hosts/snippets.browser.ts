import { expect } from 'chai';
import { CALCULATORS, NAMES, tagOf } from '../calculators.js';
import { LISTENING, openFrame, type Framed } from './frame.js';
import { settle } from './reading.js';
import { isOfPage, snippetsIn } from './snippets.js';
import { until } from '../until.js';

const SCRIPT = '<script type="module" src="/dist/quilt-reckoner.js"></script>';
const DOCUMENTS = ['README.md', 'DEVELOPERS.md'];
const snippets = (
  await Promise.all(DOCUMENTS.map(async (file) => snippetsIn(file, await (await fetch(`/${file}`)).text())))
).flat();
const named = (language: string): [at: string, code: string][] =>
  snippets.filter((snippet) => snippet.language === language).map(({ at, code }) => [at, code]);

/** In the snippets the files are beside the page or in the author’s own folder. Here they are in /dist/. */
const placed = (code: string): string =>
  code
    .replace(/(src|href)="(?:\/quilt-reckoner\/|\.\/)?(quilt-[\w.-]+)"/g, '$1="/dist/$2"')
    .replace(/'quilt-reckoner\.js'/g, "'/dist/quilt-reckoner.js'");

/** The page that holds this, once all that is ours in it is there. */
const opened = async (body: string): Promise<Framed> => {
  const srcdoc = `<!doctype html><html lang="en"><head><title>A page</title>${LISTENING}</head><body>${body}</body></html>`;
  const framed = await openFrame({ srcdoc });
  // The loader brings the elements by and by.
  if (/<script[^>]+quilt-/.test(body)) await until(() => !framed.page.querySelector(':not(:defined)'));
  await settle(framed.page, false);
  return framed;
};

const oursIn = (page: Document): Element[] =>
  [...page.querySelectorAll('*')].filter(({ localName }) => localName.startsWith('quilt-'));
/** Whether it is defined, and has an answer if it is a calculator. */
const isThere = (at: Element): boolean =>
  at.matches(':defined') &&
  (at.localName === 'quilt-fabric' || !!(at as HTMLElementTagNameMap['quilt-top']).result.buy);

/** The rules of a page's stylesheet that is this code, those for a medium among them. */
const rulesIn = (page: Document, code: string): CSSStyleRule[] =>
  [...page.styleSheets]
    .filter(({ ownerNode }) => ownerNode?.textContent === code)
    .flatMap(({ cssRules }) => [...cssRules])
    .flatMap((rule) => ('media' in rule ? [...(rule as CSSMediaRule).cssRules] : [rule])) as CSSStyleRule[];

describe('The snippets of the documents', () => {
  it('are found', () => {
    expect(named('html').length).to.be.greaterThan(7);
    expect(named('css').length).to.be.greaterThan(0);
    expect(named('js').length).to.be.greaterThan(0);
  });

  for (const [at, code] of named('html')) {
    const whole = (/<script/.test(code) ? '' : SCRIPT) + placed(code);

    it(`${at}: its elements upgrade and have an answer, and the console stays clean`, async () => {
      // A snippet may be the script alone.
      const element = /<quilt-/.test(code) ? '' : '<quilt-backing width="58" length="70"></quilt-backing>';
      const { page, faults } = await opened(whole + element);
      expect(oursIn(page).length).to.be.greaterThan(0);
      expect(oursIn(page).filter((at) => !isThere(at))).to.deep.equal([]);
      expect(faults).to.deep.equal([]);
    });

    if (/<quilt-[\w-]+[^>]*>\s*<p>/.test(code))
      it(`${at}: what stands inside its tags is what the calculator says`, async () => {
        const { page } = await opened(whole);
        const told = oursIn(page).filter((at) => 'result' in at && at.querySelector('p'));
        expect(told.length).to.be.greaterThan(0);
        for (const at of told)
          expect(at.textContent.replace(/\s+/g, ' ')).to.include(
            (at as HTMLElementTagNameMap['quilt-top']).result.buy!.text,
          );
      });
  }

  for (const [at, code] of named('css'))
    it(`${at}: every declaration of it takes effect, on the sheet or on the room kept for it`, async () => {
      const tag = /quilt-[a-z]+/.exec(code)?.[0] ?? 'quilt-backing';
      const attributes = 'width="58" length="70" borders="2" block="12" across="4" down="5"';
      const written = `<style>${code}</style><${tag} ${attributes}></${tag}>`;
      const pages = [await opened(SCRIPT + written), await opened(written)];
      const idle = pages.map(({ page, window }) => {
        const element = page.querySelector(tag)!;
        return rulesIn(page, code).flatMap(({ selectorText, style }) => {
          const [host, part] = selectorText.split(/::part\(([\w-]+)\)/);
          const styled = part ? element.shadowRoot?.querySelector(`[part~=${part}]`) : element;
          const valuesOf = (names: string[]): string[] =>
            names.map((name) => (styled ? window.getComputedStyle(styled).getPropertyValue(name) : ''));
          const names = [...style];
          const on = valuesOf(names);
          style.cssText = '';
          const off = valuesOf(names);
          return names
            .filter((_, at) => !element.matches(host!) || on[at] === off[at])
            .map((name) => `${selectorText} { ${name} }`);
        });
      });
      expect(rulesIn(pages[0]!.page, code).length).to.be.greaterThan(0);
      expect(idle[0]!.filter((name) => idle[1]!.includes(name))).to.deep.equal([]);
      expect(pages.flatMap(({ faults }) => faults)).to.deep.equal([]);
    });

  for (const [at, code] of named('js').filter(([, code]) => isOfPage(code)))
    it(`${at}: runs in a page`, async () => {
      const elements = NAMES.map((name) => tagOf(name, { ...CALCULATORS[name]?.given, id: name })).join('');
      const map = JSON.stringify({
        imports: {
          'quilt-reckoner': '/dist/quilt-reckoner.js',
          'quilt-reckoner/reckon': '/dist/reckon.js',
          'quilt-reckoner/': '/dist/quilt-',
        },
      });
      const { faults } = await opened(
        `<script type="importmap">${map}</script>${SCRIPT}<form>${elements}<output></output></form><script type="module">${placed(code)}</script>`,
      );
      expect(faults).to.deep.equal([]);
    });
});
