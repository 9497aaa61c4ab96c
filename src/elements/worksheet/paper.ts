import { html, isServer, nothing, type TemplateResult } from 'lit';
import { figures, listing } from '../../face/lists.js';
import type { Listing } from '../../ledger/listing.js';
import { isColour, swatchIn, type Swatches } from '../../face/swatch.js';
import type { Face } from '../../face/face.js';
import type { Good } from '../../face/outcome.js';
import { isPicture } from '../../workbook/swatch.js';
import { leftoverList, mayLeave } from '../../workbook/leftover-list.js';
import { fabricKey, namedOf, shopping } from '../../workbook/shopping.js';
import type { WorksheetAnswer } from '../../workbook/shape.js';
import { say } from '../../workbook/sayings.js';
import type { PieceOfPart } from '../../workbook/gather.js';
import { sayInFace } from '../../words/face-sayings.js';
import type { Teller } from '../../words/teller.js';

/** A swatch as a page shows it. */
const swatchOf = (swatch: string): unknown => {
  if (isServer) return html`<span></span>`;
  if (isColour(swatch)) return html`<span .style=${`background-color:${swatch}`}></span>`;
  return isPicture(swatch) ? html`<img src=${swatch} alt="" />` : nothing;
};

/** Every fabric with its letter, its name and its amounts, and a box to tape a swatch into. */
export const keyOf = ({ answer, t }: Good<WorksheetAnswer>, swatches: Swatches): unknown => {
  const key = fabricKey(answer);
  const box = (swatch: string | undefined): TemplateResult =>
    html`<td class="swatch">${swatch ? swatchOf(swatch) : nothing}</td>`;
  return key.length
    ? html`<table part="list" class="key">
        <caption>${t.say(say('fabricKey'))}</caption>
        <tbody>
          ${key.map(({ letter, name, amounts }) => html`<tr>${box(swatchIn(swatches, letter))}<th scope="row">${letter}</th><td>${name}</td><td>${t.say(say('allAmounts', { amounts }))}</td></tr>`)}
        </tbody>
      </table>`
    : nothing;
};

/** The cut list, by fabric. */
const cutLists = (pieces: PieceOfPart[], t: Teller): TemplateResult[] => {
  const called = ({ letter, name }: PieceOfPart): string =>
    namedOf({ letter, name: typeof name === 'string' ? name : t.say(name) });
  const names = new Map<string, PieceOfPart[]>();
  for (const piece of pieces) names.set(called(piece), [...(names.get(called(piece)) ?? []), piece]);
  return [...names].map(([fabric, pieces]) =>
    listing(
      {
        caption: say('cutFrom', { fabric }),
        rows: pieces.map(({ cut }) => [
          sayInFace('times', cut),
          say('cutSize', { width: cut.width, length: cut.length }),
          cut.piece,
        ]),
      },
      t,
    ),
  );
};

/** The drawings of a part, with its summary and the lists that say how to cut. */
const drawn = (part: Face): unknown => {
  const { answer, teller: t, outcome } = part;
  if (!answer) return nothing;
  const [first, ...others] = figures(part.pictures(answer), t, part.swatches);
  const strips = part.lists(answer).filter(({ toCut }) => toCut);
  const said = [answer.summary, ...outcome.reckoning.notes].map((message) => t.say(message));
  return html`<section><h2>${part.called}</h2><p>${said.join(' ')}</p>${first}</section>${others}${strips.map((list) => listing(list, t))}`;
};

/** The requirement sheet: what to buy, the fabric key, what to cut from which fabric, and every part's drawings. */
export const requirementSheet = (
  { answer, reckoning, t }: Good<WorksheetAnswer>,
  about: {
    parts: Face[];
    pieces: PieceOfPart[];
    quilt: unknown;
    key: unknown;
    joint: unknown;
    lists: Listing[];
    size: string;
  },
): TemplateResult => html`<section class="paper" lang=${t.words.lang}>
  <h1>${document.title}</h1>
  <p>${about.size} ${t.say(sayInFace('measureFirst'))}</p>
  ${about.quilt} ${listing(shopping(answer), t)} ${reckoning.notes.map((note) => html`<p class="note">${t.say(note)}</p>`)} ${about.key} ${mayLeave(answer) ? listing(leftoverList(answer, t.style), t) : nothing} ${about.lists.map((list) => listing(list, t))}
  <div class="columns">
    <p>${t.say(sayInFace('cutterCaution'))}</p>
    ${cutLists(about.pieces, t)} ${about.joint} ${about.parts.map(drawn)}
  </div>
</section>`;
