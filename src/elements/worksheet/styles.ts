import { css } from 'lit';

/** The fabric key, and what only a printed worksheet shows. */
export const worksheetStyles = css`
  .swatch { inline-size: 3.5rem; block-size: 3.5rem; padding: 0; border: 1px dashed; }
  .swatch :is(img, span) { display: block; inline-size: 100%; block-size: 3.4rem; object-fit: cover; print-color-adjust: exact; }
  h1 { font-size: 1.6em; }
  h2 { font-size: 1.1em; }
  @media print {
    .swatch { inline-size: 3cm; block-size: 3cm; }
    .swatch :is(img, span) { inline-size: 1cm; block-size: 0.6cm; }
    .paper > * { margin-block-end: 0.4cm; }
    .columns { columns: 2; column-gap: 1cm; }
    .columns > * { break-inside: avoid; inline-size: 100%; }
    h1, h2, caption { break-after: avoid; }
    p { orphans: 3; widows: 3; }
  }
`;
