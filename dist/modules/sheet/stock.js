import { exact } from '../measure/exact.js';
import { parseLength } from '../measure/parse.js';
import { textOf, isBlank } from '../reckon/fields.js';

/** That the shop has less than this takes, and what would do; nothing where it has enough. */
const overStock = (stock, result, calculator, style) => {
    const max = textOf(stock);
    if (isBlank(max))
        return;
    const read = parseLength(max, { ...style, units: 'in', bare: undefined });
    if (!read.ok)
        return `Stock, max: ${read.message}`;
    const { unit, text } = result.buy;
    const isLength = /[a-z'"]/i.test(max);
    const isCloth = /^(yd|m|in)$/.test(unit);
    if (isLength && !isCloth)
        return;
    const fits = ({ inches, amount }) => exact(isLength ? inches : amount).lte(read.value);
    if (fits(result.buy))
        return;
    const less = calculator.instead?.(result).find(({ buy }) => fits(buy));
    return `In stock: ${max}${isLength || !isCloth ? '' : ` ${unit}`}, and this takes ${text}. ${less ? `${less.words} would do: ${less.buy.text}` : 'A smaller size or wider cloth would take less'}.`;
};

export { overStock };
