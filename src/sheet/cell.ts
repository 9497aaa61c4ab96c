import { html, nothing, type TemplateResult } from 'lit';
import type { Field } from '../reckon/fields.js';

/** What a cell needs to show itself. */
export interface CellState {
  id: string;
  /** Missing for a reckoned row that may be typed over. */
  field?: Field | undefined;
  /** What stands in the cell: the reader's own text while she types or where it is wrong. */
  text: string;
  wrong: boolean;
}

const picker = (id: string, label: unknown, choices: Record<string, string>, chosen: string): TemplateResult =>
  html`<select part="cell" id=${label ? nothing : id} data-row=${id} aria-label=${label || nothing} .value=${chosen}>
    ${Object.entries({ ...(chosen in choices ? {} : { [chosen]: chosen }), ...choices }).map(
      ([value, words]) => html`<option value=${value} ?selected=${value === chosen}>${words}</option>`,
    )}
  </select>`;

/** A cell to type in, a choice, or a box to tick. */
export const cell = ({ id, field, text, wrong }: CellState): TemplateResult => {
  if (field && 'options' in field) {
    const chosen = text.split(', ');
    return html`${chosen.map((value, at) => picker(id, chosen[1] && `${field.label}, ${at + 1}`, field.options, value))}`;
  }
  const tick = field?.kind === 'flag';
  return html`<input
    part="cell"
    id=${id}
    data-row=${id}
    type=${tick ? 'checkbox' : 'text'}
    autocomplete="off"
    autocapitalize="off"
    spellcheck="false"
    enterkeyhint="next"
    aria-describedby="how-${id}"
    aria-invalid=${wrong && text ? 'true' : nothing}
    .checked=${text === 'yes'}
    .value=${text}
  />`;
};

/** Keys that a phone's keyboard lacks; they type at the caret of the cell beside them. */
export const fractionKeys = (type: (text: string) => void): TemplateResult =>
  html`<span class="keys" role="group" aria-label="Fraction keys">
    ${[...'⅛¼⅜½⅝¾⅞⅓⅔'].map(
      (sign) => html`<button type="button" tabindex="-1" @pointerdown=${(event: Event) => event.preventDefault()} @click=${() => type(sign)}>${sign}</button>`,
    )}
  </span>`;
