import { html, nothing, type TemplateResult } from 'lit';
import type { Field } from '../ledger/field.js';
import { unbroken } from '../measure/format.js';
import { sayInFace } from '../words/face-sayings.js';
import type { Teller } from '../words/teller.js';
import type { WorkingRow } from '../words/told.js';
import { action, cell, fractionKeys } from './cell.js';
import { parted } from './lists.js';

/** A row on the page, with what the reader can do in it. */
export interface ShownRow extends Pick<WorkingRow, 'id' | 'label' | 'role'> {
  field: Field | undefined;
  /** The text in its cell, and the same in words. */
  text: string;
  words: string;
  /** What can be chosen there, in words; undefined if the reader writes it. */
  choices: Record<string, string> | undefined;
  how: string;
  /** A sentence about what is wrong. */
  message: string | undefined;
  /** Whether the reader may change it. */
  isOpen: boolean;
  isMarked: boolean;
  isEdited: boolean;
  isWrong: boolean;
  /** The empty entry at the end of a list. */
  isNext: boolean;
  /** The reader writes it herself, where she could choose. */
  isOwn: boolean;
  /** Not seen on a screen until somebody asks for it. */
  isFolded: boolean;
  /** The value that her own replaces, or undefined if she gave none. */
  instead: string | undefined;
  /** The name of the entry, if she can take it away. */
  takeAway: string | undefined;
  off: boolean;
  t: Teller;
  putBack: () => void;
  take: () => void;
  typeIn: (sign: string) => void;
}

/** How a value was got and what is wrong with it, which describe its cell; then the buttons. */
const howOf = (shown: ShownRow): TemplateResult => {
  const { id, field, how, message, instead, takeAway, off, t, putBack, take } = shown;
  const isOwn = instead !== undefined;
  return html`<span id="how-${id}"
      >${isOwn ? t.say(sayInFace(field ? 'yourOwn' : 'measured')) : unbroken(how)}
      ${message && html`<span part="error" class="error">${unbroken(message)}</span>`}</span
    >
    ${isOwn ? action(unbroken(t.say(sayInFace('putBack', { value: instead }))), putBack, { off }) : nothing}
    ${takeAway === undefined ? nothing : action(t.say(sayInFace('takeAway', { label: parted(takeAway) })), take)}`;
};

/** Words that are longer than this are cut off in a narrow cell. */
const LONG = 20;

/** Whether a choice needs the width of both columns, as a text of several lines does. */
const isLong = (choices: ShownRow['choices']): boolean =>
  Object.values(choices ?? {}).some(({ length }) => length > LONG);

/** A row of three columns: its name, its value, how it was got. */
export const row = (shown: ShownRow): TemplateResult => {
  const { id, label, role, field, text, choices, isOpen, isOwn, isWrong, t } = shown;
  const takesFractions = !field || (field.ownToo ?? /^(length|size)/.test(field.kind));
  const wide = field?.lines ?? (isOpen && isLong(choices));
  const how = howOf(shown);
  return html`<tr class="${role} ${shown.isMarked ? 'marked' : ''} ${shown.isNext ? 'next' : ''} ${shown.isFolded ? 'folded' : ''}">
    <th scope="row" part="label">${isOpen ? html`<label for=${id}>${parted(label)}</label>` : parted(label)}</th>
    <td class="amount" colspan=${wide ? 2 : nothing}>
      ${
        isOpen
          ? cell({ id, field, text, label, choices, isOwn, wrong: isWrong, t })
          : html`<span part="value" data-row=${id} tabindex="-1">${unbroken(shown.words) || '–'}</span>`
      }
      ${shown.isEdited && takesFractions ? fractionKeys(shown.typeIn, t.say(sayInFace('fractionKeys'))) : nothing}
      ${wide ? html`<p part="how" class="how">${how}</p>` : nothing}
    </td>
    ${wide ? nothing : html`<td part="how" class="how">${how}</td>`}
  </tr>`;
};
