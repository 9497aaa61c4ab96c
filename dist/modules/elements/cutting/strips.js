import { lengthOf } from '../../drawing/picture.js';

/** The strips to cut of each fabric or for each part, and what comes from each. */
const stripList = (plans, style, of = 'Fabric') => ({
    caption: 'Strips, from the top of the cloth',
    toCut: true,
    head: [of, 'Strips', 'Height', 'What each gives'],
    rows: plans.flatMap(({ fabric, strips }) => strips.map(({ count, height, gives }) => [
        fabric || '–',
        `${count}`,
        lengthOf(height, style),
        gives.map(({ piece, count }) => `${count} × ${piece}`).join(', '),
    ])),
});

export { stripList };
