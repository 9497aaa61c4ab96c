import { draw } from './draw.js';
import { lists } from './lists.js';
import { reckon } from './reckon.js';
import { bordersFields, say } from './shape.js';

/** Borders round a quilt top: cut lengths, strips, cloth, and the finished size. */
const borders = {
    name: 'borders',
    fields: bordersFields,
    reckon,
    draw,
    lists,
    finishes: ({ finished }) => finished,
    takes: ({ used }, letters) => used.borders.map((made, at) => takeOf(made, letters[at] ?? letters.at(-1) ?? '')),
};
const takeOf = ({ number, border, cuts }, fabric) => ({
    ...border.cloth,
    title: say('borderNumber', { number }),
    fabric,
    need: border.fabric,
    cuts,
    pieces: looseOf(border, cuts),
});
/** What may be planned with other parts: the border's strips, or its pieces along the cloth. None if its strips have two widths. */
const looseOf = ({ plan, strips, cloth }, cuts) => {
    if (plan === 'along')
        return cuts.map((cut) => ({ ...cut, turn: false }));
    const [first, ...more] = cuts;
    if (!first || !more.every(({ width }) => width.equals(first.width)))
        return [];
    return [{ width: cloth.width, length: first.width, count: strips, turn: false }];
};

export { borders };
