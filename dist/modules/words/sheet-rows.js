import { standing } from '../ledger/field.js';
import { INCHES } from '../measure/units.js';
import { sayInFace } from './face-sayings.js';
import { formulaOf } from './formula.js';
import { Formulas, placeKey } from './sheet-formula.js';
import { saying } from './sheet-words.js';
import { sayInSpreadsheet } from './spreadsheet-sayings.js';
import { equals } from './teller.js';

/** The number of digits that floating point holds. */
const DIGITS = 15;
const numberOf = (value) => Number(value.valueOf().toPrecision(DIGITS));
/** A length as a number in the reader's units. */
const lengthIn = (length, { style }) => Number((length.valueOf() / INCHES[style.units].valueOf()).toPrecision(DIGITS - 1));
const PERCENT = '0.0%';
const moneyFormat = (decimals) => (decimals ? `0.${'0'.repeat(decimals)}` : '0');
/** Puts the rows of a reckoning into cells. */
class SheetRows {
    /** Formulas in words, which stay true after a change: `[Quilt width] + 2 × [Overage]`. */
    #inWords;
    constructor(t, places) {
        this.t = t;
        this.formulas = new Formulas(places, t.style.units);
        this.#inWords = numeralsOf(places, t);
    }
    of(row, fields) {
        return row.role === 'given' ? this.#given(row, fields) : [this.#reckoned(row)];
    }
    /** The rows of an input: one for each entry of a list, so that formulas can use each. None if nobody gave it. */
    #given({ id, value, written }, fields) {
        const { t } = this;
        const field = fields[id];
        const text = field ? standing(field, value, written, t.style) : '';
        if (!field || value === undefined || !text)
            return [];
        const hint = t.hint(id);
        const row = (cell, unit = '', how = hint, entry = 0, label = t.label(id)) => ({
            id,
            entry,
            label,
            isGiven: true,
            cells: () => [label, cell, unit, how],
        });
        const numbered = (number) => field.each
            ? t.entry(id, number)
            : saying(t)(sayInSpreadsheet('numberedRow', { label: t.label(id), number }));
        const lengths = (all, how, isList) => all.map((length, at) => {
            const label = isList ? numbered(at + 1) : t.label(id);
            return row({ value: lengthIn(length, t) }, t.style.units, how, at, label);
        });
        switch (field.kind) {
            case 'length':
                return lengths([value], hint, false);
            case 'lengths':
            case 'size':
                return lengths(value, hint, true);
            case 'step': {
                const { sizes } = value;
                return lengths(sizes, text, sizes.length > 1);
            }
            case 'count':
                return [row({ value: value })];
            case 'percent':
                return [row({ value: numberOf(value), format: PERCENT })];
            case 'money':
                return [row({ value: numberOf(value) })];
            case 'flag':
            case 'choice':
            case 'choices':
            case 'text':
            case 'own':
                return [row(t.standing(id, field, text))];
        }
    }
    #reckoned(row) {
        const { id, value } = row;
        const label = this.t.label(row.label ?? id);
        const per = 'unit' in value && value.unit in INCHES ? INCHES[value.unit] : undefined;
        const cells = () => [label, ...this.#valueCells(row, per), ...this.#howCells(row)];
        return { id, entry: 0, label, isGiven: false, per, cells };
    }
    /** Its value and its unit. */
    #valueCells({ value, formula: other }, per) {
        const { t } = this;
        const quantity = 'operation' in value ? value : other;
        const formula = quantity && this.formulas.of(quantity, per);
        if ('operation' in value)
            return value.kind === 'length'
                ? [{ value: lengthIn(value.value, t), formula }, t.style.units]
                : [{ value: numberOf(value.value), formula }, ''];
        if ('unit' in value)
            return [{ value: numberOf(value.amount), formula }, t.unitOf(value)];
        if ('decimals' in value) {
            const format = moneyFormat(value.decimals);
            return [{ value: numberOf(value.value), formula, format }, value.currency ?? ''];
        }
        // If words have a number in them, the cell holds that number: formulas use it.
        return [other ? { value: numberOf(other.value), formula } : t.say(value), ''];
    }
    /** How it was got: a formula in words and the working of the page, or the reason if it was found by a search. */
    #howCells(row) {
        const { t } = this;
        const { value, how, reckoned } = row;
        const onPage = 'code' in how ? t.say(how) : equals(t.formula(how), t.value(reckoned ?? value));
        if (row.role === 'measured')
            return [saying(t)(sayInFace('measured')), onPage];
        const quantity = 'operation' in value ? value : row.formula;
        if (quantity && this.formulas.of(quantity))
            return [formulaOf(quantity, this.#inWords), onPage];
        const isNumber = 'code' in value && row.formula;
        return [this.#checked(how, isNumber ? `${t.say(value)}: ${onPage}` : onPage)];
    }
    /** Why this number was found. After a change that makes it too small, the cell says so. */
    #checked(how, reason) {
        const checks = checksIn(how).map(({ reach, need }) => this.formulas.reaches(reach, need));
        if (!checks.length)
            return reason;
        const tooLittle = saying(this.t)(sayInSpreadsheet('tooLittleNow'));
        const isEnough = checks.length > 1 ? `AND(${checks.join(',')})` : checks.join('');
        return { value: reason, formula: `IF(${isEnough},${inFormula(reason)},${inFormula(tooLittle)})` };
    }
}
/** Rows by what they are called, and other numbers as they are. */
const numeralsOf = (places, t) => {
    const say = saying(t);
    const numerals = {
        n: (quantity) => {
            const { operation, row, entry, parts } = quantity;
            const place = operation === 'row' && places.get(placeKey(row, entry));
            if (place)
                return `[${place.label}]`;
            return operation === 'result' && parts[0] ? `(${formulaOf(parts[0], numerals)})` : t.n(quantity);
        },
        rounded: (how, formula, step) => say(how === 'coin'
            ? sayInSpreadsheet('toCoin', { formula })
            : sayInSpreadsheet('toNextStep', { formula, step: numerals.n(step) })),
    };
    return numerals;
};
const isQuantity = (value) => typeof value === 'object' && !!value && 'operation' in value;
/** Every check in a reason: a reach that is at least the need. If a strip makes up the rest, there is no check. */
const checksIn = (value) => {
    if (Array.isArray(value))
        return value.flatMap(checksIn);
    if (typeof value !== 'object' || !value || !('code' in value && 'values' in value))
        return [];
    const values = value.values;
    const { reach, need, isShort } = values;
    if (isQuantity(reach) && isQuantity(need))
        return isShort ? [] : [{ reach, need }];
    return Object.values(values).flatMap(checksIn);
};
/** Spreadsheet programs allow no longer text in a formula. */
const LONGEST_TEXT = 250;
const inFormula = (text) => (text.match(new RegExp(`[^]{1,${LONGEST_TEXT}}`, 'gu')) ?? [''])
    .map((part) => `"${part.replaceAll('"', '""')}"`)
    .join('&');

export { SheetRows, lengthIn };
