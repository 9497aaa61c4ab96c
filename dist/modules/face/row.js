import { nothing, html } from 'lit';
import { unbroken } from '../measure/format.js';
import { sayInFace } from '../words/face-sayings.js';
import { cell, fractionKeys, action } from './cell.js';
import { parted } from './lists.js';

/** How a value was got and what is wrong with it, which describe its cell; then the buttons. */
const howOf = (shown) => {
    const { id, field, how, message, instead, takeAway, off, t, putBack, take } = shown;
    const isOwn = instead !== undefined;
    return html `<span id="how-${id}">${isOwn ? t.say(sayInFace(field ? 'yourOwn' : 'measured')) : unbroken(how)} ${message && html `<span part="error" class="error">${unbroken(message)}</span>`}</span> ${isOwn ? action(unbroken(t.say(sayInFace('putBack', { value: instead }))), putBack, { off }) : nothing} ${takeAway === undefined ? nothing : action(t.say(sayInFace('takeAway', { label: parted(takeAway) })), take)}`;
};
/** Words that are longer than this are cut off in a narrow cell. */
const LONG = 20;
/** Whether a choice needs the width of both columns, as a text of several lines does. */
const isLong = (choices) => Object.values(choices ?? {}).some(({ length }) => length > LONG);
/** A row of three columns: its name, its value, how it was got. */
const row = (shown) => {
    const { id, label, role, field, text, choices, isOpen, isOwn, isWrong, t } = shown;
    const takesFractions = !field || (field.ownToo ?? /^(length|size)/.test(field.kind));
    const wide = field?.lines ?? (isOpen && isLong(choices));
    const how = howOf(shown);
    return html `<tr class="${role} ${shown.isMarked ? 'marked' : ''} ${shown.isNext ? 'next' : ''} ${shown.isFolded ? 'folded' : ''}"> <th scope="row" part="label">${isOpen ? html `<label for=${id}>${parted(label)}</label>` : parted(label)}</th> <td class="amount" colspan=${wide ? 2 : nothing}> ${isOpen
        ? cell({ id, field, text, label, choices, isOwn, wrong: isWrong, t })
        : html `<span part="value" data-row=${id} tabindex="-1">${unbroken(shown.words) || '–'}</span>`} ${shown.isEdited && takesFractions ? fractionKeys(shown.typeIn, t.say(sayInFace('fractionKeys'))) : nothing} ${wide ? html `<p part="how" class="how">${how}</p>` : nothing} </td> ${wide ? nothing : html `<td part="how" class="how">${how}</td>`} </tr>`;
};

export { row };
