import { nothing, html, isServer } from 'lit';
import { listing, figures } from '../../face/lists.js';
import { swatchIn, isColour } from '../../face/swatch.js';
import { isPicture } from '../../workbook/swatch.js';
import { mayLeave, leftoverList } from '../../workbook/leftover-list.js';
import { shopping, fabricKey, namedOf } from '../../workbook/shopping.js';
import { say } from '../../workbook/sayings.js';
import { sayInFace } from '../../words/face-sayings.js';

/** A swatch as a page shows it. */
const swatchOf = (swatch) => {
    if (isServer)
        return html `<span></span>`;
    if (isColour(swatch))
        return html `<span .style=${`background-color:${swatch}`}></span>`;
    return isPicture(swatch) ? html `<img src=${swatch} alt="" />` : nothing;
};
/** Every fabric with its letter, its name and its amounts, and a box to tape a swatch into. */
const keyOf = ({ answer, t }, swatches) => {
    const key = fabricKey(answer);
    const box = (swatch) => html `<td class="swatch">${swatch ? swatchOf(swatch) : nothing}</td>`;
    return key.length
        ? html `<table part="list" class="key"> <caption>${t.say(say('fabricKey'))}</caption> <tbody> ${key.map(({ letter, name, amounts }) => html `<tr>${box(swatchIn(swatches, letter))}<th scope="row">${letter}</th><td>${name}</td><td>${t.say(say('allAmounts', { amounts }))}</td></tr>`)} </tbody> </table>`
        : nothing;
};
/** The cut list, by fabric. */
const cutLists = (pieces, t) => {
    const called = ({ letter, name }) => namedOf({ letter, name: typeof name === 'string' ? name : t.say(name) });
    const names = new Map();
    for (const piece of pieces)
        names.set(called(piece), [...(names.get(called(piece)) ?? []), piece]);
    return [...names].map(([fabric, pieces]) => listing({
        caption: say('cutFrom', { fabric }),
        rows: pieces.map(({ cut }) => [
            sayInFace('times', cut),
            say('cutSize', { width: cut.width, length: cut.length }),
            cut.piece,
        ]),
    }, t));
};
/** The drawings of a part, with its summary and the lists that say how to cut. */
const drawn = (part) => {
    const { answer, teller: t, outcome } = part;
    if (!answer)
        return nothing;
    const [first, ...others] = figures(part.pictures(answer), t, part.swatches);
    const strips = part.lists(answer).filter(({ toCut }) => toCut);
    const said = [answer.summary, ...outcome.reckoning.notes].map((message) => t.say(message));
    return html `<section><h2>${part.called}</h2><p>${said.join(' ')}</p>${first}</section>${others}${strips.map((list) => listing(list, t))}`;
};
/** The requirement sheet: what to buy, the fabric key, what to cut from which fabric, and every part's drawings. */
const requirementSheet = ({ answer, reckoning, t }, about) => html `<section class="paper" lang=${t.words.lang}> <h1>${document.title}</h1> <p>${about.size} ${t.say(sayInFace('measureFirst'))}</p> ${about.quilt} ${listing(shopping(answer), t)} ${reckoning.notes.map((note) => html `<p class="note">${t.say(note)}</p>`)} ${about.key} ${mayLeave(answer) ? listing(leftoverList(answer, t.style), t) : nothing} ${about.lists.map((list) => listing(list, t))} <div class="columns"> <p>${t.say(sayInFace('cutterCaution'))}</p> ${cutLists(about.pieces, t)} ${about.joint} ${about.parts.map(drawn)} </div> </section>`;

export { keyOf, requirementSheet };
