import { ownUnits } from '../measure/format.js';
import { sayings } from '../measure/message.js';
import { refuse } from './refusal.js';

const say = sayings();
/** A calculator's inputs. A function makes them, so that a bundler can leave them out if nobody uses them. */
const inputsOf = (make) => make();
/** The value of an input if nobody writes one. */
const initialOf = ({ initial, followsReader }, style) => typeof initial === 'object' ? initial[followsReader ? style.units : ownUnits(style)] : initial;
const isBlank = (raw) => raw === undefined || raw === null || raw === '';
/** What somebody wrote, as text. Empty for what nobody can write, such as an object. */
const textOf = (raw) => {
    const one = (part) => /^(string|bigint|boolean)$/.test(typeof part) || Number.isFinite(part) ? `${part}` : '';
    return Array.isArray(raw) ? raw.map(one).join(', ') : one(raw);
};
/** Examples that work in a field, for a sentence about a text that does not. */
const likeIn = (field, style) => {
    const initial = initialOf(field, style);
    if (initial !== undefined)
        return [initial];
    const { example = [] } = field;
    return 'in' in example ? example[style.units] : example;
};
/** Says that the input is missing, with an example. */
const missing = (field, style, what) => say('missing', { what, like: likeIn(field, style) });
/** Whether the input is needed and nobody wrote it. */
const isMissing = ({ code, values, input }) => code === 'missing' && 'what' in values && values.what === input;
/** Reads one field. Throws only a `Refusal`. */
const readField = (field, raw, style, what) => {
    const written = raw ?? initialOf(field, style);
    if (!isBlank(written) || field.kind === 'flag')
        return field.read(written, style, what);
    return field.optional ? undefined : refuse(missing(field, style, what));
};
/** Makes an input optional. */
const optional = (field, about = {}) => ({
    ...field,
    ...about,
    optional: true,
});
/** The text in an input's row, as the reader would write it. */
const standing = (field, value, written, style) => {
    const isRead = value !== undefined;
    const text = isRead && field.write ? field.write(value, style, written) : textOf(written);
    // A number alone is in the author's units, even if the reader sees other units.
    const { bare, units } = style;
    return isRead && bare && bare !== units ? (field.marked?.(text, bare) ?? text) : text;
};

export { initialOf, inputsOf, isBlank, isMissing, likeIn, missing, optional, readField, say, standing, textOf };
