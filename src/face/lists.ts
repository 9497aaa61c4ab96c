import { html, nothing, type TemplateResult } from 'lit';
import { draw, type Picture } from '../drawing/picture.js';
import { unbroken, unbrokenSize } from '../measure/format.js';
import type { Answer } from '../reckon/answer.js';
import type { Listing } from './calculator.js';

/** Stands beside what is cut. */
export const CUTTER_CAUTION =
  'Rotary cutter: close the blade after every cut, cut away from yourself, and keep it from children.';
/** Stands under every answer. */
export const MEASURE_FIRST = 'Amounts are for planning: measure your own cloth and quilt before cutting.';

/** On a narrow sheet the longest word of the trade breaks where it is joined, and widens no list. */
export const parted = (text: string): string => text.replace(/corner(?=stone)/gi, '$&\u00ad');

/** A ruled table with its caption. */
export const listing = ({ caption, head = [], rows }: Listing): TemplateResult => html`<table part="list">
  <caption>${caption}</caption>
  ${
    head[0] &&
    html`<thead>
    <tr>
      ${head.map((words) => html`<th scope="col">${words}</th>`)}
    </tr>
  </thead>`
  }
  <tbody>
    ${rows.map((cells) => html`<tr>${cells.map((text, at) => html`<td data-head=${(text && head[at]) || nothing}>${parted(unbroken(text))}</td>`)}</tr>`)}
  </tbody>
</table>`;

/** What to cut, where anything is. */
export const cutList = ({ cuts }: Answer): unknown =>
  cuts[0]
    ? listing({
        caption: 'Cut',
        rows: cuts.map(({ count, piece, text }) => [`${count} ×`, piece, unbrokenSize(text)]),
      })
    : nothing;

export const figures = (pictures: Picture[]): TemplateResult[] =>
  pictures.map(
    (picture) => html`<figure part="figure">
      ${picture.caption && html`<figcaption>${unbroken(picture.caption)}</figcaption>`} ${draw(picture)}
    </figure>`,
  );
