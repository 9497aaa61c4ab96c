import { most, least } from '../measure/exact.js';
import { sayings } from '../measure/message.js';
import { OVERAGE } from '../trade/conventions.js';
import { countField } from './kinds.js';
import { sideField, lengthField, usualLength } from './lengths.js';

/** The finished quilt's two sides. */
const quiltFields = { width: sideField(), length: sideField() };
/** How many blocks there are of a kind. One that takes what others leave of a top may be left with none. */
const blocksField = /* @__PURE__ */ countField(20_000, { initial: '1' }, 0);
/** What is added round the quilt for its back and its batting. */
const overageField = lengthField({ initial: OVERAGE, zero: true, most: '36 in' });
/** The most lengths side by side. Nobody joins more, and a page could not draw them. */
const MOST_JOINED = 100;
/** The same size with its short side first, for a piece that may lie either way round. */
const shortFirst = ({ width, length }) => ({
    width: least(width, length),
    length: most(width, length),
});
/** The exact sides of a size. */
const sidesOf = ({ width, length }) => ({
    width: width.value,
    length: length.value,
});
/** The sides of a size across the cloth and along it. Usually its length lies along the cloth. */
const facing = ({ width, length }, turned) => (turned ? [length, width] : [width, length]);
const say = sayings();
/** Adds the rows for a quilt with its overage, for a backing or batting. Gives back the size that is needed. */
const withOverage = (ledger, quilt) => {
    ledger.given('overage');
    const { overage } = ledger.inputs;
    const { width, length } = sidesOf(quilt);
    if (overage.value.gt(most(width, length, usualLength(OVERAGE, ledger.style))))
        ledger.refuse('overage', say('overageTooLarge'));
    return {
        width: ledger.row('needWidth', quilt.width.plus(overage.times(2))),
        length: ledger.row('needLength', quilt.length.plus(overage.times(2))),
    };
};

export { MOST_JOINED, blocksField, facing, overageField, quiltFields, shortFirst, sidesOf, withOverage };
