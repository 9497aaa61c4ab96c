import { INCHES } from '../measure/units.js';

const placeKey = (id, entry = 0) => `${id}/${entry}`;
const atom = (text) => ({ text, strength: 3 });
const product = (text) => ({ text, strength: 2 });
const sum = (text) => ({ text, strength: 1 });
const side = ({ text, strength }, least) => (strength < least ? `(${text})` : text);
/** A small amount that makes up for floating point: 12.000000000000002 steps still count as 12, and half a coin as half. */
const PLACES = 9;
/** The most decimals of a plain number. A number with more of them is written as a fraction. */
const SHORT = 10n ** 12n;
/** A difference that nobody can cut, in inches: see `toMark`. */
const CUTTABLE = { s: 1n, n: 1n, d: 128n };
/** A number for a formula. */
const literal = ({ s, n, d }) => {
    const number = `${Number(n) / Number(d)}`;
    const isPlain = SHORT % d === 0n && !number.includes('e');
    const text = isPlain ? number : `${n}/${d}`;
    if (s < 0n)
        return sum(`-${text}`);
    return isPlain ? atom(text) : product(text);
};
/** Writes a quantity as a spreadsheet formula over the cells of a sheet, with lengths in these units. */
class Formulas {
    #refers;
    constructor(places, units) {
        this.places = places;
        this.units = units;
        /** The cells that some formula uses. */
        this.used = new Set();
        this.#refers = false;
    }
    /** A formula without its equals sign. Undefined if it uses no cell, so that it is only a number. */
    of(quantity, per) {
        this.#refers = false;
        const part = this.#part(quantity);
        const unit = per && this.#length(per);
        const isOther = unit && unit.text !== '1';
        const text = isOther ? `${side(part, 2)}/${side(unit, 3)}` : part.text;
        return this.#refers ? text : undefined;
    }
    /** Checks that one is at least the other. */
    reaches(reach, need) {
        return `ROUND(${this.#part(reach).text}-${side(this.#part(need), 2)},6)>=0`;
    }
    /** Inches as a number in the sheet's units. */
    #length({ s, n, d }) {
        const unit = INCHES[this.units];
        const [top, bottom] = [n * unit.d, d * unit.n];
        const by = divisor(top, bottom);
        return literal({ s, n: top / by, d: bottom / by });
    }
    #row({ value, kind, row, entry }) {
        const place = this.places.get(placeKey(row, entry));
        if (!place)
            return kind === 'length' ? this.#length(value) : literal(value);
        this.#refers = true;
        this.used.add(place.address);
        const { address, per } = place;
        const unit = per && kind === 'length' ? this.#length(per) : undefined;
        return !unit || unit.text === '1' ? atom(address) : product(`${address}*${side(unit, 2)}`);
    }
    /** Rounded up to whole steps. */
    #up(part, step) {
        const isOne = step.text === '1';
        const steps = isOne ? part.text : `${side(part, 2)}/${side(step, 3)}`;
        const whole = `CEILING(ROUND(${steps},${PLACES}),1)`;
        return isOne ? atom(whole) : product(`${whole}*${side(step, 2)}`);
    }
    #mark(part, mark) {
        const less = `(${part.text}-${this.#length(CUTTABLE).text})/${side(mark, 3)}`;
        return product(`(INT(ROUND(${less},${PLACES}))+1)*${side(mark, 2)}`);
    }
    #part(quantity) {
        const { operation, value, kind } = quantity;
        if (operation === 'row')
            return this.#row(quantity);
        const [first, ...others] = quantity.parts.map((part) => this.#part(part));
        if (!first || operation === 'number')
            return kind === 'length' ? this.#length(value) : literal(value);
        const second = others[0] ?? first;
        switch (operation) {
            case '+':
                return sum(`${first.text}+${side(second, 1)}`);
            case '−':
                return sum(`${first.text}-${side(second, 2)}`);
            case '×':
                return product(`${side(first, 2)}*${side(second, 2)}`);
            case '÷':
                return product(`${side(first, 2)}/${side(second, 3)}`);
            case '√':
                return atom(`SQRT(${first.text})`);
            case '×√2':
                return product(`${side(first, 2)}*SQRT(2)`);
            case '÷√2':
                return product(`${side(first, 2)}/SQRT(2)`);
            case 'up':
                return this.#up(first, second);
            case 'step':
                return least(others.map((step) => this.#up(first, step)));
            case 'mark':
                return this.#mark(first, second);
            case 'coin':
                return atom(`ROUND(ROUND(${first.text},${PLACES}),${decimalsOf(quantity)})`);
            case 'result':
                return first;
        }
    }
}
/** The least of several. */
const least = (parts) => {
    const [only, ...others] = parts;
    return only && !others.length ? only : atom(`MIN(${parts.map(({ text }) => text).join(',')})`);
};
/** The decimals that the coins of a sum have. */
const decimalsOf = ({ parts: [, coin] }) => coin ? Math.round(-Math.log10(coin.value.valueOf())) : 2;
/** The greatest number that divides both. */
const divisor = (a, b) => (b ? divisor(b, a % b) : a || 1n);

export { Formulas, placeKey };
