import { css } from 'lit';

/**
 * A ruled ledger: fine rules between rows, a double line before the amounts, the answer over a double rule. Every colour
 * is mixed from the page's own text colour and one accent, so that it fits light and dark pages alike.
 */
export const faceStyles = css`
  :host {
    --_accent: var(--quilt-accent, #a63d40);
    --_space: var(--quilt-space, max(0.5rem, 8px));
    --_edge: var(--quilt-edge, 3px double var(--_accent));
    --_soft: color-mix(in srgb, currentColor 72%, transparent);
    /* With some of the text's colour in it, a wash is seen on a dark page too. */
    --_cloth: color-mix(in srgb, var(--quilt-cloth, var(--_accent)) 75%, currentColor);
    --_wash: color-mix(in srgb, var(--_cloth) 15%, transparent);
    --_wash-strong: color-mix(in srgb, var(--_cloth) 30%, transparent);
    --_faint: color-mix(in srgb, currentColor 12%, transparent);
    --_accent-text: color-mix(in srgb, var(--_accent) 45%, currentColor);
    display: block;
  }
  :host([hidden]) { display: none; }
  /* What a page says of itself, or of all its elements, may be inherited; these would change what is read. */
  section, :host::before {
    text-align: start;
    text-indent: 0;
    text-shadow: none;
    text-transform: none;
    white-space: normal;
    word-break: normal;
    overflow-wrap: break-word;
    caption-side: top;
    line-height: 1.45;
    font-variant-caps: normal;
    font-variant-numeric: diagonal-fractions tabular-nums;
  }
  /* A container has no width of its own, and would vanish where a page asks for one: in a row, a float, a dialog. */
  :host::before { content: '. .'; display: block; block-size: 0; overflow: hidden; visibility: hidden; word-spacing: 40em; }
  .sheet { container-type: inline-size; }
  @media screen { .many { content-visibility: auto; contain-intrinsic-block-size: auto 50em; } }
  /* In a page from right to left, "3 3/4 yd" must keep its order. The text still starts at the page's own side. */
  * { box-sizing: border-box; margin: 0; unicode-bidi: plaintext; }
  section > * { text-align: -webkit-match-parent; text-align: match-parent; }
  .sheet, .sheet div { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--_space); align-content: start; }
  .sheet > div:not(.spread) figure, [part='list'] { margin-block: var(--_space); }
  @media screen {
    .folded { display: none !important; }
    /* A head says nothing where all rows are folded away. */
    [part='table']:not(:has(tbody > tr:not(.folded, .refine))) thead { display: none; }
  }
  /* Over everything while a cell is edited, and no longer than a line. */
  .in-sight { display: none; position: sticky; inset-block-start: 0; block-size: 2.6em; margin-block-end: calc(-2.6em - var(--_space)); z-index: 1; font-size: 1em; pointer-events: none; }
  .in-sight span { padding: 0.3em 0.6em; background: Canvas; color: CanvasText; border-block-end: var(--_edge); }
  .in-sight b { font-size: 1.3em; }
  p, .how, .refine { color: var(--_soft); font-size: 0.9em; }
  .refine { font-size: 0.85em; line-height: 1.35; }
  /* From the top: a name that takes two lines would otherwise pull its row down. */
  .how button { padding-block: 0; min-block-size: 24px; vertical-align: top; }
  /* Large enough for a pointer, and no taller in its line. */
  .refine button { padding-block: 0; min-block-size: 24px; margin-block: min(0px, (1.35em - 24px) / 2); }
  table { border-collapse: collapse; font: inherit; }
  th { font-weight: inherit; text-align: inherit; }
  th, td { padding: calc(var(--_space) * 0.3) var(--_space); vertical-align: baseline; }
  tr:has(textarea) > * { vertical-align: top; }
  tr { border-block-end: var(--quilt-rule, 1px solid var(--_faint)); }
  thead, caption { font-size: 0.85em; color: var(--_soft); border-block-end: 2px solid; text-align: inherit; }
  caption, figcaption { padding-block-end: 0.3em; font-weight: 650; }
  figcaption { text-align: center; }

  .answer { justify-items: start; }
  .buy { color: inherit; font-size: 1.3em; padding-inline-end: 1em; border-block-end: var(--_edge); }
  strong { font-size: clamp(0.75em, 11cqi, 1.85em); font-weight: 650; line-height: 1.15; }
  .note { border-inline-start: 3px solid var(--_accent); padding-inline-start: var(--_space); }
  .stale { --_soft: currentColor; }
  .stale :is(.buy, .buy + p, .reckoned [part='value'], .measurable input:not([aria-invalid]), figure, [part='list']) { opacity: 0.72; }
  /* Only faded while what is typed may still become right. */
  .stale.wrong :is(.buy, .buy + p, .reckoned [part='value'], .measurable input:not([aria-invalid]), [part='list'] td) { text-decoration: line-through; }
  /* Large type has a line of its own. */
  .stale.wrong strong { display: inline-block; text-decoration: inherit; }
  .unseen { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }

  [part='label'] { inline-size: 33%; }
  .amount { inline-size: 29%; border-inline-start: var(--_edge); }
  [colspan] { inline-size: auto; }
  .reckoned [part='value'], .measurable input { font-weight: 600; }
  .marked, .measured input { background: var(--_wash-strong); }

  input, select, textarea, button { font: inherit; color: inherit; text-align: inherit; accent-color: var(--_accent); }
  [type='text'], select, textarea {
    inline-size: calc(100% + 0.4em);
    min-block-size: max(1.7em, 24px);
    padding-inline: 0.4em;
    margin-inline: -0.4em 0;
    background: color-mix(in srgb, currentColor 6%, transparent);
    border: 0;
    border-block-end: 1.5px solid var(--_soft);
  }
  /* In WebKit the words of a choice would widen the page; browsers put 4px before them. */
  select { contain: paint; padding-inline: calc(0.4em - 4px) 0; }
  textarea { display: block; }
  [type='checkbox'] { inline-size: max(1.5em, 24px); block-size: max(1.5em, 24px); vertical-align: middle; }
  option { color: CanvasText; background: Canvas; }
  .measurable [type='text'] { background: none; border-block-end-style: dotted; }
  .measured [type='text'] { background: var(--_wash-strong); border-block-end-style: dashed; }
  [aria-invalid] { border-block-end: 3px solid var(--_accent); }
  :focus-visible { outline: 2.5px solid var(--_accent-text); outline-offset: 1px; }
  .error, button { color: var(--_accent-text); }
  .marked button { color: inherit; }
  .error { display: block; font-size: inherit; }
  .how .error { font-size: 1.1em; }

  button { background: none; border: 0; padding: 0.3em 0; text-decoration: underline; cursor: pointer; }
  button:disabled { opacity: 0.6; }
  .actions, .keys { display: flex; flex-wrap: wrap; gap: 4px 1.2em; }
  .keys { display: none; gap: 4px; padding-block-start: 6px; }
  .keys button { min-inline-size: 42px; text-align: center; text-decoration: none; border: 1px solid; border-radius: 4px; }
  @media (any-pointer: coarse) {
    .keys { display: flex; }
    /* Below this size a phone zooms in on the cell. */
    [type='text'], select, textarea { font-size: max(1em, 16px); }
    [type='text'], select, button { min-block-size: 44px; }
    .keys button { min-inline-size: 44px; }
    /* As large to a finger, and no taller in its line. */
    .how button, .refine button { min-block-size: 44px; margin-block: -10px; }
  }

  @container (min-width: 600px) {
    .spread:has(> figure) { grid-template: auto 1fr / minmax(0, 1fr) fit-content(34%); column-gap: calc(var(--_space) * 2); }
    .spread > figure { grid-area: 1 / 2 / 3; }
    /* The column is as wide as the longest choice. */
    .amount:not([colspan]) select { min-inline-size: max-content; }
  }
  @container (max-width: 599px) {
    .sheet:focus-within .in-sight { display: block; }
  }
  @container (max-width: 34em) {
    [part='table'] thead { display: none; }
    [part='table'] { border-inline-start: var(--_edge); }
    [part='table'] tr { display: grid; grid-template-columns: minmax(0, 5fr) minmax(0, 7fr); align-items: baseline; }
    .amount { border: 0; padding-inline-end: 0; }
    /* In WebKit a choice in a line would stick out in a page from right to left. */
    .amount select { display: block; }
    [part='table'] :is(tbody, th, td) { display: block; inline-size: auto; }
    .how, [colspan], :has(+ [colspan]) { grid-column: 1 / -1; }
    .how { padding-block-start: 0; }
    [part='list'] { font-size: 0.85em; }
    [part='list'] :is(th, td) { padding-inline: 0 0.6em; }
  }
  /* A wide font, or a narrow column: a list's words stay whole. */
  @container (max-width: 33ch) {
    [part='list'] { font-size: 0.75em; }
    [part='list'] :is(thead, caption) { font-size: inherit; }
  }
  /* Text as large as this leaves room for one column only. */
  @container (max-width: 16.5em) {
    [part='table'] tr { grid-template-columns: minmax(0, 1fr); }
    [part='list'] thead { display: none; }
    [part='list'] :is(tbody, tr, th, td) { display: block; }
    [data-head]::before { content: attr(data-head) ': '; color: var(--_soft); }
  }
  @media (forced-colors: active) {
    .marked { outline: 2px solid Highlight; }
  }
  /* Small enough for one page, with the rows beside the drawing. */
  @media print {
    button, .keys, [role='status'], [part='table'] :is(.refine, .next) { display: none; }
    :host { font-size: 9pt; --_space: 4px; }
    section { line-height: 1.2; }
    th, td { padding-block: 0.5px; }
    tr, caption, figure, .answer { break-inside: avoid; }
    caption { break-after: avoid; }
    [part='label'] { inline-size: 31%; }
    .amount { inline-size: 25%; }
    .buy + p { margin-block-start: 3px; }
    /* At the end of a page a grid is cut in two, and Firefox loses a table in one. */
    .sheet, .sheet div { display: flow-root; }
    table { inline-size: 100%; }
    /* Room after the last line could take a page of its own. */
    .paper :last-child { margin-block-end: 0; }
    .spread > figure { float: inline-end; inline-size: 5cm; margin-inline-start: 0.4cm; }
    /* Beside the drawing the rows would be a word wide here. */
    @container (max-width: 34em) {
      .spread > figure { float: none; margin-inline: auto; }
    }
    [type='text'], select, textarea { background: none; border: 0; appearance: none; min-block-size: 0; padding-inline: 0.4em; resize: none; }
    [type='checkbox'] { inline-size: 1em; block-size: 1em; }
  }
`;
