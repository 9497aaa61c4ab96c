import { inchesIn } from './picture.js';
import { sidesOf, corner } from './sides.js';

/** More blocks than this are drawn as one field: nobody could tell them apart. */
const MOST_DRAWN = 900;
const square = (x, y, half) => [
    [x, y - half],
    [x + half, y],
    [x, y + half],
    [x - half, y],
];
/** The top to scale, block by block, with its sashing or its setting triangles. */
const drawTop = (result, style) => {
    const { width, height } = sidesOf(result.finished);
    const value = (id) => result.working.find((row) => row.id === id).value;
    const block = inchesIn(result, 'block');
    const sashing = inchesIn(result, 'sashing');
    const across = Number(value('across'));
    const down = Number(value('down'));
    const drawn = result.blocks <= MOST_DRAWN;
    const boxes = [{ x: 0, y: 0, width, height, is: result.sideSquare || sashing ? 'other' : 'piece' }];
    const shapes = [];
    if (drawn && result.sideSquare) {
        const pitch = (block + sashing) * Math.SQRT2;
        const half = block / Math.SQRT2;
        const edge = (sashing * Math.SQRT2 + pitch) / 2;
        for (let row = 0; row < 2 * down - 1; row += 1)
            for (let column = 0; column < across - (row % 2); column += 1)
                shapes.push({
                    points: square(edge + column * pitch + ((row % 2) * pitch) / 2, edge + (row * pitch) / 2, half),
                    is: row % 2 ? 'cloth' : 'piece',
                });
    }
    else if (drawn) {
        const pitch = block + sashing;
        const edge = value('frame') === 'yes' ? sashing : 0;
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
        dimensions: corner(result.finished, style),
    };
};

export { drawTop };
