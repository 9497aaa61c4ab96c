import { ONE, exact } from '../measure/exact.js';
import { sayings } from '../measure/message.js';
import { toUnit, INCHES } from '../measure/units.js';
import { BOLT_WIDTHS } from '../trade/cloths.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { percentField } from './kinds.js';
import { lengthField } from './lengths.js';

/** The cloth as it lies in the shop. */
const clothFields = { fabricWidth: lengthField({ initial: COTTON_WIDTH }) };
/** How much it shrinks in the wash. */
const shrinkageField = percentField({ initial: '0', more: true });
const sayOfCloth = sayings();
/** Warns if a width is one that shops name with selvages; empty if it is not. */
const selvagesOf = (width, { units }) => {
    const wide = toUnit(width, units);
    const [, , usable] = BOLT_WIDTHS[units].find(([from, to]) => wide.gte(from) && wide.lte(to)) ?? [];
    return usable ? [sayOfCloth('selvages', { width, usable: exact(usable).mul(INCHES[units]) })] : [];
};
/** Adds the rows of the cloth's usable width and, if it shrinks, its width after the wash. */
const clothOf = (ledger) => {
    const { fabricWidth: sold, shrinkage } = ledger.inputs;
    const kept = ONE.sub(shrinkage.value);
    ledger.given('fabricWidth');
    ledger.notes.push(...selvagesOf(sold.value, ledger.style));
    if (kept.equals(1)) {
        const same = (length) => length;
        return { width: sold, sold, kept, washed: same, toBuy: same };
    }
    ledger.given('shrinkage');
    ledger.note(sayOfCloth('washFirst'));
    const washed = (sold) => sold.lessPercent(shrinkage);
    const width = ledger.measurable('washedWidth', washed(sold));
    if (width.value.gt(sold.value))
        ledger.refuse('washedWidth', sayOfCloth('washedWider', { width: sold.value }));
    return { width, sold, kept, washed, toBuy: (length) => length.beforeLoss(shrinkage) };
};

export { clothFields, clothOf, sayOfCloth, selvagesOf, shrinkageField };
