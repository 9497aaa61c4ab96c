import { joined } from '../../ledger/joined.js';
import { count } from '../../ledger/quantity.js';
import { INCHES } from '../../measure/units.js';
import { say } from './shape.js';

/** Adds the row of what a join uses up, and gives back the job with that row. */
const withLossRow = (job) => {
    const { ledger, strip, loss, isDiagonal } = job;
    const how = isDiagonal ? say('joinAtAngle', { strip }) : loss;
    return { ...job, loss: ledger.row('loss', loss, { how, from: ['join'] }) };
};
/** How far this many strips reach. */
const reachBy = (strips, each, { loss }) => joined(strips, each, count(strips - 1).times(loss));
const biasNeed = ({ ledger, need, strip, loss }) => ({
    length: need.value,
    strip: strip.value,
    seam: ledger.values.seam,
    join: loss.value,
    unit: INCHES[ledger.style.units],
});
/** If cloth is this narrow, the reader surely means wider cloth. */
const NARROW = 10;
/** Refuses a strip that is too wide for the cloth. */
const refuseTooWide = ({ ledger, stripInput, strip, cloth: { width } }, code) => {
    const isNarrow = width.value.lt(NARROW);
    const other = stripInput === 'finished' ? 'finished' : 'strip';
    const narrower = isNarrow ? 'cloth' : other;
    const problem = say(code, { strip: strip.value, cloth: width.value, narrower });
    return ledger.refuse(isNarrow ? 'fabricWidth' : stripInput, problem);
};

export { biasNeed, reachBy, refuseTooWide, withLossRow };
