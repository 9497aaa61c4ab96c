import { drawnSize, corner } from '../../ledger/picture.js';
import { drawPlans } from '../cutting/draw.js';
import { sizeOf } from './pieces.js';
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
            label: say('letter', { letter }),
        };
        looks.set(letter, look);
        return look;
    };
};
/** A block to scale, each piece of cloth as a shape with its letter. */
const blockPicture = ({ block, used: { chart, name } }) => {
    const { columns, rows } = chart;
    const side = block.valueOf();
    const lookOf = looksOf();
    const boxes = [];
    const shapes = [];
    for (const patch of chart.patches) {
        const { letters, column, row } = patch;
        const { width, height } = drawnSize(sizeOf(patch, chart, block));
        const [left, top] = [(column * side) / columns, (row * side) / rows];
        if (patch.kind === 'plain')
            boxes.push({ x: left, y: top, width, height, ...lookOf(letters[0]) });
        for (const [at, ...corners] of partsOf(patch)) {
            const { is, label } = lookOf(letters[at]);
            const points = corners.map(([x, y]) => [left + x * width, top + y * height]);
            shapes.push({ points, is, words: { ...roomIn(points), label } });
        }
    }
    return {
        title: say('picture', { name, block, columns, rows }),
        width: side,
        height: side,
        boxes,
        shapes,
        dimensions: corner({ width: block, length: block }),
    };
};
/** The block, and the cloth of each fabric with what is cut from it. */
const draw = (answer) => [blockPicture(answer), ...drawPlans(answer.fabrics)];

export { draw };
