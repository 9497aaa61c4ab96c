import { textOf, isBlank } from '../ledger/field.js';
import { usualLength, readLength } from '../ledger/lengths.js';
import { unlessRefused } from '../ledger/refusal.js';
import { ZERO, isExact } from '../measure/exact.js';
import { ownUnits } from '../measure/format.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { letterOf } from './parts.js';
import { sayOfFlow } from './flow-sayings.js';
import { swatchTrouble } from './swatch.js';

/** A length that flows to parts, which may have other units. A text that cannot be read flows too: the part then says what is wrong. */
const flowing = (raw, style) => isBlank(raw)
    ? { value: undefined }
    : unlessRefused(() => {
        const inches = readLength(raw, style);
        return { value: inches, inches };
    }, () => ({ value: raw }));
/** The fabrics of a worksheet, by letter. If two have the same letter, the first one counts. */
class Fabrics {
    #byLetter = new Map();
    constructor(declared, 
    /** The width of fabrics that do not say their own. */
    width, style) {
        this.declared = declared;
        this.width = width;
        this.style = style;
        for (const fabric of declared) {
            const letter = letterOf(fabric.letter);
            if (letter && !this.#byLetter.has(letter))
                this.#byLetter.set(letter, fabric);
        }
    }
    /** Empty if the fabric has no name. Undefined if no fabric has this letter. */
    nameOf(letter) {
        const fabric = this.#byLetter.get(letter);
        return fabric && textOf(fabric.name);
    }
    /** The letters that a part names, in order. A declared letter may have a space in it: `A 1`. */
    lettersIn(written) {
        const letters = [];
        for (const piece of textOf(written).split(',')) {
            const words = piece.split(/\s+/).filter(Boolean);
            while (words[0]) {
                let taken = words.length;
                while (taken > 1 && !this.#byLetter.has(words.slice(0, taken).join(' ')))
                    taken -= 1;
                letters.push(words.splice(0, taken).join(' '));
            }
        }
        return letters;
    }
    /** The width of a fabric, or that of the worksheet. An unreadable width counts as the narrowest, so that its part says what is wrong. */
    widthOf(letter) {
        const own = this.#byLetter.get(letter)?.fabricWidth;
        const isOwn = !isBlank(own);
        const { value: width, inches } = flowing(isOwn ? own : this.width, this.style);
        return {
            width,
            from: isOwn ? sayOfFlow('fromFabric', { letter }) : sayOfFlow('fromWorksheet'),
            inches: inches ?? (isBlank(width) ? usualLength(COTTON_WIDTH, this.style) : ZERO),
        };
    }
    /** How wide the first of these is, how wide each is if they differ, and who said so. */
    widthsOf([first = '', ...others]) {
        const { width: fabricWidth, inches, from } = this.widthOf(first);
        const wider = others.map((letter) => ({ letter, ...this.widthOf(letter) }));
        const differ = wider.filter((other) => !other.inches.equals(inches));
        if (!differ.length)
            return { fabricWidth, from };
        const shown = ({ letter, width }) => ({
            letter,
            width: width === undefined ? usualLength(COTTON_WIDTH, this.style) : isExact(width) ? width : textOf(width),
        });
        return {
            fabricWidth,
            fabricWidths: [{ width: fabricWidth }, ...wider].map(({ width }) => width ?? COTTON_WIDTH[ownUnits(this.style)]),
            from: sayOfFlow('fromSeveral', { first: from, others: differ.map(shown) }),
        };
    }
    /** The widths of those that say their own. */
    get widths() {
        return Object.fromEntries([...this.#byLetter].flatMap(([letter, { fabricWidth }]) => isBlank(fabricWidth) ? [] : [[letter, this.widthOf(letter).width]]));
    }
    get swatches() {
        return new Map([...this.#byLetter].map(([letter, { swatch }]) => [letter, swatch ?? '']));
    }
    /** What the author has to correct. Only a page knows what is a colour, so it gives the function. */
    troubles(isColour) {
        return [...this.swatches].flatMap(([letter, swatch]) => swatchTrouble(letter, swatch, isColour));
    }
}

export { Fabrics, flowing };
