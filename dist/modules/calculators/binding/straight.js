import { Cut } from '../../ledger/purchase.js';
import { count } from '../../ledger/quantity.js';
import { buyCloth } from '../../ledger/shop.js';
import { exact } from '../../measure/exact.js';
import { fewest } from '../../planner/joins.js';
import { refuseTooWide, reachBy } from './job.js';
import { say } from './shape.js';

/** Half an inch is the usual seam twice. */
const TWO_SEAMS = exact(1, 2);
/** Refuses a join that uses up all of a strip. */
const refuseJoin = ({ ledger, cloth, isDiagonal, loss }) => {
    const width = cloth.width.value;
    const [input, write] = isDiagonal
        ? ['join', 'straight']
        : width.gt(TWO_SEAMS)
            ? ['seam', 'smallerSeam']
            : ['fabricWidth', 'widerCloth'];
    return ledger.refuse(input, say('joinLeavesNothing', { loss: loss.value, cloth: width, write }));
};
/** Strips across the cloth, joined end to end. */
const cutStraight = (job) => {
    const { ledger, need, strip, cloth, isDiagonal } = job;
    const width = cloth.width.value;
    if (strip.value.gt(width))
        refuseTooWide(job, 'stripTooWide');
    const strips = fewest(need.value, width, job.loss.value) ?? refuseJoin(job);
    const reach = reachBy(strips, cloth.width, job);
    const all = ledger.row('strips', count(strips), { how: say('stripsReach', { reach, need }) });
    const { fold } = ledger.values;
    return {
        ...buyCloth(ledger, cloth.toBuy(all.times(strip))),
        summary: say('summary', { strips, strip: strip.value, isDiagonal, need: need.value, fold }),
        strips,
        yields: reach.value,
        cuts: [new Cut(strips, say('bindingStrip'), strip.value, width)],
    };
};

export { cutStraight };
