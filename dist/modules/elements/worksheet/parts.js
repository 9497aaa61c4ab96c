import { isSame } from '../../workbook/flow.js';
import { isBlank } from '../../ledger/field.js';

/** A list of what to cut for the blocks. */
const isCutList = (part) => 'isAsWritten' in part;
const isTop = (part) => 'blocks' in part;
const flowingPart = (part) => ({
    part,
    calculator: part.calculator,
    fabric: part.fabric,
    get input() {
        return part.reckonInput();
    },
    isCutList: isCutList(part),
    followsBlock: 'chart' in part.calculator.fields && isBlank(part.block),
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

export { flowingPart, giveTo, isCutList, partOnPage };
