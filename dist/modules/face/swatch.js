import { isServer } from 'lit';
import { isPicture } from '../workbook/swatch.js';

/** Whether a text is a colour. A server cannot know that, so there every text counts as one. */
const isColour = (swatch) => isServer || CSS.supports('color', swatch);
/** What the page wrote as the swatch of a fabric, or empty. */
const swatchIn = (swatches, letter) => (letter && swatches && Object.hasOwn(swatches, letter) && swatches[letter]) || '';
let canvas;
const known = new Map();
/** The colour as a browser writes it. One that only the page knows, such as `var(--sand)`, has none. */
const resolved = (colour) => {
    canvas ??= document.createElement('canvas').getContext('2d');
    if (!canvas)
        return undefined;
    // What a canvas cannot read leaves it as it was.
    const [one, other] = ['#000001', '#000002'].map((before) => {
        if (canvas)
            Object.assign(canvas, { fillStyle: before }, { fillStyle: colour });
        return canvas?.fillStyle;
    });
    return typeof one === 'string' && one === other ? one : undefined;
};
/** How light a colour is, from 0 to 1, as WCAG 2 has it. One that is not written in red, green and blue counts as light. */
const luminance = (colour) => {
    const hex = /^#(..)(..)(..)$/.exec(colour)?.slice(1);
    const parts = hex
        ? hex.map((part) => parseInt(part, 16))
        : (/^rgba?\((.*)\)/.exec(colour)?.[1] ?? '').split(',');
    const [red = 1, green = 1, blue = 1] = parts.map((part) => {
        const share = Number(part) / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};
/** At this lightness black and white words have the same contrast. */
const MIDDLE = 0.179;
const fillFor = (swatch) => {
    if (!isColour(swatch))
        return isPicture(swatch) ? { picture: swatch.trim() } : undefined;
    const colour = resolved(swatch);
    return colour === undefined ? undefined : { colour, isDark: luminance(colour) < MIDDLE };
};
/** What the pieces of a fabric are filled with. Undefined without a swatch, and on a server, which knows no colours. */
const fillOf = (swatches, letter) => {
    const swatch = swatchIn(swatches, letter);
    if (isServer || !swatch)
        return undefined;
    if (!known.has(swatch))
        known.set(swatch, fillFor(swatch));
    return known.get(swatch);
};

export { fillOf, isColour, swatchIn };
