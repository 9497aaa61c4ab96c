import { exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { clothWidth, rowIn } from '../reckon/answer.js';
import { inchesOf, inchesIn, lengthOf } from './picture.js';
import { corner } from './sides.js';

/** The strips as they lie on the cloth, each with the join at its end; more than this many are drawn as one block. */
const MOST_STRIPS = 24;
/** A bias square, the cut along its diagonal, and its rounds marked beside it. */
const biasSquare = (result, style) => {
    const side = inchesOf(result.square);
    const apart = inchesOf(result.stripWidth) * Math.SQRT2;
    const lines = [{ is: 'seam', from: [0, 0], to: [side, side] }];
    for (let at = apart; at < side; at += apart)
        lines.push({ is: 'fold', from: [at, 0], to: [side, side - at] }, { is: 'fold', from: [0, at], to: [side - at, side] });
    const text = lengthOf(result.square, style);
    return {
        title: `A square of ${text} for continuous bias. The heavy broken line is the first cut; the fine ones show the bias strips.`,
        width: side,
        height: side,
        boxes: [{ x: 0, y: 0, width: side, height: side, is: 'cloth' }],
        lines,
        dimensions: corner({ width: result.square, length: result.square }, style),
    };
};
/** Strips across the cloth with their joins, or a square for bias. */
const drawBinding = (result, style) => {
    if (result.square)
        return biasSquare(result, style);
    const cloth = clothWidth(result);
    const width = inchesOf(cloth);
    const strip = inchesOf(result.stripWidth);
    const tall = mixed(exact(result.stripWidth).mul(result.strips));
    const height = inchesOf(tall);
    const joint = inchesIn(result, 'loss');
    const diagonal = rowIn(result, 'join')?.value === 'diagonal';
    const boxes = [];
    const lines = [];
    if (result.strips > MOST_STRIPS)
        boxes.push({ x: 0, y: 0, width, height, is: 'cloth', label: `${result.strips} strips` });
    else
        for (let at = 0; at < result.strips; at += 1) {
            boxes.push({ x: 0, y: at * strip, width, height: strip, is: 'cloth', label: `strip ${at + 1}` });
            if (at < result.strips - 1)
                lines.push({
                    is: 'seam',
                    from: [width - joint, at * strip],
                    to: [diagonal ? width : width - joint, (at + 1) * strip],
                });
        }
    return {
        title: `${result.summary} Each strip lies across the cloth; the broken lines at the right are the joins.`,
        width,
        height,
        boxes,
        lines,
        dimensions: [
            ...corner({ width: cloth, length: tall }, style),
            { side: 'right', from: 0, to: strip, text: lengthOf(result.stripWidth, style) },
        ],
    };
};

export { drawBinding };
