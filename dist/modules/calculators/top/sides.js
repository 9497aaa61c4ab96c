import { count } from '../../ledger/quantity.js';

/** A side of the top: its blocks, and the sashing between them. */
const sideOf = ({ block, sashing, onPoint, frame }, blocks) => {
    const isSashed = sashing.value.gt(0);
    if (!isSashed)
        return onPoint ? blocks.times(block).diagonal() : blocks.times(block);
    if (onPoint)
        return blocks.times(block.plus(sashing)).plus(sashing).diagonal();
    const strips = frame ? blocks.plus(count(1)) : blocks.minus(count(1));
    return blocks.times(block).plus(strips.asResult().times(sashing));
};

export { sideOf };
