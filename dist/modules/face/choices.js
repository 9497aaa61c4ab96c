import { sayInFace } from '../words/face-sayings.js';

/** The choice to write something else than what is offered. No text can be the same: its spaces would be gone. */
const OWN = ' own ';
/**
 * What can be chosen in an input's cell, in words, and what stands there already, which is none of these where it was written in
 * an attribute; undefined where it is no choice.
 */
const choicesOf = (field, key, text, t) => {
    const offered = field?.offered?.[t.style.units] ?? field?.options;
    if (!offered)
        return undefined;
    const standing = text.split(', ').filter((choice) => t.words.options[key]?.[choice] || field?.ownToo);
    const choices = [...offered, ...standing].map((choice) => [choice, t.chosen(key, choice)]);
    if (field?.ownToo)
        choices.push([OWN, t.say(sayInFace('ofMyOwn'))]);
    return Object.fromEntries(choices);
};

export { OWN, choicesOf };
