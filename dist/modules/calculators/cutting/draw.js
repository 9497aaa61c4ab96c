import { corner, letterAt } from '../../ledger/picture.js';
import { sayOfLayout } from '../../ledger/strips.js';
import { say } from './plan-shape.js';

/** The most sheets to draw of one fabric. Equal sheets are drawn once. Those that a list names by number are all looked for. */
const MOST_SHEETS = 8;
const MOST_NUMBERED = 30;
const LOOKS = ['piece', 'cloth', 'other'];
/** The cloth of each fabric to scale, with its pieces. Equal sheets are drawn once, with their number. */
const draw = ({ fabrics }, letters) => drawPlans(fabrics, letterAt(letters));
/** What a drawing of some sheets of a plan is of. */
const captionOf = ({ fabric, buy, sheets = 0, used }, alike) => {
    const sheet = used?.sheet;
    // One sheet alone needs no number.
    const hasNumbers = !!used?.isNumbered && sheets > 1;
    if (!sheet || (sheets <= alike.length && !hasNumbers))
        return sayOfLayout('laidOn', { fabric, buy });
    const of = say('sheets', { count: sheets, kind: sheet.kind, size: undefined });
    return hasNumbers
        ? sayOfLayout('laidOnNumbers', { fabric, numbers: alike, of })
        : sayOfLayout('laidOnSome', { fabric, alike: alike.length, of });
};
/** The same for plans that do not come from a cut list. `letter` is the fabric of a plan that names none. */
const drawPlans = (plans, letter) => plans.flatMap((plan) => {
    const { sheets, width, height, used } = plan;
    const kinds = [...new Set(plan.layout.map(({ piece }) => piece))];
    const boxes = boxesOf(plan.layout, kinds, plan.fabric || letter);
    const spare = { x: 0, y: 0, width: width.valueOf(), height: height.valueOf(), is: 'spare' };
    const dimensions = corner({ width, length: height });
    if (!sheets)
        dimensions.push(...stripLines(plan));
    return alikeIn(plan.layout, boxes)
        .slice(0, used?.isNumbered ? MOST_NUMBERED : MOST_SHEETS)
        .map(({ from, to, alike }) => {
        const caption = captionOf(plan, alike);
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
const boxesOf = (layout, kinds, fabric) => {
    const looks = new Map(kinds.map((kind, at) => [kind, LOOKS[at % LOOKS.length] ?? 'other']));
    const sizes = new Map();
    return layout.map(({ piece, ...at }) => {
        const [x, y] = [at.x.valueOf(), at.y.valueOf()];
        const [width, height] = [at.width.valueOf(), at.height.valueOf()];
        const size = `${Math.min(width, height)} ${Math.max(width, height)}`;
        let short = sizes.get(size);
        if (!short)
            sizes.set(size, (short = sidesOf(at)));
        return { x, y, width, height, is: looks.get(piece) ?? 'other', fabric, label: piece, short };
    });
};
/** The sides of a piece in short: the shorter one first. A square has only one. */
const sidesOf = ({ width, height }) => {
    const [short, long] = width.lte(height) ? [width, height] : [height, width];
    return sayOfLayout('laidSides', { short, long: long.equals(short) ? undefined : long });
};
/** The different ways in which sheets are cut. */
const alikeIn = (layout, boxes) => {
    const kinds = new Map();
    for (const { piece } of layout)
        if (!kinds.has(piece))
            kinds.set(piece, kinds.size);
    const places = boxes.map(({ x, y, width, height }) => [x, y, width, height].join());
    const ways = new Map();
    for (let from = 0, to = 0; from < layout.length; from = to) {
        const sheet = layout[from]?.sheet ?? 0;
        while (to < layout.length && layout[to]?.sheet === sheet)
            to += 1;
        const way = layout
            .slice(from, to)
            .map(({ piece }, at) => [kinds.get(piece), places[from + at]].join())
            .join(';');
        const known = ways.get(way);
        if (known)
            known.alike.push(sheet + 1);
        else
            ways.set(way, { from, to, alike: [sheet + 1] });
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
/** The heights of the strips, down the cloth. Equal strips show the height of the first. One that is all of the cloth needs no line of its own. */
const stripLines = ({ strips, height: all }) => {
    let at = 0;
    if (strips[0]?.height.equals(all))
        return [];
    return strips.map(({ count, height }) => {
        const from = at;
        const tall = height.valueOf();
        at += count * tall;
        return { side: 'right', from, to: from + tall, text: height };
    });
};

export { draw, drawPlans };
