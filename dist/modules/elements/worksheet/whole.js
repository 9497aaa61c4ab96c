import { textOf } from '../../ledger/field.js';

const kindOf = ({ part, count = 0 }) => ({
    name: textOf(part.name).trim(),
    count,
    chart: part.answer?.used.chart,
});
/** What there is of the quilt on a worksheet: the first part of each kind that has an answer. */
const quiltOf = (parts, blocks) => {
    const first = (name) => {
        for (const { calculator, answer, letters } of parts)
            if (calculator.name === name && answer)
                return { answer: answer, letters };
        return undefined;
    };
    return {
        top: first('top'),
        blocks: blocks.map(kindOf),
        borders: first('borders'),
        binding: first('binding'),
    };
};

export { quiltOf };
