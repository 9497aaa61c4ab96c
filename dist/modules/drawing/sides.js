import { rowIn } from '../reckon/answer.js';
import { inchesOf, lengthOf } from './picture.js';

/** A size to draw with. */
const sidesOf = ({ width, length }) => ({
    width: inchesOf(width),
    height: inchesOf(length),
});
/** The size that was given: of the quilt, or of its top. */
const givenSize = (result) => {
    const inches = (id) => rowIn(result, id).inches;
    return { width: inches('width'), length: inches('length') };
};
/** Dimension lines at the top and the left of something in the corner. */
const corner = ({ width, length }, style) => [
    { side: 'top', from: 0, to: inchesOf(width), text: lengthOf(width, style) },
    { side: 'left', from: 0, to: inchesOf(length), text: lengthOf(length, style) },
];
/** Dimension lines at the bottom and the right of something inside, from its top left corner. */
const inner = (x, y, { width, length }, style, name) => [
    { side: 'bottom', from: x, to: x + inchesOf(width), text: `${name} ${lengthOf(width, style)}` },
    { side: 'right', from: y, to: y + inchesOf(length), text: `${name} ${lengthOf(length, style)}` },
];
/** A way to turn things drawn for one direction into the other: `turned` swaps across and along. */
const turning = (turned) => (across, along) => turned ? [along, across] : [across, along];

export { corner, givenSize, inner, sidesOf, turning };
