import { least } from '../measure/exact.js';
import { leftToBuy } from './own-length.js';
import { sheetsLeftToBuy } from './own-sheets.js';
import { byWidth } from './parts.js';
import { poolsOf, planPool } from './pool.js';
import { planTogether } from './together.js';

/** The lengths to buy. */
const lengthsToBuy = ({ own, joint }) => (own ?? joint).lengths;
/** How the sheets are cut. */
const sheetsToCut = ({ own, joint }) => own?.planned ?? joint;
const isCloth = ({ sheets }) => !sheets;
const linesIn = (ledger, { key, letter, parts }, stock, plan) => {
    const widths = parts.map(({ sold }) => sold).filter((sold) => sold.gt(0));
    if (widths[0])
        stock?.asWideAs(least(...widths));
    return byWidth(parts).map((parts, at) => {
        const joint = planTogether(ledger, parts, plan);
        const own = stock?.written ? leftToBuy(ledger, parts, joint.lengths, stock, plan) : undefined;
        return { key: at ? `${key} ${at + 1}` : key, letter, parts, joint, own };
    });
};
const poolsIn = ({ key, letter, parts }, stock, plan) => poolsOf(parts).map((pool, at) => {
    const joint = planPool(pool, plan);
    const own = stock?.written ? sheetsLeftToBuy(pool, joint, stock, plan) : undefined;
    return { key: `${key} sheets${at || ''}`, letter, parts: pool.parts, pool, joint, own };
});
/** Plans all parts of a fabric. What is at hand of it is used first. */
const clothOf = (ledger, group, stock, plan) => {
    const parts = group.parts.filter(isCloth);
    return {
        group,
        lines: parts.length ? linesIn(ledger, { ...group, parts }, stock, plan) : [],
        pools: poolsIn(group, stock, plan),
    };
};

export { clothOf, lengthsToBuy, sheetsToCut };
