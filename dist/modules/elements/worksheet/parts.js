import { flowing } from '../../workbook/fabrics.js';
import { isSame } from '../../workbook/flow.js';
import { unitsOr } from '../../measure/units.js';

/** A list of what to cut for the blocks. */
const isCutList = (part) => 'isAsWritten' in part;
const isBlock = (part) => 'fills' in part;
const isTop = (part) => 'blocks' in part;
/** What the places of the top ask of a block. Its own size is in its own units, or in those of the worksheet. */
const placedOf = ({ count, fills, block, units }, style) => ({
    count,
    fills,
    block: flowing(block, { ...style, bare: unitsOr(units, style.bare ?? style.units) }).inches,
});
const flowingPart = (part, style) => ({
    part,
    calculator: part.calculator,
    fabric: part.fabric,
    get input() {
        return part.reckonInput();
    },
    isCutList: isCutList(part),
    placed: isBlock(part) ? placedOf(part, style) : undefined,
    // It knows its blocks only after it has its sizes.
    get blocks() {
        return isTop(part) ? part.blocks : undefined;
    },
});
/** Gives a part what flows to it, and returns its new result. */
const giveTo = ({ part }, flow) => {
    if (!isSame(flow, part.flow))
        part.flow = flow;
    return part.outcome.reckoning;
};
/** A part, and its result. */
const partOnPage = ({ calculator, outcome, fabric }) => ({
    calculator,
    reckoning: outcome.reckoning,
    fabric,
});

export { flowingPart, giveTo, isBlock, isCutList, partOnPage };
