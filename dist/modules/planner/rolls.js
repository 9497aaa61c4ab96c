import { wholeUp } from '../measure/exact.js';

/** Both directions on one roll; the second only if it uses less. */
const plansOn = (roll, { width, length }) => {
    const plan = (across, each, direction) => {
        const lengths = wholeUp(across.div(roll));
        return { roll, lengths, each, direction, fabric: each.mul(lengths) };
    };
    const [first, second] = [plan(width, length, 'lengthwise'), plan(length, width, 'crosswise')].sort((a, b) => a.lengths - b.lengths || a.fabric.compare(b.fabric));
    return second.fabric.lt(first.fabric) ? [first, second] : [first];
};
/**
 * Ways to cut a piece from rolls of these widths, best first: the fewest lengths, then the least area. Ways with more than two
 * lengths are left out, unless no roll is wide enough for two.
 */
const rollPlans = (rolls, piece) => {
    const all = rolls.flatMap((roll) => plansOn(roll, piece));
    const butted = all.filter(({ lengths }) => lengths <= 2);
    const area = ({ roll, fabric }) => roll.mul(fabric);
    return (butted.length ? butted : all).sort((a, b) => a.lengths - b.lengths || area(a).compare(area(b)) || a.fabric.compare(b.fabric));
};

export { rollPlans };
