import { html, isServer, nothing, type TemplateResult } from 'lit';
import type { Style } from '../../measure/format.js';
import type { WorksheetResult } from '../../reckon/worksheet.js';
import { CUTTER_CAUTION, figures, listing, MEASURE_FIRST } from '../../face/lists.js';
import type { QuiltSheet } from '../../face/sheet.js';
import { linesOf, nameOf, shopping, type Piece } from './shopping.js';
import { isColour, isPicture } from './swatch.js';

/** Every fabric with its letter, its name and its amounts, and a box to tape a swatch into. */
export const fabricKey = (result: WorksheetResult, swatches: Map<string, string>): unknown => {
  const amounts = new Map<string, { letter: string; name: string; texts: string[] }>();
  for (const { letter, name, text } of linesOf(result))
    if (letter) amounts.set(letter, { letter, name, texts: [...(amounts.get(letter)?.texts ?? []), text] });
  const shown = (swatch: string): unknown =>
    isServer
      ? html`<span></span>`
      : isColour(swatch)
        ? html`<span .style=${`background-color:${swatch}`}></span>`
        : isPicture(swatch)
          ? html`<img src=${swatch} alt="" />`
          : nothing;
  const box = (swatch: string | undefined): TemplateResult =>
    html`<td class="swatch">${swatch ? shown(swatch) : nothing}</td>`;
  return amounts.size
    ? html`<table part="list" class="key">
        <caption>Fabric key</caption>
        <tbody>
          ${[...amounts.values()].map(({ letter, name, texts }) => html`<tr>${box(swatches.get(letter))}<th scope="row">${letter}</th><td>${name}</td><td>${texts.join(' and ')}</td></tr>`)}
        </tbody>
      </table>`
    : nothing;
};

/** The requirement sheet: what to buy, the fabric key, what to cut from which fabric, and every part's drawings. */
export const requirementSheet = (
  result: WorksheetResult,
  {
    parts,
    pieces,
    key,
    joint,
    size,
    style,
  }: { parts: QuiltSheet[]; pieces: Piece[]; key: unknown; joint: unknown; size: string; style: Style },
): TemplateResult => {
  const names = [...new Set(pieces.map(nameOf))];
  const cutFrom = (name: string): TemplateResult =>
    listing({
      caption: `Cut from ${name}`,
      rows: pieces
        .filter((piece) => nameOf(piece) === name)
        .map(({ cut }) => [`${cut.count} ×`, cut.text, cut.piece]),
    });
  const drawn = ({ calculator, result, lengthStyle }: QuiltSheet): unknown => {
    if (result.errors) return nothing;
    const [first, ...others] = figures(calculator.draw(result, lengthStyle));
    const strips = calculator.listings?.(result, lengthStyle).filter(({ toCut }) => toCut);
    return html`<section><h2>${calculator.title}</h2><p>${[result.summary, ...result.notes].join(' ')}</p>${first}</section>${others}${strips?.map(listing)}`;
  };
  return html`<section class="paper">
    <h1>${document.title}</h1>
    <p>${size} ${MEASURE_FIRST}</p>
    ${listing(shopping(result, style))} ${result.notes.map((note) => html`<p class="note">${note}</p>`)} ${key}
    <div class="columns">
      <p>${CUTTER_CAUTION}</p>
      ${names.map(cutFrom)} ${joint} ${parts.map(drawn)}
    </div>
  </section>`;
};
