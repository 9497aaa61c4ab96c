import { corner } from '../../ledger/picture.js';
import { drawPlans } from '../cutting/draw.js';
import { say } from './shape.js';

// Points of a patch, each way from 0 to 1.
const TOP_LEFT = [0, 0];
const TOP_RIGHT = [1, 0];
const BOTTOM_RIGHT = [1, 1];
const BOTTOM_LEFT = [0, 1];
const MIDDLE = [0.5, 0.5];
const TOP = [0.5, 0];
const RIGHT = [1, 0.5];
const BOTTOM = [0.5, 1];
const LEFT = [0, 0.5];
const LOOKS = ['piece', 'cloth', 'other'];
const GEESE = {
    up: [
        [0, TOP_LEFT, TOP, BOTTOM_LEFT],
        [1, TOP, BOTTOM_RIGHT, BOTTOM_LEFT],
        [2, TOP, TOP_RIGHT, BOTTOM_RIGHT],
    ],
    down: [
        [0, TOP_LEFT, BOTTOM, BOTTOM_LEFT],
        [1, TOP_LEFT, TOP_RIGHT, BOTTOM],
        [2, TOP_RIGHT, BOTTOM_RIGHT, BOTTOM],
    ],
    left: [
        [0, TOP_LEFT, TOP_RIGHT, LEFT],
        [1, TOP_RIGHT, BOTTOM_RIGHT, LEFT],
        [2, LEFT, BOTTOM_RIGHT, BOTTOM_LEFT],
    ],
    right: [
        [0, TOP_LEFT, TOP_RIGHT, RIGHT],
        [1, TOP_LEFT, RIGHT, BOTTOM_LEFT],
        [2, RIGHT, BOTTOM_RIGHT, BOTTOM_LEFT],
    ],
};
const HALVES = {
    rising: [
        [0, TOP_LEFT, TOP_RIGHT, BOTTOM_LEFT],
        [1, TOP_RIGHT, BOTTOM_RIGHT, BOTTOM_LEFT],
    ],
    falling: [
        [0, TOP_LEFT, BOTTOM_RIGHT, BOTTOM_LEFT],
        [1, TOP_LEFT, TOP_RIGHT, BOTTOM_RIGHT],
    ],
};
const QUARTERS = [
    [0, TOP_LEFT, TOP_RIGHT, MIDDLE],
    [1, TOP_RIGHT, BOTTOM_RIGHT, MIDDLE],
    [2, BOTTOM_RIGHT, BOTTOM_LEFT, MIDDLE],
    [3, BOTTOM_LEFT, TOP_LEFT, MIDDLE],
];
const INSIDE = [
    [0, TOP, RIGHT, BOTTOM, LEFT],
    [1, TOP_LEFT, TOP, LEFT],
    [1, TOP, TOP_RIGHT, RIGHT],
    [1, RIGHT, BOTTOM_RIGHT, BOTTOM],
    [1, LEFT, BOTTOM, BOTTOM_LEFT],
];
const partsOf = (patch) => {
    if (patch.kind === 'half')
        return HALVES[patch.seam];
    if (patch.kind === 'goose')
        return GEESE[patch.flies];
    return patch.kind === 'quarter' ? QUARTERS : patch.kind === 'inside' ? INSIDE : [];
};
/** The room for a letter in a shape: a third of a triangle's longest side both ways, or half of a square on point. */
const roomIn = (points) => {
    const across = points.map(([x]) => x);
    const down = points.map(([, y]) => y);
    const reach = (all) => Math.max(...all) - Math.min(...all);
    const middle = (all) => all.reduce((sum, one) => sum + one, 0) / all.length;
    const side = Math.max(reach(across), reach(down)) / (points.length > 3 ? 2 : 3);
    return { x: middle(across) - side / 2, y: middle(down) - side / 2, width: side, height: side };
};
/** The look of each fabric, in the order in which it is asked. */
const looksOf = () => {
    const looks = new Map();
    return (letter = '') => {
        const look = looks.get(letter) ?? {
            is: LOOKS[looks.size % LOOKS.length] ?? 'other',
            fabric: letter,
            label: say('letter', { letter }),
        };
        looks.set(letter, look);
        return look;
    };
};
/** All pieces of cloth of a block. */
const piecesOf = ({ patches, columns, rows }) => {
    const lookOf = looksOf();
    return patches.flatMap((patch) => {
        const isPatch = patch.kind === 'plain';
        const { letters, column, row, across, down } = patch;
        return (isPatch ? WHOLE : partsOf(patch)).map(([at, ...corners]) => {
            const points = corners.map(([x, y]) => [
                (column + x * across) / columns,
                (row + y * down) / rows,
            ]);
            return { points, isPatch, ...lookOf(letters[at]) };
        });
    });
};
const WHOLE = [[0, TOP_LEFT, TOP_RIGHT, BOTTOM_RIGHT, BOTTOM_LEFT]];
/** The same as shapes. Each has room for words. */
const pieceShapes = (chart) => piecesOf(chart).map(({ points, is, fabric }) => ({ points, is, fabric, words: roomIn(points) }));
/** A block to scale, each piece of cloth as a shape with its letter. */
const blockPicture = ({ block, used: { chart, name } }) => {
    const side = block.valueOf();
    const boxes = [];
    const shapes = [];
    for (const { isPatch, label, is, fabric, ...piece } of piecesOf(chart)) {
        const points = piece.points.map(([x, y]) => [x * side, y * side]);
        const [[x = 0, y = 0] = [], , [right = 0, low = 0] = []] = points;
        if (isPatch)
            boxes.push({ x, y, width: right - x, height: low - y, is, fabric, label });
        else
            shapes.push({ points, is, fabric, words: { ...roomIn(points), label } });
    }
    return {
        title: say('picture', { name, block, columns: chart.columns, rows: chart.rows }),
        width: side,
        height: side,
        boxes,
        shapes,
        dimensions: corner({ width: block, length: block }),
    };
};
/** The block, and the cloth of each fabric with what is cut from it. */
const draw = (answer) => [blockPicture(answer), ...drawPlans(answer.fabrics)];

export { draw, pieceShapes };
