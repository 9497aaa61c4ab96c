import { textOf } from '../ledger/field.js';
import { tried, readWritten } from './prices.js';
import { say } from './sayings.js';
import { worksheetFields } from './shape.js';

/** A fabric's letter, with one space wherever there are several. */
const letterOf = (written) => textOf(written).replace(/\s+/g, ' ').trim();
/** The fabrics that the page declares; of two with one letter the first. */
const readFabrics = (ledger, fabrics) => {
    const declared = [];
    for (const { name, price, fabricWidth, ...fabric } of fabrics) {
        const letter = letterOf(fabric.letter);
        if (!letter)
            ledger.note(say('noLetter'));
        else if (declared.some((one) => one.letter === letter))
            ledger.note(say('sameLetter', { letter }));
        else {
            tried(ledger, say('widthOfFabric', { letter }), () => readWritten(ledger, worksheetFields.fabricWidth, fabricWidth, 'fabricWidth'));
            declared.push({ letter, name: textOf(name), price });
        }
    }
    return declared;
};
/** The parts of each fabric; one that names none is a group of its own, since its cloth may be any. */
const groupsOf = (declared, parts) => {
    const groups = new Map(declared.map(({ letter }) => [letter, { key: letter, letter, parts: [] }]));
    for (const [at, part] of parts.entries()) {
        const letter = part.fabric;
        const key = letter || `part ${at}`;
        const group = groups.get(key) ?? { key, letter, parts: [] };
        group.parts.push(part);
        groups.set(key, group);
    }
    return [...groups.values()];
};
/** The widths that these are sold in, each once; 0 is a width that is not known. */
const widthsOf = (parts) => {
    const widths = [];
    for (const { sold } of parts)
        if (!sold.equals(0) && !widths.some((width) => width.equals(sold)))
            widths.push(sold);
    return widths;
};
/** Parts that are cut from cloth of one width; one that does not say its width goes with the first. */
const byWidth = (parts) => {
    const widths = widthsOf(parts);
    return widths.length < 2
        ? [parts]
        : widths.map((width, at) => parts.filter(({ sold }) => sold.equals(width) || (!at && sold.equals(0))));
};
const titlesOf = (parts) => parts.map(({ title }) => title);

export { byWidth, groupsOf, letterOf, readFabrics, titlesOf };
