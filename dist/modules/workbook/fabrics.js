import { textOf, isBlank } from '../ledger/field.js';
import { ownLength, readLength } from '../ledger/lengths.js';
import { unlessRefused } from '../ledger/refusal.js';
import { ZERO, isExact } from '../measure/exact.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { letterOf } from './parts.js';
import { sayOfFlow } from './flow-sayings.js';
import { swatchTrouble } from './swatch.js';

/** A length as it flows to parts that may have other units. One that cannot be read flows as it is, and is wrong there too. */
const flowing = (raw, style) => isBlank(raw)
    ? { value: undefined }
    : unlessRefused(() => {
        const inches = readLength(raw, style);
        return { value: inches, inches };
    }, () => ({ value: raw }));
/** The fabrics declared in a worksheet, by letter; of two with one letter the first. */
class Fabrics {
    #byLetter = new Map();
    constructor(declared, 
    /** Of those that do not say their own width. */
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
    /** Empty for one without a name; undefined where no such letter is declared. */
    nameOf(letter) {
        const fabric = this.#byLetter.get(letter);
        return fabric && textOf(fabric.name);
    }
    /** The letters that a part names, in order; one with a space in it, as it is declared, is taken whole: `A 1`. */
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
    /** A fabric's width, or the worksheet's. One that cannot be read is the narrowest, so that its part says so. */
    widthOf(letter) {
        const own = this.#byLetter.get(letter)?.fabricWidth;
        const isOwn = !isBlank(own);
        const { value: width, inches } = flowing(isOwn ? own : this.width, this.style);
        return {
            width,
            from: isOwn ? sayOfFlow('fromFabric', { letter }) : sayOfFlow('fromWorksheet'),
            inches: inches ?? (isBlank(width) ? ownLength(COTTON_WIDTH[this.style.units]) : ZERO),
        };
    }
    /** How wide the first of these is, and each of them where they differ; and where that was said. */
    widthsOf([first = '', ...others]) {
        const { width: fabricWidth, inches, from } = this.widthOf(first);
        const wider = others.map((letter) => ({ letter, ...this.widthOf(letter) }));
        const differ = wider.filter((other) => !other.inches.equals(inches));
        if (!differ.length)
            return { fabricWidth, from };
        const shown = ({ letter, width }) => ({
            letter,
            width: width === undefined
                ? ownLength(COTTON_WIDTH[this.style.units])
                : isExact(width)
                    ? width
                    : textOf(width),
        });
        return {
            fabricWidth,
            fabricWidths: [{ width: fabricWidth }, ...wider].map(({ width }) => width ?? COTTON_WIDTH[this.style.units]),
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
    /** What the author has to mend in them; a page can tell what is a colour. */
    troubles(isColour) {
        return [...this.swatches].flatMap(([letter, swatch]) => swatchTrouble(letter, swatch, isColour));
    }
}

export { Fabrics, flowing };
