import { drawnSize, corner, inner } from '../../ledger/picture.js';
import { most, ZERO, sum } from '../../measure/exact.js';
import { say } from './shape.js';

/** The borders round the top, from the inside out. Each piece has its cut length. */
const draw = ({ borders, finished, summary }) => {
    const top = within(finished, borders);
    const [x, y] = [sidesOf(borders).valueOf(), endsOf(borders).valueOf()];
    let inside = { x, y, ...drawnSize(top) };
    const boxes = [{ ...inside, is: 'quilt', label: say('quiltTop') }];
    const shapes = [];
    for (const border of borders) {
        const outside = grown(inside, border);
        if (border.corners === 'mitred')
            shapes.push(...mitred(inside, outside));
        else
            boxes.push(...strips(border, inside, outside));
        inside = outside;
    }
    return [
        {
            title: say('picture', { summary }),
            width: inside.width,
            height: inside.height,
            boxes,
            shapes,
            dimensions: [...corner(finished), ...inner(x, y, top, 'topSide')],
        },
    ];
};
const endOf = ({ finished, finishedEnds = finished }) => finishedEnds;
/** How wide all borders are together, at one side, and at the top or bottom. */
const sidesOf = (borders) => sum(borders.map(({ finished }) => finished));
const endsOf = (borders) => sum(borders.map(endOf));
/** The size that measured borders leave for the top: at least 0. */
const within = ({ width, length }, borders) => ({
    width: most(ZERO, width.sub(sidesOf(borders).mul(2))),
    length: most(ZERO, length.sub(endsOf(borders).mul(2))),
});
/** The inner size with a border round it. */
const grown = ({ x, y, width, height }, border) => {
    const [side, end] = [border.finished.valueOf(), endOf(border).valueOf()];
    return { x: x - side, y: y - end, width: width + 2 * side, height: height + 2 * end };
};
/** The four strips of a mitred border. */
const mitred = (inside, outside) => {
    const inner = pointsOf(inside);
    const outer = pointsOf(outside);
    const round = (points) => [...points.slice(1), ...points.slice(0, 1)];
    const [nextInner, nextOuter] = [round(inner), round(outer)];
    return inner.map((point, at) => ({
        is: 'cloth',
        points: [point, outer[at], nextOuter[at], nextInner[at]].filter((corner) => corner !== undefined),
    }));
};
const pointsOf = ({ x, y, width, height }) => [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
];
/** The strips of a border, and its corner squares. */
const strips = (border, inside, outside) => {
    const { corners, pieces } = border;
    const [sides, ends] = [border.finished.valueOf(), endOf(border).valueOf()];
    const cutTo = (kind) => pieces.find(({ piece }) => piece === kind)?.length;
    const upright = corners === 'ends-first' ? outside : inside;
    const level = corners === 'sides-first' ? outside : inside;
    const lefts = [outside.x, inside.x + inside.width];
    const tops = [outside.y, inside.y + inside.height];
    const boxes = [
        ...lefts.map((x) => ({ ...upright, x, width: sides, is: 'cloth', label: cutTo('side') })),
        ...tops.map((y) => ({ ...level, y, height: ends, is: 'piece', label: cutTo('end') })),
    ];
    if (corners === 'squares')
        for (const x of lefts)
            for (const y of tops)
                boxes.push({ x, y, width: sides, height: ends, is: 'other' });
    return boxes.filter(({ width, height }) => width > 0 && height > 0);
};

export { draw };
