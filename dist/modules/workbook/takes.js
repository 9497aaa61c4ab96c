import { Cut, Purchase } from '../ledger/purchase.js';
import { ONE, ZERO } from '../measure/exact.js';
import { say } from './sayings.js';

/** Wraps the messages of a calculator, so that the worksheet can say them. The same message always gives the same object. */
const saidBy = (calculator) => {
    const known = new Map();
    return (says) => {
        const message = known.get(says) ?? say('saidBy', { calculator, says });
        known.set(says, message);
        return message;
    };
};
/** What a calculator takes from the fabrics of these letters. Nothing while it has an error. */
const takesOf = (calculator, { own, price, cost }, letters) => {
    if (!own)
        return [];
    const { used, fabric, cuts, buy } = own;
    const takes = calculator.takes?.(own, letters) ?? [{ fabric: letters[0] ?? '', need: fabric, cuts }];
    const { name } = calculator;
    const said = saidBy(name);
    const cut = ({ count, piece, width, length }) => new Cut(count, said(piece), width, length);
    const loose = ({ piece, ...cut }) => ({ ...cut, ...(piece && { piece: said(piece) }) });
    const whole = (cuts) => cuts.map(({ piece, width, length, count }) => ({ piece, width, length, count, turn: true }));
    const partOf = (take, title) => ({
        title,
        when: take.title && take.week ? say('inWeek', { week: take.week, title }) : title,
        week: take.week,
        fabric: take.fabric,
        need: take.need,
        width: take.width ?? used.cloth?.width.value ?? ZERO,
        sold: take.sold ?? used.cloth?.sold.value ?? ZERO,
        washed: used.cloth ? ONE.div(used.cloth.kept) : ONE,
        // If we do not know how much a wash leaves, we do not plan it with others: the cloth could be too short.
        pieces: used.cloth || take.sheets ? (take.pieces ?? whole(take.cuts)).map(loose) : [],
        plan: take.plan,
        leaves: take.leaves,
        fromLeftover: take.fromLeftover?.map((way) => way.map(loose)),
        sheets: take.sheets,
        // A price that the part did not count for its sheets is of cloth by length.
        price: take.sheets && !take.cost ? undefined : price,
        // Cloth that is cut by inches is priced by the yard.
        per: buy.unit === 'm' ? 'm' : 'yd',
    });
    return takes.map((take) => {
        const { week } = take;
        const usual = week ? say('weekOf', { week }) : say('titleOf', { calculator: name });
        const title = take.title ? said(take.title) : usual;
        const taken = { fabric: take.fabric, title, cuts: take.cuts.map(cut) };
        if (!take.item)
            return take.need.equals(0) && !take.sheets ? taken : { ...taken, part: partOf(take, title) };
        const { inches, amount, unit, called } = take.item;
        const bought = new Purchase(inches, amount, unit, called && said(called));
        const paid = take.cost ?? cost;
        // A package has its price in the list of packages, so only its cost is known.
        const ofOne = amount.equals(1) ? paid : price;
        return { ...taken, item: { title, fabric: take.fabric, buy: bought, price: ofOne, cost: paid } };
    });
};

export { takesOf };
