import { canBeCut } from '../cutting/check.js';
import { sum, least, most, ONE, exact } from '../measure/exact.js';
import { PLANNING } from './cutting.js';
import { laidOut } from './strips.js';

/** Several parts of one cloth: laid out together where less is then bought than for one after the other. */
const planTogether = (book, parts, plan, called) => {
    const added = sum(parts.map(({ need }) => need));
    const cut = parts.filter(({ pieces }) => pieces.length);
    if (!plan || cut.length < 2)
        return { need: added };
    const pieces = cut.flatMap(({ pieces }) => pieces);
    const cloth = { width: least(...cut.map(({ width }) => width)) };
    const planned = plan(pieces, cloth);
    if (typeof planned === 'number')
        book.notes.push(`${called}: ${PLANNING.toLowerCase()}, to see whether its parts fit together on less.`);
    if (typeof planned === 'number' || !planned.ok || !canBeCut(pieces, cloth, planned))
        return { need: added };
    const apart = sum(cut.map(({ need }) => need));
    const length = planned.length.mul(most(ONE, ...cut.map(({ washed }) => washed)));
    const need = added.sub(apart).add(length);
    const bought = (fabric) => exact(book.toBuy(fabric).inches);
    if (bought(need).gte(bought(added)))
        return { need: added };
    const names = cut.flatMap(({ names }) => names);
    return { need, laid: laidOut(planned, cloth, names) };
};

export { planTogether };
