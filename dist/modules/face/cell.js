import { nothing, html, noChange, isServer } from 'lit';
import { sayInFace } from '../words/face-sayings.js';
import { OWN } from './choices.js';

/**
 * A cell to type in, a choice, or a box to tick. The option says whether it is chosen, not the list: a row may become another row,
 * and the list would not have the new choice yet. The attribute says it too, for printed copies. The text is also the default of
 * the cell, because WebKit goes back to the default after “back”.
 */
const cell = (state) => {
    const { id, field, text, label, choices, isOwn, wrong, t } = state;
    const own = field?.show?.(state);
    if (own)
        return own;
    const invalid = wrong ? 'true' : nothing;
    if (choices) {
        const chosen = isOwn ? [OWN] : text.split(', ');
        return html `${chosen.map((value, at) => html `<select part="cell" id=${at ? nothing : id} data-row=${id} aria-label=${chosen[1] ? t.say(sayInFace('entryOf', { label, number: at + 1 })) : nothing} aria-describedby="how-${id}" aria-invalid=${invalid}> ${Object.entries({ ...choices, [value]: choices[value] ?? value }).map(([key, words]) => html `<option value=${key} ?selected=${key === value} .selected=${key === value}>${words}</option>`)} </select>`)}${isOwn ? written(`${id}-own`, state, choices[OWN]) : nothing}`;
    }
    if (field?.kind === 'own' && field.lines)
        return html `<textarea
      part="cell"
      id=${id}
      data-row=${id}
      rows=${Math.min(12, text.split('\n').length + 1)}
      spellcheck="false"
      aria-describedby="how-${id}"
      aria-invalid=${invalid}
      .value=${text}
    ></textarea>`;
    return written(id, state);
};
/** An input of one line, or a box to tick. */
const written = (own, { id, field, text, wrong }, name) => {
    const tick = field?.kind === 'flag';
    const invalid = wrong ? 'true' : nothing;
    return html `<input part="cell" id=${own} data-row=${id} type=${tick ? 'checkbox' : 'text'} autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="next" aria-label=${name ?? nothing} aria-describedby="how-${id}" aria-invalid=${invalid} .defaultChecked=${text === 'yes'} .defaultValue=${text} .checked=${isServer && text !== 'yes' ? noChange : text === 'yes'} .value=${text} />`;
};
/** A button. `open` says whether the part that it unfolds is open. */
const action = (words, act, { off = false, open } = {}) => html `<button type="button" part="action" ?disabled=${off} aria-expanded=${open ?? nothing} @click=${act}>${words}</button>`;
/** Keys that a phone's keyboard lacks. They type into the cell beside them. */
const fractionKeys = (type, name) => html `<span class="keys" role="group" aria-label=${name}> ${[...'⅛¼⅜½⅝¾⅞⅓⅔'].map((sign) => html `<button type="button" tabindex="-1" @pointerdown=${(event) => event.preventDefault()} @click=${() => type(sign)}>${sign}</button>`)} </span>`;

export { action, cell, fractionKeys };
