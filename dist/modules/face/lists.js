import { html, nothing } from 'lit';
import { Entry } from '../ledger/listing.js';
import { unbroken, unbrokenSize } from '../measure/format.js';
import { sayInFace } from '../words/face-sayings.js';
import { draw } from './drawing.js';

/** The parts at which long words of the trade may break, in English and in German. */
const JOINTS = /corner(?=stone)|zwischen(?=streifen)|eck(?=stein|dreieck)|rand(?=streifen|dreieck)|setz(?=dreieck)|(?:neben|unter)(?=einander)|streifen(?=breite)|schneide(?=matte)|zu(?=schneiden)|zuschneide(?=liste|plan)|halb(?=quadrat)|ge(?=stückelt)|zuschnitt(?=breite|länge)/gi;
/** A word that is too long for a narrow list, whose parts we do not know. */
const HALVES = /\p{L}{16,}/gu;
/** Lets long words break between their parts, or in the middle, so that they do not widen a list on a narrow page. */
const parted = (text) => text.replace(JOINTS, '$&\u00ad').replace(HALVES, (word) => {
    const half = word.length / 2;
    return `${word.slice(0, half)}\u00ad${word.slice(half)}`;
});
/** A ruled table of texts and cells. */
const ruled = (caption, head, rows) => html `<table part="list"> <caption>${caption}</caption> ${head[0] &&
    html `<thead> <tr> ${head.map((words) => html `<th scope="col">${parted(words)}</th>`)} </tr> </thead>`} <tbody> ${rows.map((cells) => html `<tr>${cells.map((text, at) => html `<td data-head=${(text && head[at]) || nothing}>${typeof text === 'string' ? parted(text) : text}</td>`)}</tr>`)} </tbody> </table>`;
const entry = ({ key, text, called }, t) => html `<input part="cell" type="text" size="12" autocomplete="off" data-entry=${key} aria-label=${t.say(called)} .value=${text} />`;
const shown = (cell, t) => cell instanceof Entry ? entry(cell, t) : unbroken(t.cell(cell));
/** A ruled table with its caption. */
const listing = ({ caption, head = [], rows }, t) => ruled(t.say(caption), head.map((one) => t.say(one)), rows.map((cells) => cells.map((cell) => shown(cell, t))));
/** The cut list, if there is anything to cut. */
const cutList = ({ cuts }, t) => cuts[0]
    ? ruled(t.say(sayInFace('cutCaption')), [], cuts.map((cut) => [
        unbroken(t.say(sayInFace('times', cut))),
        unbroken(t.say(cut.piece)),
        unbroken(unbrokenSize(t.size(cut))),
    ]))
    : nothing;
/** Drawings with their captions, in the cloth of these swatches. */
const figures = (pictures, t, swatches) => pictures.map((picture) => html `<figure part="figure"> ${picture.caption && html `<figcaption>${unbroken(t.say(picture.caption))}</figcaption>`} ${draw(picture, t, swatches)} </figure>`);

export { cutList, figures, listing, parted, ruled };
