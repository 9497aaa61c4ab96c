import { PLANNING } from '../../reckon/cutting.js';
import { takesOf, lettersOf } from './part.js';

const whyNot = ({ result: { errors }, calculator: { title } }) => errors
    ? [
        `${title} is not on the list yet: ${errors[0].message.startsWith(PLANNING) ? 'it is still being planned' : 'it has something to mend'}.`,
    ]
    : [];
/** What all parts take from which fabric, what of it is bought by the piece, and every piece to cut. */
const gather = (parts, fabrics) => {
    const takes = parts.flatMap(takesOf);
    return {
        pieces: takes.flatMap(({ fabric: letter, title, cuts }) => cuts.map((cut) => ({ letter, name: letter ? fabrics.nameOf(letter) : title, title, cut }))),
        gathered: {
            unfinished: parts.flatMap(whyNot),
            named: parts.flatMap(lettersOf),
            fabrics: fabrics.declared.map(({ letter = '', name, price, fabricWidth }) => ({
                letter,
                name,
                price,
                fabricWidth,
            })),
            parts: takes
                .filter(({ item, need }) => item === undefined && need !== '0')
                .map(({ cuts: _, ...take }) => take),
            items: takes.flatMap(({ title, fabric, item, cost }) => item === undefined ? [] : { title, fabric, text: item, cost }),
        },
    };
};

export { gather };
