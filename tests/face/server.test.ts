import { describe, expect, it } from 'vitest';
import { reckonBacking } from '../../src/reckon.js';
import { BLOCKS, TABLE, WORKSHEET, WRITTEN } from '../hosts/quilt-parts.js';
import { compiledModules, inFreshNode, startServer } from '../tools/modules.mjs';

const { folder, paths: all } = compiledModules();
// Only the build gives the loader its table, and only a page has tags to look for.
const paths = all.filter((path) => path !== 'loader.js');
/** One server writes all these pages: nothing of one may be left in the next. */
const onServer = startServer(folder);
/** As a reader without scripts sees it. */
const words = (html: string): string =>
  html
    .replace(/<style>[^]*?<\/style>|<!--[^]*?-->/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

describe('in Node, where there is no page', () => {
  it('every module is imported, each in a process of its own kind: nothing made global before', () => {
    expect(paths.length).toBeGreaterThan(60);
    const code = `
      for (const name of ['document', 'window', 'HTMLElement', 'customElements', 'CSSStyleSheet', 'MutationObserver'])
        if (name in globalThis) throw new Error(name + ' is there already');
      for (const path of ${JSON.stringify(paths)}) await import('./' + path);
      console.log(Object.keys(await import('./index.js')).length, typeof document);`;
    expect(inFreshNode(folder, code)).toEqual({ stdout: '10 undefined\n', stderr: '' });
  }, 60_000);

  it.each(paths.filter((path) => /define|index|face\/[a-z]+\.js$/.test(path)))(
    '%s is imported first',
    (path) => {
      const { stderr } = inFreshNode(folder, `await import('./${path}')`);
      expect(stderr).toBe('');
    },
    60_000,
  );
});

describe('what @lit-labs/ssr makes of an element', () => {
  it.each(Object.entries(WRITTEN))(
    '%s: answer, rows and drawing are in the HTML',
    async (tag, written) => {
      const html = await onServer(written);
      expect(html).toMatch(new RegExp(`^<${tag}[^>]*><template shadowroot="open" shadowrootmode="open">`));
      expect(html).toMatch(/<p class="buy">[^]*<strong[^>]*>[^]*\d[^]*<\/strong>/);
      expect(html.match(/<tr class="/g)!.length).toBeGreaterThan(3);
      expect(html).toMatch(/<svg part="drawing"[^]*<path [^>]*d="M[^"]*z"/);
      expect(words(html)).not.toContain('to get an answer');
    },
    60_000,
  );

  it('says what the reckoner says', async () => {
    const { buy } = reckonBacking({ width: 58, length: 70, overage: 4, piecedStrip: true }) as {
      buy: { text: string };
    };
    expect(words(await onServer(WRITTEN['quilt-backing']!))).toContain(`Buy ${buy.text}`);
  }, 60_000);

  it('keeps the language written on the element, and ticks only what is ticked', async () => {
    const written = (more: string): Promise<string> =>
      onServer(`<quilt-backing width="150" length="180.5" units="cm" ${more}></quilt-backing>`);
    expect(words(await written('lang="fr"'))).toMatch(/\d,\d/);
    expect(words(await written(''))).not.toMatch(/\d,\d/);
    const box = async (more: string): Promise<string> =>
      /<input[^>]*id="oneWay"[^>]*>/.exec(await written(more))![0];
    expect(await box('one-way')).toMatch(/type="checkbox"[^]*\schecked\b/);
    expect(await box('')).toMatch(/type="checkbox"/);
    expect(await box('')).not.toContain('checked');
  }, 60_000);

  it.each([
    ['a cut list in a table', TABLE, '3 1/2 in'],
    ['a worksheet and its parts', WORKSHEET, 'Buy 7/8 yd for the borders.'],
    ['a part without its numbers', '<quilt-backing><p>Buy some</p></quilt-backing>', 'Buy some'],
  ])(
    '%s, which a server cannot know, leaves the author’s own words in sight and no number of ours',
    async (_, written, inside) => {
      const html = await onServer(written);
      expect(html).toContain('<slot></slot>');
      expect(html).not.toContain('class="buy"');
      expect(words(html)).toContain(inside);
    },
    60_000,
  );

  it('a worksheet written whole has its parts’ answers, what flowed to them, and its list', async () => {
    const html = await onServer(WORKSHEET, true);
    expect(html).not.toContain('<slot></slot></section>');
    expect(html.match(/class="buy"/g)).toHaveLength(4);
    const said = words(html);
    // geometry: 4 × 12 by 5 × 12, and 2 × 4 more each way with its border
    expect(said).toContain('48 × 60 in');
    expect(said).toContain('from the borders');
    // 27 in of border and 17 1/2 in of binding are 1 1/4 yd at 14.25
    expect(said).toContain('So far €17.81');
    expect(said).toContain('Slate Roof');
    expect(said).not.toMatch(/to get an answer|not on the list|false|undefined/);
  }, 60_000);

  it('of worksheets one inside another, and of two on a page, each has its own', async () => {
    const top = (across: number): string => `<quilt-top block="12" across="${across}" down="5"></quilt-top>`;
    const worksheet = (inside: string): string => `<quilt-worksheet>${inside}</quilt-worksheet>`;
    const back = '<quilt-backing></quilt-backing>';
    const html = await onServer(
      worksheet(top(4) + worksheet(top(3) + back) + back) + worksheet(back + top(2)) + back,
      true,
    );
    const widths = [...html.matchAll(/id="width"[^>]*value="([^"]*)"/g)].map(([, width]) => width);
    // geometry: across × 12 in
    expect(widths).toEqual(['36 in', '48 in', '24 in']);
  }, 60_000);

  it('a cut list in a table written whole is reckoned as the same list in an attribute is', async () => {
    const whole = words(await onServer(TABLE, true));
    const list = words(await onServer(WRITTEN['quilt-cutting']!));
    const answer = /Buy [^]*(?= Cutting plan)/;
    expect(answer.exec(whole)![0]).toMatch(/\d fat quarters/);
    expect(answer.exec(whole)![0]).toBe(answer.exec(list)![0]);
    // What the author wrote is still there, for the page.
    expect(whole).toContain('half-square triangles');
  }, 60_000);

  it('a cut list in a table is on the list of the worksheet around it', async () => {
    const said = words(await onServer(BLOCKS, true));
    // geometry: 11 squares of 3 1/2 in on 40 in, 5 strips for 48; with the binding's 6 strips of 2 1/2 in
    expect(said).toContain('17 1/2 (cutting plan) + 15 (binding) = 32 1/2 in');
    expect(said).not.toMatch(/not on the list|to mend/);
  }, 60_000);

  it('parts of one cloth are planned together, as in a page', async () => {
    const piece = '<quilt-cutting list="A | half | 20 x 10 | 1"></quilt-cutting>';
    const said = words(await onServer(`<quilt-worksheet>${piece}${piece}</quilt-worksheet>`, true));
    // geometry: side by side on cloth of 40 in
    expect(said).toContain('= 20 in; planned together 10 in');
    expect(said).toContain('Parts cut together: strips, from the top of the cloth');
  }, 60_000);

  it('a chart in a table written whole is reckoned with its spans, beside a cut list of its own', async () => {
    const chart = `<quilt-block block="9" count="5"><table><tr><td colspan="2" rowspan="2">A in B</td><td>B</td></tr><tr><td>B</td></tr>
      <tr><td>B</td><td colspan="2" goose="down">B A B</td></tr></table></quilt-block>`;
    const said = words(await onServer(TABLE + chart, true));
    expect(said).toContain('5 blocks of 9 in.');
    // geometry: 9 ÷ 3 = 3 in; (5 + 1 + 1 + 1 + 3) × 5
    expect(said).toContain('9 ÷ 3 = 3 in');
    expect(said).toContain('11 × 5 = 55');
    expect(said).toMatch(/\d fat quarters/);
  }, 60_000);

  it('tables go to their own cutting plans, with any markup between', async () => {
    const plan = (count: number): string =>
      `<quilt-cutting><table><tr><td>A</td><td>square</td><td>3 1/2</td><td>${count}</td></tr></table></quilt-cutting>`;
    const html = await onServer(
      `<!-- ${plan(1)} --><p>&lt;quilt-cutting></p>${plan(2)}<quilt-cutting list="A | square | 3 | 3"></quilt-cutting>
      <quilt-cutting>none</quilt-cutting><ul><li>${plan(4)}</li></ul>`,
      true,
    );
    expect([...words(html).matchAll(/(\d) pieces? from/g)].map(([, count]) => count)).toEqual([
      '2',
      '3',
      '4',
    ]);
    expect(words(html)).toContain('none');
  }, 60_000);

  it('what a server says of worksheets is forgotten when its writing fails', () => {
    const code = `
      import './index.js';
      import { writeWhole } from './server.js';
      import { html, render } from '@lit-labs/ssr';
      import { collectResultSync } from '@lit-labs/ssr/lib/render-result.js';
      try { writeWhole(() => { throw new Error('no paper'); }); } catch ({ message }) { console.log(message); }
      const page = collectResultSync(render(html\`<quilt-worksheet></quilt-worksheet>\`));
      console.log(page.includes('class="answer"'));`;
    expect(inFreshNode(folder, code)).toEqual({ stdout: 'no paper\nfalse\n', stderr: '' });
  }, 60_000);

  it('quilt-fabric shows nothing there either', async () => {
    expect(words(await onServer('<quilt-fabric letter="A"></quilt-fabric>')).trim()).toBe('');
  }, 60_000);

  it('bad input becomes no error of the server’s', async () => {
    for (const width of ['abc', '0', '1/0', '<img onerror=1>', '9'.repeat(10_000)])
      expect(
        await onServer(`<quilt-backing width='${width}' length="70"><p>Ask us</p></quilt-backing>`),
      ).toContain('Ask us');
  }, 60_000);
});
