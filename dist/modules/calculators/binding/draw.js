import { corner } from '../../ledger/picture.js';
import { say } from './shape.js';

/** Strips across the cloth with their joins, or a square for bias. */
const draw = (answer) => [
    answer.square ? biasSquare(answer.square, answer.stripWidth) : straightStrips(answer),
];
/** The cut along a square's diagonal, and its strips beside it. */
const biasSquare = (square, strip) => {
    const side = square.valueOf();
    const apart = strip.valueOf() * Math.SQRT2;
    const lines = [{ is: 'seam', from: [0, 0], to: [side, side] }];
    for (let at = apart; at < side; at += apart)
        lines.push({ is: 'fold', from: [at, 0], to: [side, side - at] }, { is: 'fold', from: [0, at], to: [side - at, side] });
    return {
        title: say('biasPicture', { side: square }),
        width: side,
        height: side,
        boxes: [{ x: 0, y: 0, width: side, height: side, is: 'cloth' }],
        lines,
        dimensions: corner({ width: square, length: square }),
    };
};
/** More strips than this are drawn as one block. */
const MOST_STRIPS = 24;
/** The strips across the cloth, each with the join at its end. */
const straightStrips = ({ strips, stripWidth, summary, used }) => {
    const cloth = used.cloth.width.value;
    const tall = stripWidth.mul(strips);
    const [width, height, strip] = [cloth.valueOf(), tall.valueOf(), stripWidth.valueOf()];
    const joint = width - used.loss.valueOf();
    const boxes = [];
    const lines = [];
    const sheet = { x: 0, y: 0, width, height, is: 'cloth' };
    if (strips > MOST_STRIPS)
        boxes.push({ ...sheet, label: say('stripCount', { count: strips }) });
    else
        for (let at = 0; at < strips; at += 1) {
            const label = say('stripNumber', { number: at + 1 });
            boxes.push({ ...sheet, y: at * strip, height: strip, label });
            const end = used.isDiagonal ? width : joint;
            if (at < strips - 1)
                lines.push({ is: 'seam', from: [joint, at * strip], to: [end, (at + 1) * strip] });
        }
    return {
        title: say('picture', { summary }),
        width,
        height,
        boxes,
        lines,
        dimensions: [
            ...corner({ width: cloth, length: tall }),
            { side: 'right', from: 0, to: strip, text: stripWidth },
        ],
    };
};

export { draw };
