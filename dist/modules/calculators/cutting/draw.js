import { corner } from '../../ledger/picture.js';
import { sayOfLayout } from '../../ledger/strips.js';
import { say } from './plan-shape.js';

/** The most sheets to draw of one fabric. Equal sheets are drawn once. */
const MOST_SHEETS = 8;
const LOOKS = ['piece', 'cloth', 'other'];
/** The cloth of each fabric to scale, with its pieces. Equal sheets are drawn once, with their number. */
const draw = ({ fabrics, used: { sheet } }) => drawPlans(fabrics, sheet);
/** The same for plans that do not come from a cut list. */
const drawPlans = (plans, sheet) => plans.flatMap((plan) => {
    const { fabric, buy, sheets = 0, width, height } = plan;
    const kinds = [...new Set(plan.layout.map(({ piece }) => piece))];
    const boxes = boxesOf(plan.layout, kinds);
    const spare = { x: 0, y: 0, width: width.valueOf(), height: height.valueOf(), is: 'spare' };
    const dimensions = corner({ width, length: height });
    if (!sheets)
        dimensions.push(...stripLines(plan));
    return alikeIn(plan.layout, boxes)
        .slice(0, MOST_SHEETS)
        .map(({ from, to, alike }) => {
        const caption = sheet && sheets > alike
            ? sayOfLayout('laidOnSome', {
                fabric,
                alike,
                of: say('sheets', { count: sheets, kind: sheet.kind, size: undefined }),
            })
            : sayOfLayout('laidOn', { fabric, buy });
        const shown = boxes.slice(from, to);
        return {
            title: sayOfLayout('laidPicture', { caption, pieces: kinds }),
            caption,
            width: spare.width,
            height: spare.height,
            boxes: [spare, ...shown],
            isTiled: true,
            // A long cut leaves room for the words that may be there.
            lines: shown.flatMap((box, at) => diagonalsOf(box, plan.layout[from + at]?.triangles ?? 0, box.width > spare.width / 18 ? 0.3 : 0.5)),
            dimensions,
        };
    });
});
/** The pieces as boxes. Pieces of one size share the same words, because there may be a thousand of them. */
const boxesOf = (layout, kinds) => {
    const looks = new Map(kinds.map((kind, at) => [kind, LOOKS[at % LOOKS.length] ?? 'other']));
    const sizes = new Map();
    return layout.map(({ piece, ...at }) => {
        const [x, y] = [at.x.valueOf(), at.y.valueOf()];
        const [width, height] = [at.width.valueOf(), at.height.valueOf()];
        const size = `${Math.min(width, height)} ${Math.max(width, height)}`;
        let short = sizes.get(size);
        if (!short)
            sizes.set(size, (short = sidesOf(at)));
        return { x, y, width, height, is: looks.get(piece) ?? 'other', label: piece, short };
    });
};
/** The sides of a piece in short: the shorter one first. A square has only one. */
const sidesOf = ({ width, height }) => {
    const [short, long] = width.lte(height) ? [width, height] : [height, width];
    return sayOfLayout('laidSides', { short, long: long.equals(short) ? undefined : long });
};
/** The different ways in which sheets are cut. Each has the pieces of its first sheet, and the number of sheets. */
const alikeIn = (layout, boxes) => {
    const kinds = new Map();
    for (const { piece } of layout)
        if (!kinds.has(piece))
            kinds.set(piece, kinds.size);
    const places = boxes.map(({ x, y, width, height }) => [x, y, width, height].join());
    const ways = new Map();
    for (let from = 0, to = 0; from < layout.length; from = to) {
        const sheet = layout[from]?.sheet;
        while (to < layout.length && layout[to]?.sheet === sheet)
            to += 1;
        const way = layout
            .slice(from, to)
            .map(({ piece }, at) => [kinds.get(piece), places[from + at]].join())
            .join(';');
        const known = ways.get(way);
        if (known)
            known.alike += 1;
        else
            ways.set(way, { from, to, alike: 1 });
    }
    return [...ways.values()];
};
/** The cuts along the diagonals of a square: a part of each, at both ends. */
const diagonalsOf = ({ x, y, width, height }, triangles, part) => {
    return [-height, height].slice(0, triangles / 2).flatMap((rise) => [0, 1 - part].map((from) => {
        const point = (along) => [
            x + along * width,
            y + (rise < 0 ? height : 0) + along * rise,
        ];
        return { is: 'seam', from: point(from), to: point(from + part) };
    }));
};
/** The heights of the strips, down the cloth. Equal strips show the height of the first. */
const stripLines = ({ strips }) => {
    let at = 0;
    return strips.map(({ count, height }) => {
        const from = at;
        const tall = height.valueOf();
        at += count * tall;
        return { side: 'right', from, to: from + tall, text: height };
    });
};

export { draw, drawPlans };
