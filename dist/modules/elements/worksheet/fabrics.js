import { ZERO } from '../../measure/exact.js';
import { asTyped, mixed } from '../../measure/format.js';
import { isBlank, readLength, textOf, unlessRefused } from '../../reckon/fields.js';
import { COTTON_WIDTH } from '../../trade/conventions.js';

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
        this.nameOf = (letter) => this.#byLetter.get(letter)?.name ?? '';
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
            const letter = textOf(fabric.letter).trim();
            if (letter && !this.#byLetter.has(letter))
                this.#byLetter.set(letter, fabric);
        }
    }
    /** The narrowest of these, so that no cloth is short. */
    narrowest(letters) {
        return (letters.length ? letters : ['']).map(this.widthOf).sort((a, b) => a.inches.compare(b.inches))[0];
    }
    /** The widths of those that say their own. */
    get widths() {
        return Object.fromEntries([...this.#byLetter].flatMap(([letter, { fabricWidth }]) => isBlank(fabricWidth) ? [] : [[letter, this.widthOf(letter).width]]));
    }
    get swatches() {
        return new Map([...this.#byLetter].map(([letter, { swatch }]) => [letter, swatch ?? '']));
    }
}

export { Fabrics, flowing };
