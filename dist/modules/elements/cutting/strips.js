import { lengthOf } from '../../drawing/picture.js';

/** The strips to cut of each fabric or for each part, those cut alike in one row, and what comes from each. */
const stripList = (plans, style, of = 'Fabric') => ({
    caption: 'Strips, from the top of the cloth',
    toCut: true,
    head: [of, 'Strips', 'Width', 'What each gives'],
    rows: plans.flatMap(({ fabric, strips }) => {
        const rows = new Map();
        for (const { count, height, gives } of strips) {
            const given = gives.map(({ piece, count }) => `${count} × ${piece}`).join(', ');
            const [, , before] = rows.get(height + given) ?? [0, 0, 0];
            rows.set(height + given, [lengthOf(height, style), given, before + count]);
        }
        return [...rows.values()].map(([height, given, count]) => [fabric || '–', `${count}`, height, given]);
    }),
});

export { stripList };
