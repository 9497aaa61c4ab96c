import { rowIn } from '../reckon/answer.js';
import { inchesIn } from './picture.js';
import { corner } from './sides.js';

/** More blocks than this are drawn as one field: nobody could tell them apart. */
const MOST_DRAWN = 900;
/** A rectangle on point; of one that is no square the far and the near corner, and which way it leans. */
const tilted = (x, y, far, near, lean) => [
    [x + far, y - lean * near],
    [x + near, y - lean * far],
    [x - far, y + lean * near],
    [x - near, y + lean * far],
];
/** The top to scale, block by block, with its sashing or its setting triangles. */
const drawTop = (result, style) => {
    const value = (id) => rowIn(result, id).value;
    const block = inchesIn(result, 'block');
    const sashing = inchesIn(result, 'sashing');
    const across = Number(value('across'));
    const down = Number(value('down'));
    const drawn = result.blocks <= MOST_DRAWN;
    const pitch = block + sashing;
    const edge = value('frame') === 'yes' ? sashing : 0;
    /** As reckoned: one that was measured is drawn so too, with its own size written to it. */
    const reach = (count) => result.sideSquare ? (pitch * count + sashing) * Math.SQRT2 : pitch * count - sashing + 2 * edge;
    const [width, height] = [reach(across), reach(down)];
    // What no block or piece is drawn on: setting triangles, sashing, or blocks too many to draw.
    const rest = sashing && result.sideSquare ? 'cloth' : sashing || result.sideSquare ? 'other' : 'piece';
    const boxes = [{ x: 0, y: 0, width, height, is: rest }];
    const shapes = [];
    if (drawn && result.sideSquare) {
        const step = pitch * Math.SQRT2;
        const half = block / Math.SQRT2;
        const start = (sashing * Math.SQRT2 + step) / 2;
        const stone = sashing / Math.SQRT2;
        const seen = new Set();
        /** What two blocks share is drawn once. */
        const add = (is, x, y, far, near = 0, lean = 1) => {
            const key = `${x.toFixed(2)} ${y.toFixed(2)}`;
            if (!seen.has(key))
                shapes.push({ is, points: tilted(x, y, far, near, lean) });
            seen.add(key);
        };
        for (let row = 0; row < 2 * down - 1; row += 1)
            for (let column = 0; column < across - (row % 2); column += 1) {
                const x = start + column * step + ((row % 2) * step) / 2;
                const y = start + (row * step) / 2;
                add(row % 2 && !sashing ? 'cloth' : 'piece', x, y, half);
                if (sashing)
                    for (const right of [1, -1])
                        for (const low of [1, -1]) {
                            const [far, near] = [(half + stone) / 2, (half - stone) / 2];
                            add('other', x + (right * step) / 4, y + (low * step) / 4, far, near, right * low);
                            add('cloth', x + ((right + low) * step) / 4, y + ((right - low) * step) / 4, stone);
                        }
            }
    }
    else if (drawn) {
        for (let row = 0; row < down; row += 1)
            for (let column = 0; column < across; column += 1)
                boxes.push({
                    x: edge + column * pitch,
                    y: edge + row * pitch,
                    width: block,
                    height: block,
                    is: 'piece',
                });
        if (sashing && value('cornerstones') === 'yes')
            for (let row = edge ? 0 : 1; row < down + (edge ? 1 : 0); row += 1)
                for (let column = edge ? 0 : 1; column < across + (edge ? 1 : 0); column += 1)
                    boxes.push({
                        x: edge + column * pitch - sashing,
                        y: edge + row * pitch - sashing,
                        width: sashing,
                        height: sashing,
                        is: 'cloth',
                    });
    }
    return {
        title: `The top: ${result.summary}`,
        width,
        height,
        boxes,
        shapes,
        dimensions: corner(result.finished, style).map((line, at) => ({ ...line, to: at ? height : width })),
    };
};

export { drawTop };
