import { ownUnits } from '../../measure/format.js';
import { isCrib, sayOfBed } from '../../ledger/bed.js';
import { missing } from '../../ledger/field.js';
import { Ledger } from '../../ledger/ledger.js';
import { ownLength } from '../../ledger/lengths.js';
import { enoughFor } from '../../ledger/purchase.js';
import { withOverage, sidesOf } from '../../ledger/quilt.js';
import { ONE } from '../../measure/exact.js';
import { rollPlans } from '../../planner/rolls.js';
import { ROLLS } from '../../trade/batting.js';
import { quiltOrBed } from './bed.js';
import { buyPackage } from './package.js';
import { usualPackages } from './packages.js';
import { rankPackages } from './rank.js';
import { buyFromRoll } from './roll.js';
import { battingFields, say } from './shape.js';

/** Batting for a quilt, from a package or from the roll. Also the size of a quilt for a bed. */
const reckon = (input = {}) => {
    const ledger = new Ledger(battingFields, input);
    const { bed, roll } = ledger.values;
    if (bed === 'none')
        ledger.require('width', 'length');
    return ledger.finish(() => {
        adoptPrices(ledger);
        const quilt = quiltOrBed(ledger);
        const need = withOverage(ledger, quilt);
        ledger.given('roll', 'packages', 'shrinkage', 'increment', 'price', 'currency');
        const washed = washedSize(ledger, quilt);
        const packages = rankPackages(ledger.values.packages ?? usualPackages(ledger.style), sidesOf(need));
        const wanted = roll?.length ? roll : undefined;
        const plans = rollPlans(wanted ?? ROLLS[ownUnits(ledger.style)].map(ownLength), sidesOf(need));
        const best = packages.find(({ fits }) => fits);
        if (isCrib(bed) || best?.isForCrib)
            ledger.note(sayOfBed('notForCrib'));
        const pack = wanted ? undefined : best;
        return {
            ...(pack ? buyPackage(ledger, pack, need) : buyFromRoll(ledger, firstOf(ledger, plans), need)),
            need: sidesOf(need),
            quilt: sidesOf(quilt),
            washed,
            packages: packages.map((pack) => offered(ledger, pack)),
            rolls: plans.map((plan) => fromRoll(ledger, plan)),
            used: { pack },
        };
    });
};
/** Prices in the list of packages may name the currency too, but not another one. */
const adoptPrices = (ledger) => {
    const prices = ledger.values.packages?.map(({ priced }) => priced) ?? [];
    ledger.adopt(...prices);
    ledger.blame('packages', () => prices.forEach((price) => ledger.sameCurrency(price)));
};
/** The approximate size of the quilt after a wash, with its row if it shrinks. */
const washedSize = (ledger, { width, length }) => {
    const { shrinkage } = ledger.inputs;
    const kept = ONE.sub(shrinkage.value);
    const washed = { width: width.value.mul(kept), length: length.value.mul(kept) };
    if (shrinkage.value.gt(0))
        ledger.row('washed', say('size', washed), { how: say('eachSideWashed', { width, length, shrinkage }) });
    return washed;
};
/** The best way to cut it from a roll, or undefined without a roll. */
const firstOf = (ledger, [plan]) => plan ?? ledger.refuse('roll', missing(battingFields.roll, ledger.style, 'roll'));
/** A package as the result gives it. */
const offered = (ledger, { name, width, length, fits, price }) => {
    const money = price && { price: ledger.priced(price) };
    return {
        name,
        width,
        length,
        fits,
        price: money && say('plainPrice', money),
        priceText: money && say('shownPrice', money),
    };
};
/** A way to cut it from a roll as the result gives it. */
const fromRoll = ({ values: { increment } }, { roll, lengths, each, direction, fabric }) => ({
    width: roll,
    lengths,
    length: each,
    direction,
    seams: lengths - 1,
    fabric,
    buy: enoughFor(fabric, increment),
});

export { reckon };
