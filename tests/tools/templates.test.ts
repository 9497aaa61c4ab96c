import { describe, expect, it } from 'vitest';
import { shorterCss, shorterHtml, shorterTemplates } from './templates.mjs';
import { toJavaScript } from './typescript.mjs';

// What each comes to follows from CSS Syntax Level 3 (W3C) and the HTML Standard (WHATWG): where whitespace is a
// separator only, and where it is text.
describe('shorterCss', () => {
  it.each([
    ['a {\n  color: red;\n  margin: 0 auto;\n}\n', 'a{color:red;margin:0 auto}'],
    ['a > b , c d { x: y }', 'a>b,c d{x:y}'],
    ['a :hover { width: calc(1px + (2px - 3px)) }', 'a :hover{width:calc(1px + (2px - 3px))}'],
    ["/* it’s; don't { */ a { b: c } /* } */", 'a{b:c}'],
    [`a::after { content: " ;  { /* no */ '"; }`, `a::after{content:" ;  { /* no */ '"}`],
    [`a::after { content: '\\'  ;'; b: c }`, `a::after{content:'\\'  ;';b:c}`],
    [
      'a { background: url(data:image/png;base64, x ; y) }',
      'a{background:url(data:image/png;base64, x ; y)}',
    ],
    ['@media (width > 300px) and (color) { a { b: c; } }', '@media (width>300px) and (color){a{b:c}}'],
    ['a/**/b { c: d }', 'a b{c:d}'],
    [':host { --gap: 1px; &:focus-visible { d: e; } }', ':host{--gap:1px;&:focus-visible{d:e}}'],
  ])('%j', (before, after) => {
    expect(shorterCss(before)).toBe(after);
  });

  it('refuses an expression in a comment, which would be lost', () => {
    expect(() => shorterCss('a { /* \ue000 */ }')).toThrow('comment');
  });
});

describe('shorterHtml', () => {
  it.each([
    ['<p>\n  58 + 2 × 4\n  = <b>66</b> in\n</p>', '<p> 58 + 2 × 4 = <b>66</b> in </p>'],
    ['<b>a</b> <i>b</i>', '<b>a</b> <i>b</i>'],
    [
      '<input\n  class="a   b"\n  .value=\ue000\n  ?hidden=\ue000\n/>',
      '<input class="a   b" .value=\ue000 ?hidden=\ue000 />',
    ],
    ['<p\n  id="x"\n>y</p>', '<p id="x">y</p>'],
    ['<p title="a > b   c">d</p>', '<p title="a > b   c">d</p>'],
    ['a<!-- note -->b', 'ab'],
    ['a<!-- \ue000 -->b', 'a<!-- \ue000 -->b'],
    ['<pre>\n  1\n    2 \ue000</pre>  <p>  x</p>', '<pre>\n  1\n    2 \ue000</pre> <p> x</p>'],
    ['66\u00a0\u00a0in', '66\u00a0\u00a0in'],
    ['2 < 3  &  4', '2 < 3 & 4'],
  ])('%j', (before, after) => {
    expect(shorterHtml(before)).toBe(after);
  });
});

describe('shorterTemplates', () => {
  const built = (code: string): string =>
    toJavaScript(`${code} export {};`, 'example.ts', { before: [shorterTemplates] }).trim();

  it('shortens css, html and svg, inside each other too', () => {
    expect(built('x = html`<p>\n  ${a ? html`<b>\n  c</b>` : d}\n</p>`; y = css`a {\n  b: ${c};\n}`;')).toBe(
      'x = html `<p> ${a ? html `<b> c</b>` : d} </p>`;\ny = css `a{b:${c}}`;\nexport {};',
    );
  });

  it('leaves other templates, and escapes, as they are', () => {
    expect(built('x = `a\n  b`; y = other`a   b`; z = html`<p>\\n  \\`\\u00bd\\${x}</p>`;')).toBe(
      'x = `a\n  b`;\ny = other `a   b`;\nz = html `<p>\\n \\`\\u00bd\\${x}</p>`;\nexport {};',
    );
  });
});
