import { html, nothing, isServer } from 'lit';
import { MEASURE_FIRST, CUTTER_CAUTION, listing, figures } from '../../sheet/lists.js';
import { nameOf, shopping, linesOf } from './shopping.js';
import { isColour, isPicture } from './swatch.js';

/** Every fabric with its letter, its name and its amounts, and a box to tape a swatch into. */
const fabricKey = (result, swatches) => {
    const amounts = new Map();
    for (const { letter, name, text } of linesOf(result))
        if (letter)
            amounts.set(letter, { letter, name, texts: [...(amounts.get(letter)?.texts ?? []), text] });
    const shown = (swatch) => isServer
        ? html `<span></span>`
        : isColour(swatch)
            ? html `<span .style=${`background-color:${swatch}`}></span>`
            : isPicture(swatch)
                ? html `<img src=${swatch} alt="" />`
                : nothing;
    const box = (swatch) => html `<td class="swatch">${swatch ? shown(swatch) : nothing}</td>`;
    return amounts.size
        ? html `<table part="list" class="key"> <caption>Fabric key</caption> <tbody> ${[...amounts.values()].map(({ letter, name, texts }) => html `<tr>${box(swatches.get(letter))}<th scope="row">${letter}</th><td>${name}</td><td>${texts.join(' and ')}</td></tr>`)} </tbody> </table>`
        : nothing;
};
/** The requirement sheet: what to buy, the fabric key, what to cut from which fabric, and every part's drawings. */
const requirementSheet = (result, { parts, pieces, key, joint, size, style, }) => {
    const names = [...new Set(pieces.map(nameOf))];
    const cutFrom = (name) => listing({
        caption: `Cut from ${name}`,
        rows: pieces
            .filter((piece) => nameOf(piece) === name)
            .map(({ cut }) => [`${cut.count} ×`, cut.text, cut.piece]),
    });
    const drawn = ({ calculator, result, lengthStyle }) => {
        if (result.errors)
            return nothing;
        const [first, ...others] = figures(calculator.draw(result, lengthStyle));
        const strips = calculator.listings?.(result, lengthStyle).filter(({ toCut }) => toCut);
        return html `<section><h2>${calculator.title}</h2><p>${[result.summary, ...result.notes].join(' ')}</p>${first}</section>${others}${strips?.map(listing)}`;
    };
    return html `<section class="paper"> <h1>${document.title}</h1> <p>${size} ${MEASURE_FIRST}</p> ${listing(shopping(result, style))} ${result.notes.map((note) => html `<p class="note">${note}</p>`)} ${key} <div class="columns"> <p>${CUTTER_CAUTION}</p> ${names.map(cutFrom)} ${joint} ${parts.map(drawn)} </div> </section>`;
};

export { fabricKey, requirementSheet };
