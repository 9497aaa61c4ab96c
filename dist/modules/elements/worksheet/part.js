import { exact } from '../../measure/exact.js';
import { mixed } from '../../measure/format.js';
import { rowIn, clothWidth } from '../../reckon/answer.js';
import { textOf } from '../../reckon/fields.js';

/** The letters of the fabrics that a part is cut from. */
const lettersOf = ({ fabric }) => textOf(fabric)
    .split(/[\s,]+/)
    .filter(Boolean);
/** What a part takes from which fabric; nothing while it has something to mend. */
const takesOf = (part) => {
    const { result, calculator } = part;
    if (result.errors)
        return [];
    const letters = lettersOf(part);
    const { fabric, cuts } = result;
    const takes = calculator.takes?.(result, letters) ?? [
        { fabric: letters[0] ?? '', need: fabric, cuts },
    ];
    const written = (id) => rowIn(result, id)?.value;
    const shrinkage = written('shrinkage')?.replace(/ ?%/, '') || '0';
    const washed = mixed(exact(100).div(exact(100).sub(exact(shrinkage))));
    return takes.map(({ cuts, pieces = cuts.map((cut) => ({ ...cut, turn: true })), ...take }) => ({
        title: calculator.title,
        width: clothWidth(result),
        sold: rowIn(result, 'fabricWidth')?.inches,
        washed,
        price: written('price'),
        per: result.buy.unit,
        cuts,
        pieces,
        ...take,
    }));
};

export { lettersOf, takesOf };
