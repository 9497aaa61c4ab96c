import { html, nothing } from 'lit';
import { unbroken, unbrokenSize } from '../measure/format.js';
import { sayInFace } from '../words/face-sayings.js';
import { draw } from './drawing.js';

/** Where the long words of the trade are joined, in English and in German. */
const JOINTS = /corner(?=stone)|zwischen(?=streifen)|eck(?=stein)|rand(?=streifen|dreieck)|setz(?=dreieck)|neben(?=einander)/gi;
/** On a narrow page a long word breaks where it is joined, and widens no list. */
const parted = (text) => text.replace(JOINTS, '$&\u00ad');
const ruled = (caption, head, rows) => html `<table part="list"> <caption>${caption}</caption> ${head[0] &&
    html `<thead> <tr> ${head.map((words) => html `<th scope="col">${words}</th>`)} </tr> </thead>`} <tbody> ${rows.map((cells) => html `<tr>${cells.map((text, at) => html `<td data-head=${(text && head[at]) || nothing}>${parted(text)}</td>`)}</tr>`)} </tbody> </table>`;
const shown = (cell, t) => unbroken(t.cell(cell));
/** A ruled table with its caption. */
const listing = ({ caption, head = [], rows }, t) => ruled(t.say(caption), head.map((one) => t.say(one)), rows.map((cells) => cells.map((cell) => shown(cell, t))));
/** What to cut, where anything is. */
const cutList = ({ cuts }, t) => cuts[0]
    ? ruled(t.say(sayInFace('cutCaption')), [], cuts.map((cut) => [
        unbroken(t.say(sayInFace('times', cut))),
        unbroken(t.say(cut.piece)),
        unbroken(unbrokenSize(t.size(cut))),
    ]))
    : nothing;
const figures = (pictures, t) => pictures.map((picture) => html `<figure part="figure"> ${picture.caption && html `<figcaption>${unbroken(t.say(picture.caption))}</figcaption>`} ${draw(picture, t)} </figure>`);

export { cutList, figures, listing, parted };
