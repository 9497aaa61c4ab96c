import { textOf, isBlank } from '../ledger/field.js';
import { parseLength } from '../measure/parse.js';
import { sayInFace } from '../words/face-sayings.js';

/** Says that the stock is too small, and what would do. Undefined if there is enough. */
const overStock = (stock, answer, calculator, style) => {
    const max = textOf(stock);
    if (isBlank(max))
        return;
    const read = parseLength(max, { ...style, units: 'in', bare: undefined });
    if (!read.ok)
        return sayInFace('wrongStock', { problem: read.problem });
    const { unit } = answer.buy;
    const isLength = /[a-z'"]/i.test(max);
    const isCloth = unit !== 'package' && unit !== 'sheet';
    if (isLength && !isCloth)
        return;
    const fits = ({ inches, amount }) => (isLength ? inches : amount).lte(read.value);
    if (fits(answer.buy))
        return;
    return sayInFace('overStock', {
        stock: isLength || !isCloth ? max : `${max} ${unit}`,
        takes: answer.buy,
        instead: calculator.instead?.(answer).find(({ buy }) => fits(buy)),
    });
};

export { overStock };
