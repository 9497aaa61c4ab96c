export const SCRIPT = '<script type="module" src="/dist/quilt-reckoner.js"></script>';

/** Every element, with each kind of cell: lengths, choices, boxes, a text area, an error over a stale answer, parts of a worksheet. */
const EACH = [
  `<quilt-backing width="58" length="70" one-way price="12.50" currency="EUR">
  <p>Buy 3 3/4 yd of cloth 40 in wide: two panels of 66 in.</p>
</quilt-backing>`,
  `<quilt-borders width="58" length="70" borders="2, 4 1/2" corners="sides-first, squares"></quilt-borders>`,
  `<quilt-cutting sheet="fat-quarter">
  <table>
    <tr><th>Fabric</th><th>Piece</th><th>Cut size</th><th>How many</th></tr>
    <tr><td>A</td><td>square</td><td>3 1/2 in</td><td>48</td></tr>
    <tr><td>B</td><td>half-square triangles</td><td>3 in finished</td><td>24</td></tr>
  </table>
</quilt-cutting>`,
  '<quilt-batting width="58" length="70"></quilt-batting>',
  `<quilt-worksheet currency="EUR">
  <quilt-fabric letter="A" name="Slate Roof" price="14.25" swatch="#48505c"></quilt-fabric>
  <quilt-top block="12" across="4" down="5" sashing="2"></quilt-top>
  <quilt-binding fabric="A"></quilt-binding>
</quilt-worksheet>`,
  '<quilt-top block="12" across="3" down="3" set="on-point"></quilt-top>',
  '<quilt-binding width="58" length="70" finished="3/8"></quilt-binding>',
  '<quilt-sleeve width="58"></quilt-sleeve>',
  `<quilt-block block="12" count="6">
  <table>
    <tr><td>A/B</td><td colspan="2" goose="down">B A B</td><td>A\\B</td></tr>
    <tr><td>A</td><td colspan="2" rowspan="2">A in B</td><td>A</td></tr>
    <tr><td>A</td><td>A</td></tr>
    <tr><td>A\\B</td><td colspan="2">B A B</td><td>A/B</td></tr>
  </table>
</quilt-block>`,
];
export const SHEETS = EACH.join('\n');

/** A whole page around a body, as a strict or a careless author may write it. */
export const pageOf = (
  body: string,
  { css = '', html = '', script = SCRIPT } = {},
): string => `<!doctype html>
<html lang="en" ${html}>
  <head>
    <title>A hostile page</title>
    <meta name="viewport" content="width=device-width" />
    ${css && `<style>${css}</style>`}
    ${script}
  </head>
  <body>${body}</body>
</html>`;

export interface Hostile {
  css?: string;
  /** Attributes of the page's root. */
  html?: string;
  body?: string;
  widths?: number[];
  /** Runs on the page when it is ready. */
  then?: (page?: Document) => void;
}

const inRow = EACH.map((sheet) => `<div class="row"><aside>Beside it</aside>${sheet}</div>`).join('');

export const HOSTILE: Record<string, Hostile> = {
  calm: { widths: [320, 640, 720, 1280] },
  'global resets': {
    css: `html, body, div, span, p, table, th, td, h1, h2, form, label, section, figure, caption, * {
        margin: 0; padding: 0; border: 0; font-size: 100%; font: inherit; vertical-align: baseline; list-style: none; min-width: 0;
      }
      *, *::before, *::after { box-sizing: inherit; outline: 0; text-decoration: none; background: transparent; }
      input, select, textarea, button { all: unset; } table { border-spacing: 0; } img, svg { display: block; max-width: 100%; }`,
  },
  'everything important': {
    css: `* {
        margin: 0 !important; padding: 0 !important; border: 0 !important; border-radius: 0 !important; box-sizing: content-box !important;
        font: italic small-caps 700 15px/1 serif !important; letter-spacing: 0.06em !important; word-spacing: 0.1em !important;
        text-align: center !important; text-transform: uppercase !important; text-indent: 4em !important; white-space: nowrap !important;
        word-break: break-all !important; text-shadow: 2px 2px 3px red !important; color: #123 !important; background: #fed !important;
        min-width: 0 !important; max-width: 100% !important; overflow: visible !important; position: relative !important;
        outline: none !important; box-shadow: none !important; transition: all 2s !important; list-style: none !important;
        cursor: crosshair !important; float: none !important; hyphens: none !important; quotes: none !important;
      }`,
  },
  'root at 62.5 percent': { css: 'html { font-size: 62.5% } body { font: 1.6rem/1.5 sans-serif }' },
  'its own inputs tables and drawings': {
    css: `input, select, textarea, button { inline-size: 30px !important; block-size: 9px !important; border: 4px solid red !important; font-size: 6px !important }
      table { border: 6px dotted blue; inline-size: 90px; font-size: 7px; table-layout: fixed } th, td { padding: 40px; border: 3px solid lime }
      svg { inline-size: 10px; block-size: 10px; fill: red; stroke: red } rect, path, text { display: none }
      label, output, caption { display: none } section { columns: 3; padding: 50px } figure { float: right; margin: 90px } p { font-size: 40px }
      ::placeholder, ::selection { color: red } [part] { display: none } .sheet, .answer, .how, .buy { display: none !important }`,
  },
  'careless inheritance': {
    css: `body { text-transform: uppercase; text-align: center; text-indent: 3em; white-space: nowrap; word-break: break-all;
        font-variant: small-caps; line-height: 1; letter-spacing: 0.05em; word-spacing: 0.2em; text-shadow: 2px 2px 3px red;
        cursor: wait; border-spacing: 30px; caption-side: bottom; direction: ltr; overflow-wrap: anywhere }`,
  },
  'a column of 280 px': { css: 'main { inline-size: 280px }', body: `<main>${SHEETS}</main>` },
  'a flex row': {
    css: '.row { display: flex; gap: 8px; margin-block: 20px } aside { flex: none; inline-size: 50px; background: #ccc }',
    body: inRow,
  },
  'a row that wraps': {
    css: '.row { display: flex; flex-wrap: wrap; justify-content: center; align-items: center; gap: 8px } aside { inline-size: 200px; background: #ccc }',
    body: inRow,
  },
  'a grid of auto columns': {
    css: '.row { display: grid; grid-template-columns: auto auto; justify-content: start; gap: 8px } aside { inline-size: 40px; background: #ccc }',
    body: inRow,
  },
  'a layout table': {
    css: 'td { vertical-align: top }',
    body: `<table><tr><td>Beside it</td><td>${SHEETS}</td></tr></table>`,
  },
  'floats and boxes that shrink': {
    css: 'quilt-backing, quilt-top { float: left } quilt-borders, quilt-batting { display: inline-block } quilt-cutting { display: inline } quilt-cutting, quilt-binding { clear: both } quilt-worksheet { inline-size: fit-content }',
  },
  'a details box that was closed': {
    body: `<details><summary>The calculators</summary>${SHEETS}</details>`,
    then: (page = document) => page.querySelector('summary')!.click(),
  },
  'a dialog': {
    body: `<p>The page behind it</p><dialog>${SHEETS}</dialog>`,
    then: (page = document) => page.querySelector('dialog')!.showModal(),
  },
  'right to left': { html: 'dir="rtl"', body: `<p>‏פתיחה.</p>${SHEETS}` },
  'a dark scheme': { css: ':root { color-scheme: dark; background: #1b1d22; color: #e8e4da }' },
  'dark by its colours only': { css: 'body { background: #14161a; color: #ddd8cc } a { color: #9cf }' },
  'text at 200 percent': { css: 'html { font-size: 200% }' },
};

/** A page that leaves it to the browser whether it is dark. */
export const PREFERS_DARK: Hostile = {
  css: ':root { color-scheme: light dark; background: Canvas; color: CanvasText }',
};

const CLASSIC = '<script src="/dist/quilt-reckoner.classic.js" defer></script>';
const TAGS = [
  'backing',
  'borders',
  'cutting',
  'batting',
  'fabric',
  'top',
  'binding',
  'block',
  'sleeve',
  'worksheet',
];
const ONE_BY_ONE = TAGS.map((name) => `<script type="module" src="/dist/quilt-${name}.js"></script>`).join(
  '',
);

export const STRICT = "default-src 'self'; require-trusted-types-for 'script'";
/** Each with the script that has to live under it. */
export const POLICIES: [what: string, policy: string, script: string][] = [
  ['the module', STRICT, SCRIPT],
  ['the classic script', STRICT, CLASSIC],
  ['one script an element', STRICT, ONE_BY_ONE],
  ['the module, where Lit’s own policy is the only one', `${STRICT}; trusted-types lit-html`, SCRIPT],
  ['the classic script, with nothing but scripts allowed', "default-src 'none'; script-src 'self'", CLASSIC],
];

const FALLBACK = `<quilt-backing width="58" length="70" name="back">
    <p><strong>As the pattern has it:</strong> buy 3 3/4 yd of cloth 40 in wide, two panels of 66 in, one seam across.</p>
  </quilt-backing>
  <quilt-cutting><table>
    <tr><th>Fabric</th><th>Piece</th><th>Cut size</th><th>How many</th></tr>
    <tr><td>A</td><td>square</td><td>3 1/2 in</td><td>48</td></tr>
  </table></quilt-cutting>
  <quilt-worksheet><quilt-fabric letter="A"></quilt-fabric><h2>Its borders</h2>
    <quilt-borders borders="2"><p>Sides two of 2 1/2 × 72 1/2 in.</p></quilt-borders></quilt-worksheet>
  <quilt-top block="12" across="4" down="5"><p>20 blocks, 48 × 60 in.</p></quilt-top>
  <quilt-block block="12"><table><tr><td>A/B</td><td>A</td></tr><tr><td colspan="2">B A B</td></tr></table></quilt-block>
  <quilt-binding width="58" length="70"><p>8 strips.</p></quilt-binding>
  <quilt-batting width="58" length="70"><p>A twin package.</p></quilt-batting>`;

/** A dark page on which no script may run, of elements with the author’s own words inside. */
export const WITHOUT_SCRIPTS = {
  html: pageOf(FALLBACK, { css: 'body { background: #14161a; color: #ddd8cc }' }),
  policy: "script-src 'none'",
};
