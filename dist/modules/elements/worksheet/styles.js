import { css } from 'lit';

/** The fabric key, and what only a printed worksheet shows. */
const worksheetStyles = css `[part='list'] td:not(:first-child){white-space:normal}.swatch{padding:2px}.swatch>*{display:block;inline-size:48px;block-size:48px;object-fit:cover;border:1px solid;print-color-adjust:exact}.key :is(td,th){vertical-align:middle}h1{font-size:1.6em}h2{font-size:1.1em}@container (max-width: 24em){[part='list']{font-size:0.73em}[part='list'] :is(thead,caption){font-size:1em}[part='list'] td:nth-child(2){overflow-wrap:anywhere;hyphens:auto}}@media print{.paper>*{margin-block-end:0.3cm}.paper table{inline-size:100%}.columns [part='list'] td:not(:last-child){white-space:nowrap}.key tbody{display:flex;flex-wrap:wrap;gap:0.3cm}.key tr{inline-size:3.4cm;border:0}.key :is(td,th){display:block;padding-inline:0}.key .swatch{block-size:3.2cm;border:1px dashed}.swatch>*{inline-size:1cm;block-size:0.6cm}.columns{columns:2;column-gap:1cm}.columns>*{margin-block-end:0.3cm;break-inside:avoid}.columns .drawing{max-block-size:11cm}p{orphans:3;widows:3}}`;

export { worksheetStyles };
