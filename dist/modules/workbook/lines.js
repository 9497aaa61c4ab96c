import { enoughFor, Purchase } from '../ledger/purchase.js';
import { inches, Quantity, total } from '../ledger/quantity.js';
import { countedIn, cutFor } from '../ledger/shop.js';
import { usualLength } from '../ledger/lengths.js';
import { least, sum } from '../measure/exact.js';
import { toPriced } from '../measure/shop.js';
import { INCHES } from '../measure/units.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { boltsFor } from './bolts.js';
import { buyLengths, noteLengths } from './lengths.js';
import { lengthsToBuy } from './cloths.js';
import { leftoversOf } from './leftovers.js';
import { titlesOf } from './parts.js';
import { priceOf } from './prices.js';
import { say } from './sayings.js';

const calledOf = (letter, [first]) => letter || !first ? say('fabricOf', { letter }) : first.title;
/** Warns about parts that name no fabric, if other parts do. */
const noteUndeclared = (ledger, [first], { letter, parts }, what) => {
    if (!first)
        return;
    ledger.note(letter
        ? say('undeclared', { letter, titles: titlesOf(parts) })
        : say('namesNone', { what, like: first.letter }));
};
/** The lines of one fabric: one for each width of cloth that its parts are cut from. */
const linesOf = (ledger, declared, { group: { letter }, lines }, leftOf) => {
    const parts = lines.flatMap(({ parts }) => parts);
    const called = calledOf(letter, parts);
    const fabric = declared.find((one) => one.letter === letter);
    if (!fabric)
        noteUndeclared(ledger, declared, { letter, parts }, called);
    // The price of a fabric that is bought in sheets is of one sheet.
    const isByLength = fabric && !fabric.sheet;
    const price = isByLength
        ? priceOf(ledger, { written: fabric.price }, say('priceOfFabric', { letter }))
        : undefined;
    const several = lines.length > 1;
    if (several) {
        const narrowest = least(...parts.map(({ sold }) => sold).filter((sold) => sold.gt(0)));
        ledger.note(say('severalWidths', { what: called, widths: lines.length, narrowest }));
    }
    const ofFabric = { called, name: fabric?.name ?? '', price, several, stock: fabric?.stock };
    return lines.map((cloth) => lineOf(ledger, cloth, ofFabric, leftOf));
};
/** The part's own price, as a price of the worksheet's unit. The part itself may be priced by the other one: yard or metre. */
const ownPrice = (ledger, { title, price, per }) => {
    const own = priceOf(ledger, price, say('priceOfPart', { title }));
    return own && per ? own.div(toPriced(INCHES[per], ledger.values.increment)) : own;
};
/** The width of the cloth, and whether the line has to say it: if it is not the usual one, or one of several. */
const widthOf = ({ values, style }, parts, several) => {
    const width = parts.map(({ sold }) => sold).find((sold) => sold.gt(0));
    const usual = values.fabricWidth ?? usualLength(COTTON_WIDTH, style);
    return { width, wide: width && (several || !width.equals(usual)) ? width : undefined };
};
/** The rows with the need of all parts and with the amount to buy. */
const rowsOf = (ledger, { key, parts }, label, wide, { need, left, buy, lengths }) => {
    const added = sum(parts.map(({ need }) => need));
    const isEnough = !left && enoughFor(added, ledger.values.increment).inches.lte(buy.inches);
    const isAdded = need.equals(added);
    const needed = isAdded ? total(parts.map(({ need }) => inches(need))) : inches(need);
    const whole = ledger.row(`need-${key}`, needed, {
        label,
        how: say('needOfParts', {
            parts: parts.map(({ title, need }) => ({ need: inches(need), titles: [title] })),
            added,
            together: need.lt(added) ? { need, isEnough } : undefined,
        }),
    });
    const row = left
        ? ledger.row(`left-${key}`, inches(left), {
            label: say('leftRow'),
            how: say('ownFirst'),
            from: [`need-${key}`],
        })
        : whole;
    const spare = buy.inches.sub(left ?? need);
    const called = wide ? say('toBuy', { buy, width: wide }) : buy.called;
    ledger.row(`buy-${key}`, new Purchase(buy.inches, buy.amount, buy.unit, called), {
        label: say('buyRow'),
        how: say('upToSteps', {
            lengths: lengths.map(({ parts, need }) => ({
                need: lengths.length > 1 ? inches(need) : row,
                titles: titlesOf(parts),
            })),
            step: ledger.stated('increment'),
            spare,
        }),
        from: [left ? `left-${key}` : `need-${key}`],
        formula: total(lengths.map(({ need }) => cutFor(ledger, lengths.length > 1 ? inches(need) : row))),
    });
};
/** What to buy in words. If own cloth is cut first, it is what is missing. */
const textOfLine = (text, hasOwn, { amount }) => hasOwn ? (amount.gt(0) ? say('stillMissing', { text }) : say('youHaveEnough')) : text;
/** The line of parts that are cut from one cloth. */
const lineOf = (ledger, planned, { called, name, price: ofFabric, several, stock }, leftOf) => {
    const { key, letter, parts, joint, own } = planned;
    const { increment, bolt, kits } = ledger.values;
    const price = ofFabric ?? parts.map((part) => ownPrice(ledger, part)).find(Boolean);
    const { width, wide } = widthOf(ledger, parts, several);
    const cloth = say('clothOf', { what: called, width: wide });
    if (joint.isPlanning)
        ledger.note(say('planningTogether', { cloth }));
    const need = sum(joint.lengths.map(({ need }) => need));
    const { laid } = own ?? joint;
    const bought = buyLengths(ledger, lengthsToBuy(planned), cloth);
    const { buy, lengths } = bought;
    const left = own && sum(lengths.map(({ need }) => need));
    const spare = buy.inches.sub(left ?? need);
    const isOne = lengths.length === 1;
    if (!isOne)
        noteLengths(ledger, cloth, lengths);
    const label = name ? say('clothNamed', { cloth, name }) : cloth;
    rowsOf(ledger, planned, label, wide, { ...bought, need, left });
    const bolts = kits && buy.inches.gt(0) ? boltsFor(ledger, kits, planned, cloth, bought) : undefined;
    const costOf = (length) => price && ledger.paid(toPriced(length, increment).mul(price));
    const costs = price &&
        countedIn(inches(buy.inches).inRow(`buy-${key}`), increment)
            .times(new Quantity(price, 'money'))
            .inCoins(ledger.coin);
    const paid = costs && ledger.priced(costs.value);
    const leaves = leftoversOf(() => leftOf(planned), ledger.style);
    const line = {
        letter,
        name,
        parts: parts.map(({ title, need }) => ({ title, need })),
        need,
        saved: sum(parts.map(({ need }) => need)).sub(need),
        buy,
        text: textOfLine(say('toBuy', { buy, width: wide }), !!own, buy),
        width,
        spare,
        lengths: isOne
            ? undefined
            : lengths.map(({ parts, need, buy }) => ({ parts: titlesOf(parts), need, buy })),
        price: price && ledger.priced(price),
        cost: paid,
        bolts,
        own: stock && { written: stock.written, isEnough: buy.inches.equals(0), plans: own?.own ?? [] },
        together: laid && { fabric: letter, need, buy, pieces: [], ...laid },
        get leftovers() {
            return leaves.named();
        },
        used: { left: leaves.left },
    };
    return { line, called, paid, costs, boltCost: costOf(bolt.mul(bolts ?? 0)) };
};

export { linesOf, textOfLine };
