import { fromUnit, toUnit } from '../../measure/units.js';
import { say } from './shape.js';

/** How much larger than the top an example of a wanted size is, in the reader's units. */
const ROOM = 4;
/** The widths of the last border, which reaches the wanted size. A width is 0 if that direction has its size already. */
const lastBorder = (ledger, top, wanted) => {
    const { corners, borders: listed = [] } = ledger.values;
    const widths = top.lacking(wanted);
    const [side, end] = [widths.side.value, widths.end.value];
    const isEven = side.equals(end);
    const isNothing = isEven && side.equals(0);
    if (side.lt(0) || end.lt(0) || (isNothing && !listed.length))
        refuseReached(ledger, top, listed.length);
    if (!isEven && corners.at(-1) === 'mitred')
        ledger.refuse('corners', say('mitredUneven', { side, end }));
    if (isNothing)
        ledger.note(say('reachedWithoutLast'));
    else if (!isEven)
        ledger.note(say('lastBorder', { side, end }));
    return widths;
};
const refuseReached = (ledger, { width, length }, borders) => {
    const { units } = ledger.style;
    const roomy = (side) => fromUnit(toUnit(side, units).ceil().add(ROOM), units);
    const size = { width: width.value, length: length.value };
    const larger = { width: roomy(size.width), length: roomy(size.length) };
    return ledger.refuse('target', say('reachedAlready', { borders, size, larger }));
};

export { lastBorder };
