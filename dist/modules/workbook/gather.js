import { textOf } from '../ledger/field.js';
import { isPlanning } from '../ledger/planning.js';
import { letterOf } from './parts.js';
import { say } from './sayings.js';
import { takesOf } from './takes.js';

const titleOf = ({ calculator }) => say('titleOf', { calculator: calculator.name });
const whyNot = (part) => {
    const [issue] = part.reckoning.issues;
    return issue ? [say('notYet', { title: titleOf(part), isPlanning: isPlanning(issue) })] : [];
};
/** Warns if a name with a space was read as several letters and one of them is no fabric: the author may mean one name. */
const splitName = (part, letters, takes, fabrics) => {
    const written = letterOf(part.fabric);
    const isKnown = (letter) => fabrics.nameOf(letter) !== undefined || takes.some(({ fabric }) => fabric === letter);
    return part.reckoning.issues.length ||
        !written.includes(' ') ||
        written.includes(',') ||
        letters.every(isKnown)
        ? []
        : [say('readAsSeveral', { title: titleOf(part), written, letters })];
};
/** What a part makes several of, once it is reckoned. */
const makerOf = (part) => {
    const { own } = part.reckoning;
    const making = own && part.calculator.makes?.(own);
    return making ? [{ ...making, title: making.title ?? titleOf(part) }] : [];
};
/** What all parts take from which fabric, what they buy by the piece, and every piece to cut. */
const gather = (parts, fabrics, isColour) => {
    const taken = parts.map((part) => {
        const letters = fabrics.lettersIn(part.fabric);
        const takes = takesOf(part.calculator, part.reckoning, letters);
        return { letters, takes, troubles: splitName(part, letters, takes, fabrics) };
    });
    const takes = taken.flatMap((part) => part.takes);
    return {
        pieces: takes.flatMap(({ fabric: letter, title, cuts }) => cuts.map((cut) => ({ letter, name: letter ? (fabrics.nameOf(letter) ?? '') : title, title, cut }))),
        gathered: {
            troubles: [...fabrics.troubles(isColour), ...taken.flatMap(({ troubles }) => troubles)],
            unfinished: parts.flatMap(whyNot),
            named: taken.flatMap(({ letters }) => letters),
            fabrics: fabrics.declared.map(({ letter, name, price, sheet, fabricWidth, atHand }) => ({
                letter: textOf(letter),
                name,
                price,
                sheet,
                fabricWidth,
                atHand,
            })),
            parts: takes.flatMap(({ part }) => part ?? []),
            makers: parts.flatMap(makerOf),
            items: takes.flatMap(({ item }) => item ?? []),
        },
    };
};

export { gather };
