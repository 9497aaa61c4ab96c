import { corner } from '../../ledger/picture.js';
import { say } from './shape.js';

/** More blocks than this are drawn as one field: nobody could tell them apart. */
const MOST_DRAWN = 900;
/** The top to scale, block by block, with its sashing or its setting triangles. */
const draw = ({ used: { layout }, finished, summary }) => {
    const { onPoint, across, down, cornerstones, frame, count } = layout;
    const block = layout.block.valueOf();
    const sashing = layout.sashing.valueOf();
    const pitch = block + sashing;
    const edge = frame ? sashing : 0;
    const drawn = { across, down, cornerstones, block, sashing, pitch, edge };
    /** The reckoned size. A measured top is drawn in it too, with its own size written beside it. */
    const reach = (blocks) => onPoint ? (pitch * blocks + sashing) * Math.SQRT2 : pitch * blocks - sashing + 2 * edge;
    const [width, height] = [reach(across), reach(down)];
    // The background shows where no block is drawn: setting triangles, sashing, or too many blocks to draw.
    const rest = sashing && onPoint ? 'cloth' : sashing || onPoint ? 'other' : 'piece';
    const isDrawn = count <= MOST_DRAWN;
    return [
        {
            title: say('picture', { summary }),
            width,
            height,
            boxes: [{ x: 0, y: 0, width, height, is: rest }, ...(isDrawn && !onPoint ? straight(drawn) : [])],
            shapes: isDrawn && onPoint ? tilted(drawn) : [],
            dimensions: corner(finished).map((line, at) => ({ ...line, to: at ? height : width })),
        },
    ];
};
/** Squares of this size in a grid, starting at this place. */
const grid = (is, start, size, pitch, across, down) => Array.from({ length: Math.max(0, across * down) }, (_, at) => ({
    x: start + (at % across) * pitch,
    y: start + Math.floor(at / across) * pitch,
    width: size,
    height: size,
    is,
}));
/** Blocks in rows, and the cornerstones between them. */
const straight = ({ across, down, cornerstones, block, sashing, pitch, edge }) => {
    const blocks = grid('piece', edge, block, pitch, across, down);
    if (!sashing || !cornerstones)
        return blocks;
    const more = edge ? 1 : -1;
    const stones = grid('cloth', edge ? 0 : block, sashing, pitch, across + more, down + more);
    return [...blocks, ...stones];
};
/** A rectangle on point. If it is not a square, it has a far and a near corner, and a direction in which it leans. */
const pointsOf = (x, y, far, near, lean) => [
    [x + far, y - lean * near],
    [x + near, y - lean * far],
    [x - far, y + lean * near],
    [x - near, y + lean * far],
];
/** Blocks on point, and the sashing and the cornerstones round each. */
const tilted = ({ across, down, block, sashing, pitch }) => {
    const shapes = [];
    const step = pitch * Math.SQRT2;
    const half = block / Math.SQRT2;
    const start = (sashing * Math.SQRT2 + step) / 2;
    const stone = sashing / Math.SQRT2;
    const seen = new Set();
    /** Draws what two blocks share only once. */
    const add = (is, x, y, far, near = 0, lean = 1) => {
        const key = `${x.toFixed(2)} ${y.toFixed(2)}`;
        if (!seen.has(key))
            shapes.push({ is, points: pointsOf(x, y, far, near, lean) });
        seen.add(key);
    };
    const addSashing = (x, y) => {
        const [far, near] = [(half + stone) / 2, (half - stone) / 2];
        for (const right of [1, -1])
            for (const low of [1, -1]) {
                add('other', x + (right * step) / 4, y + (low * step) / 4, far, near, right * low);
                add('cloth', x + ((right + low) * step) / 4, y + ((right - low) * step) / 4, stone);
            }
    };
    for (let row = 0; row < 2 * down - 1; row += 1)
        for (let column = 0; column < across - (row % 2); column += 1) {
            const x = start + column * step + ((row % 2) * step) / 2;
            const y = start + (row * step) / 2;
            add(row % 2 && !sashing ? 'cloth' : 'piece', x, y, half);
            if (sashing)
                addSashing(x, y);
        }
    return shapes;
};

export { draw };
