import { standing } from '../ledger/field.js';
import { Purchase, Money, Cut } from '../ledger/purchase.js';
import { Quantity } from '../ledger/quantity.js';
import { isExact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { Message } from '../measure/message.js';
import { equals } from './teller.js';

/** Makes plain data: every exact number is a mixed number, every message a sentence. Undefined values and `used` are left out. */
const written = (value, t) => {
    if (typeof value !== 'object' || !value)
        return value;
    if (isExact(value))
        return mixed(value);
    if (value instanceof Message)
        return t.say(value);
    if (value instanceof Quantity)
        return mixed(value.value);
    if (value instanceof Purchase) {
        const { inches, amount, unit } = value;
        return { inches: mixed(inches), amount: t.shopAmount(amount, unit), unit, text: t.bought(value) };
    }
    if (value instanceof Money)
        return { amount: value.amount, text: t.money(value) };
    if (value instanceof Cut) {
        const { count, piece, width, length } = value;
        return { count, piece: t.say(piece), width: mixed(width), length: mixed(length), text: t.size(value) };
    }
    if (Array.isArray(value))
        return value.map((one) => written(one, t));
    const plain = {};
    for (const [key, part] of Object.entries(value))
        if (part !== undefined && key !== 'used')
            plain[key] = written(part, t);
    return plain;
};
const givenRow = (row, field, t) => {
    const { id, value } = row;
    const text = field ? standing(field, value, row.written, t.style) : '';
    const shown = {
        id,
        label: t.label(id),
        value: field ? t.standing(id, field, text) : text,
        how: t.hint(id),
        from: [],
        role: 'given',
    };
    if (field?.more)
        shown.more = true;
    // A step is its own code, unless it is no length.
    if (field?.options || field?.kind === 'flag' || shown.value !== text)
        shown.code = text;
    if (field?.kind === 'length' && isExact(value)) {
        shown.inches = mixed(value);
        if (!text.endsWith(t.style.units))
            shown.how = t.l(value);
    }
    return shown;
};
const howOf = ({ how, value, reckoned }, t) => how instanceof Message ? t.say(how) : equals(t.formula(how), t.value(reckoned ?? value));
const reckonedRow = (row, t) => {
    const { id, label, value, role, reckoned, from } = row;
    const isLength = value instanceof Quantity && value.kind === 'length';
    const shown = {
        id,
        label: t.label(label ?? id),
        value: reckoned && isLength ? t.typed(value.value) : t.value(value),
        how: howOf(row, t),
        from,
        role,
    };
    if (isLength)
        shown.inches = mixed(value.value);
    if (reckoned)
        shown.reckoned = t.value(reckoned);
    return shown;
};
/** A row in words. */
const toldRow = (row, fields, t) => row.role === 'given' ? givenRow(row, fields[row.id], t) : reckonedRow(row, t);
/** The same for an author, who writes choices as codes. */
const toAuthor = (issue) => issue.code === 'notChoice'
    ? { ...issue, code: 'notCode' }
    : issue;
/** Properties that are made when somebody first reads them. So reading only the amount makes no sentences. */
const late = (makers) => {
    const made = {};
    for (const key of Object.keys(makers))
        Object.defineProperty(made, key, {
            enumerable: true,
            configurable: true,
            get: () => {
                const value = makers[key]();
                Object.defineProperty(made, key, { value, enumerable: true, configurable: true, writable: true });
                return value;
            },
        });
    return made;
};
/** The result as plain data in words. Each part is made when somebody first reads it. */
const told = ({ issues, own, rows, notes, cost }, fields, t) => {
    const working = () => rows.map((row) => toldRow(row, fields, t));
    if (!own)
        return late({
            errors: () => issues.map((issue) => ({ input: issue.input, message: t.say(toAuthor(issue)) })),
            working,
        });
    const makers = {};
    for (const [key, part] of Object.entries(own))
        if (part !== undefined && key !== 'used')
            makers[key] = () => written(part, t);
    if (cost)
        makers['cost'] = () => written(cost, t);
    makers['notes'] = () => notes.map((note) => t.say(note));
    makers['working'] = working;
    return late(makers);
};

export { told, toldRow };
