import { sayings } from '../measure/message.js';

const sayInPicture = sayings();
/** A size to draw with. */
const drawnSize = ({ width, length }) => ({
    width: width.valueOf(),
    height: length.valueOf(),
});
/** Dimension lines at the top and the left of something in the corner. */
const corner = ({ width, length }) => [
    { side: 'top', from: 0, to: width.valueOf(), text: width },
    { side: 'left', from: 0, to: length.valueOf(), text: length },
];
/** Dimension lines at the bottom and the right of something inside, from its top left corner. */
const inner = (x, y, { width, length }, called) => [
    { side: 'bottom', from: x, to: x + width.valueOf(), text: sayInPicture(called, { side: width }) },
    { side: 'right', from: y, to: y + length.valueOf(), text: sayInPicture(called, { side: length }) },
];
/** Turns what was drawn for one direction into the other: `turned` swaps across and along. */
const turning = (turned) => (across, along) => turned ? [along, across] : [across, along];

export { corner, drawnSize, inner, sayInPicture, turning };
