import { corner } from '../../ledger/picture.js';
import { sayOfLayout } from '../../ledger/strips.js';
import { say } from './shape.js';

/** Sheets drawn of one fabric; sheets cut alike are drawn once. */
const MOST_SHEETS = 8;
const LOOKS = ['piece', 'cloth', 'other'];
/** Each fabric's cloth to scale with its pieces; of sheets cut alike, one with their number. */
const draw = ({ fabrics, used: { sheet } }) => drawPlans(fabrics, sheet);
/** The same for plans of cloth that may be no cut list's. */
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
            // A long cut leaves room for words that may stand there.
            lines: shown.flatMap((box, at) => diagonalsOf(box, plan.layout[from + at]?.triangles ?? 0, box.width > spare.width / 18 ? 0.3 : 0.5)),
            dimensions,
        };
    });
});
/** The pieces as they are drawn; those of one size share the words that say it, since there may be a thousand. */
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
/** A piece's sides in few words: the shorter one first, and a square's once. */
const sidesOf = ({ width, height }) => {
    const [short, long] = width.lte(height) ? [width, height] : [height, width];
    return sayOfLayout('laidSides', { short, long: long.equals(short) ? undefined : long });
};
/** The sheets that are cut in different ways: of each the first one's pieces, by their places, and how many are cut so. */
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
/** The cuts along a square's diagonals: such a part of each at both its ends. */
const diagonalsOf = ({ x, y, width, height }, triangles, part) => {
    return [-height, height].slice(0, triangles / 2).flatMap((rise) => [0, 1 - part].map((from) => {
        const point = (along) => [
            x + along * width,
            y + (rise < 0 ? height : 0) + along * rise,
        ];
        return { is: 'seam', from: point(from), to: point(from + part) };
    }));
};
/** The heights of the strips down the cloth; of strips cut alike, of the first. */
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
