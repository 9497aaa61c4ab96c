import { ZERO } from '../../measure/exact.js';
import { asTyped, mixed } from '../../measure/format.js';
import { isBlank, readLength, textOf, unlessRefused } from '../../reckon/fields.js';
import { letterOf } from '../../reckon/worksheet-parts.js';
import { COTTON_WIDTH } from '../../trade/conventions.js';
import { swatchTrouble } from './swatch.js';

/** A length as it flows to parts that may have other units. One that cannot be read flows as it is, and is wrong there too. */
const flowing = (raw, style) => {
    if (isBlank(raw))
        return { text: undefined };
    return unlessRefused(() => {
        const inches = readLength(raw, style);
        const text = asTyped(inches, style);
        return { text: text.startsWith('≈') ? `${mixed(inches)} in` : text, inches };
    }, () => ({ text: raw }));
};
/** The fabrics declared in a worksheet, by letter; of two with one letter the first. */
class Fabrics {
    #byLetter;
    constructor(declared, 
    /** Of those that do not say their own width. */
    width, style) {
        this.declared = declared;
        this.width = width;
        this.style = style;
        this.#byLetter = new Map();
        /** Empty for one without a name; undefined where no such letter is declared. */
        this.nameOf = (letter) => {
            const fabric = this.#byLetter.get(letter);
            return fabric && (fabric.name ?? '');
        };
        /** A fabric's width, or the worksheet's. One that cannot be read is the narrowest, so that its part says so. */
        this.widthOf = (letter) => {
            const own = this.#byLetter.get(letter)?.fabricWidth;
            const from = isBlank(own) ? 'from the worksheet' : `fabric ${letter}`;
            const { text = '', inches } = flowing(isBlank(own) ? this.width : own, this.style);
            return {
                width: text || undefined,
                from,
                inches: inches ?? (text ? ZERO : readLength(COTTON_WIDTH, this.style)),
            };
        };
        for (const fabric of declared) {
            const letter = letterOf(fabric.letter);
            if (letter && !this.#byLetter.has(letter))
                this.#byLetter.set(letter, fabric);
        }
    }
    /** The letters that a part names, in order; one with a space in it, as it is declared, is taken whole: `A 1`. */
    lettersOf({ fabric }) {
        const letters = [];
        for (const piece of textOf(fabric).split(',')) {
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
    /** How wide the first of these is, and each of them where they differ; in words where that was said. */
    widthsOf([first = '', ...others]) {
        const { width: fabricWidth, inches, from } = this.widthOf(first);
        const wider = others.map((letter) => ({ letter, ...this.widthOf(letter) }));
        const differ = wider.filter((other) => !other.inches.equals(inches));
        if (!differ.length)
            return { fabricWidth, from };
        const each = [{ width: fabricWidth }, ...wider].map(({ width }) => width ?? COTTON_WIDTH);
        const also = differ.map(({ letter, width }) => `fabric ${letter}: ${textOf(width ?? COTTON_WIDTH)}`);
        return { fabricWidth, fabricWidths: each, from: [from, ...also].join('; ') };
    }
    /** The widths of those that say their own. */
    get widths() {
        return Object.fromEntries([...this.#byLetter].flatMap(([letter, { fabricWidth }]) => isBlank(fabricWidth) ? [] : [[letter, this.widthOf(letter).width]]));
    }
    /** What the author has to mend in them, in sentences. */
    get troubles() {
        return [...this.swatches].flatMap(([letter, swatch]) => swatchTrouble(letter, swatch));
    }
    get swatches() {
        return new Map([...this.#byLetter].map(([letter, { swatch }]) => [letter, swatch ?? '']));
    }
}

export { Fabrics, flowing };
