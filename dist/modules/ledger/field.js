import { sayings } from '../measure/message.js';
import { refuse } from './refusal.js';

const say = sayings();
/** A calculator's inputs. A function makes them, so that a bundler can leave them out where nobody asks for them. */
const inputsOf = (make) => make();
/** What stands in a field when nothing is written there. */
const initialOf = ({ initial }, { units }) => typeof initial === 'object' ? initial[units] : initial;
const isBlank = (raw) => raw === undefined || raw === null || raw === '';
/** What was written, as text; nothing for what nobody writes, such as an object. */
const textOf = (raw) => {
    const one = (part) => /^(string|bigint|boolean)$/.test(typeof part) || Number.isFinite(part) ? `${part}` : '';
    return Array.isArray(raw) ? raw.map(one).join(', ') : one(raw);
};
/** What works in a field, for a sentence about what does not. */
const likeIn = (field, style) => {
    const initial = initialOf(field, style);
    if (initial !== undefined)
        return [initial];
    const { example = [] } = field;
    return 'in' in example ? example[style.units] : example;
};
/** That something has to be written here, and an example. */
const missing = (field, style, what) => say('missing', { what, like: likeIn(field, style) });
/** Whether nothing was written where something has to be. */
const isMissing = ({ code, values, input }) => code === 'missing' && 'what' in values && values.what === input;
/** Reads one field. Throws only a `Refusal`. */
const readField = (field, raw, style, what) => {
    const written = raw ?? initialOf(field, style);
    if (!isBlank(written) || field.kind === 'flag')
        return field.read(written, style, what);
    return field.optional ? undefined : refuse(missing(field, style, what));
};
/** The same input, which may also be left out. */
const optional = (field, about = {}) => ({
    ...field,
    ...about,
    optional: true,
});
/** What stands in an input's row, as its reader would write it. */
const standing = (field, value, written, style) => {
    const isRead = value !== undefined;
    const text = isRead && field.write ? field.write(value, style, written) : textOf(written);
    // Bare numbers stay the author's where the reader sees others.
    const { bare, units } = style;
    return isRead && bare && bare !== units ? (field.marked?.(text, bare) ?? text) : text;
};

export { initialOf, inputsOf, isBlank, isMissing, likeIn, missing, optional, readField, say, standing, textOf };
