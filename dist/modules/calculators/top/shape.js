import { bedFields } from '../../ledger/bed.js';
import { inputsOf, optional } from '../../ledger/field.js';
import { clothFields } from '../../ledger/cloth.js';
import { markField } from '../../ledger/cuts.js';
import { flagField, choiceField, countField } from '../../ledger/kinds.js';
import { lengthField, sizeField } from '../../ledger/lengths.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { SEAM } from '../../trade/conventions.js';
import { MOST_BLOCKS } from './choices.js';

const topFields = /* @__PURE__ */ inputsOf(() => ({
    bed: bedFields.bed,
    drop: bedFields.drop,
    tuck: bedFields.tuck,
    target: optional(sizeField({})),
    border: lengthField({ initial: '0', zero: true, most: '60 in' }),
    block: lengthField({ most: '200 in' }),
    across: countField(MOST_BLOCKS),
    down: countField(MOST_BLOCKS),
    set: choiceField(['straight', 'on-point']),
    sashing: lengthField({ initial: '0', zero: true, most: '60 in' }),
    cornerstones: flagField(),
    frame: flagField(),
    ...clothFields,
    seam: lengthField({ initial: SEAM, zero: true, most: '2 in', more: true }),
    ...markField,
    ...shopFields,
}));
const say = sayings();

export { say, topFields };
