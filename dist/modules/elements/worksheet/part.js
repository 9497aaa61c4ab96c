import { exact } from '../../measure/exact.js';
import { mixed } from '../../measure/format.js';
import { rowIn, clothWidth } from '../../reckon/answer.js';
import { isCurrency } from '../../reckon/money.js';

/** What a part takes from the fabrics of these letters; nothing while it has something to mend. */
const takesOf = (part, letters) => {
    const { result, calculator } = part;
    if (result.errors)
        return [];
    const { fabric, cuts } = result;
    const takes = calculator.takes?.(result, letters) ?? [
        { fabric: letters[0] ?? '', need: fabric, cuts },
    ];
    const written = (id) => rowIn(result, id)?.value;
    const shrinkage = written('shrinkage')?.replace(/ ?%/, '') || '0';
    const washed = mixed(exact(100).div(exact(100).sub(exact(shrinkage))));
    const currency = written('currency') ?? '';
    /** A price with the currency that holds in its part, for a worksheet that may have another. */
    const priced = (price) => price && isCurrency(currency) && !/\p{L}/u.test(price) ? `${price} ${currency}` : price;
    return takes.map(({ cuts, cost, pieces = cuts.map((cut) => ({ ...cut, turn: true })), ...take }) => ({
        title: calculator.title,
        width: clothWidth(result),
        sold: rowIn(result, 'fabricWidth')?.inches,
        washed,
        price: priced(written('price')),
        cost: priced(cost),
        per: result.buy.unit,
        cuts,
        pieces,
        ...take,
    }));
};

export { takesOf };
