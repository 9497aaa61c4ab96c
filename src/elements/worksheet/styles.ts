import { css } from 'lit';

/** The fabric key, and what only a printed worksheet shows. */
export const worksheetStyles = css`
  .swatch { padding: 2px; }
  .swatch > * { display: block; inline-size: 48px; block-size: 48px; object-fit: cover; border: 1px solid; print-color-adjust: exact; }
  .key :is(td, th) { vertical-align: middle; }
  tr > :is(:nth-child(5), :nth-child(6)) { text-align: end; }
  /* Cells to write in beside prices: a line of the list takes two, so that there is room to read what is written. */
  @media screen {
    @container (min-width: 34.01em) {
      [part='list']:has(input):has(tr > :nth-child(7)) tr { display: grid; grid-template-columns: repeat(4, minmax(0, 1fr)); }
      [part='list']:has(input):has(tr > :nth-child(7)) td:is(:nth-child(2), :nth-child(3), :nth-child(5)) { color: var(--_soft); }
    }
  }
  /* Seven columns of German need what would be beside their words. */
  @container (max-width: 46em) {
    [part='list']:has(tr > :nth-child(7)) :is(th, td) { padding-inline: calc(var(--_space) * 0.4); }
  }
  /* The last of them stands at the left, beside numbers at the right. */
  @container (min-width: 34.01em) {
    [part='list']:has(tr > :nth-child(7)) tr > :nth-child(7) { padding-inline-start: calc(var(--_space) * 1.2); }
  }
  [part='list'] tr > :nth-child(2) { grid-area: 2 / 1; }
  [part='list'] tr > :nth-child(3) { grid-area: 2 / 2; }
  [part='list'] tr > :nth-child(4) { grid-area: 1 / 2; }
  [part='list'] tr > :nth-child(5) { grid-area: 2 / 3; }
  [part='list'] tr > :nth-child(6) { grid-area: 1 / 3; }
  [part='list'] tr > :nth-child(7) { grid-area: 1 / 4; }
  h1 { font-size: 1.6em; }
  h2 { font-size: 1.1em; }
  /* Where it is narrow a line of the list takes two: fabric, amount and cost above what it is for, the need and the price. */
  @container (max-width: 34em) {
    [part='list']:has(thead) tr { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); padding-block: 0.3em; }
    /* Without money the words have more room, and so has a cell to write in, under them. Three columns stand side by side. */
    [part='list']:has(thead):not(:has(tr > :nth-child(6))) tr { grid-template-columns: minmax(0, 3fr) minmax(0, 5fr) minmax(0, 1.5fr); }
    [part='list']:has(thead):where(:has(input), :not(:has(tr > :nth-child(5)))):not(:has(tr > :nth-child(6))) tr { grid-template-columns: minmax(0, 1fr) minmax(0, 2fr); }
    [part='list']:has(thead) tr > * { padding: 0.1em 0.6em 0.1em 0; }
    [part='list'] td:is(:nth-child(2), :nth-child(3), :nth-child(5)):not(:has(input)) { color: var(--_soft); }
    [part='list'] tr > :nth-child(7) { grid-area: 3 / 1 / auto / 4; }
    [part='list']:has(input):not(:has(tr > :nth-child(6))) tr > :nth-child(5) { grid-area: 3 / 1 / auto / 3; text-align: start; }
    /* What is written in the cell stands beside it: the head of the list is far above. */
    [part='list'] tr > td:nth-child(n + 5):has(input) { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 2fr); align-items: center; }
    [part='list'] tr > td:nth-child(n + 5):has(input)::before { content: attr(data-head); color: var(--_soft); }
    /* So do the names of the numbers below a long text. */
    [part='list']:has(tr > :nth-child(4)):not(:has(tr > :nth-child(5))) td:is(:nth-child(2), :nth-child(3))[data-head]::before { content: attr(data-head) ' '; }
    [part='list']:has(thead):not(:has(tr > :nth-child(4))) tr { grid-template-columns: repeat(3, minmax(0, 1fr)); }
    [part='list']:has(thead):not(:has(tr > :nth-child(4))) tr > :nth-child(n) { grid-area: auto; }
  }
  @media print {
    .paper > * { margin-block-end: 0.3cm; }
    .paper table { inline-size: 100%; }
    .columns [part='list'] td:not(:last-child) { white-space: nowrap; }
    .columns [part='list'] td:first-child { inline-size: 2.5em; }
    .columns [part='list'] td:last-child { inline-size: 55%; }
    /* The fabrics side by side, each with a box to tape its swatch into. */
    .paper .key tbody { display: flex; flex-wrap: wrap; gap: 0.3cm; }
    .paper .key tr { inline-size: 3.4cm; border: 0; }
    .paper .key :is(td, th) { display: block; padding-inline: 0; }
    .paper .key .swatch { block-size: 2.8cm; border: 1px dashed; }
    .swatch > * { inline-size: 1cm; block-size: 0.6cm; }
    .paper > figure .drawing { max-block-size: 9cm; }
    .columns { columns: 2; column-gap: 1cm; }
    .columns > * { margin-block-end: 0.2cm; break-inside: avoid; }
    .columns .drawing { max-block-size: 11cm; }
    p { orphans: 3; widows: 3; }
    /* WebKit prints columns as one, and then cuts lines and drawings in two at the end of a page. */
    @supports (-webkit-hyphens: none) { .columns { columns: auto; } }
  }
`;
