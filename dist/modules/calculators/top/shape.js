import { inputsOf } from '../../ledger/field.js';
import { clothFields } from '../../ledger/cloth.js';
import { markField } from '../../ledger/cuts.js';
import { flagField, choiceField, countField } from '../../ledger/kinds.js';
import { lengthField } from '../../ledger/lengths.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { SEAM } from '../../trade/conventions.js';

const topFields = /* @__PURE__ */ inputsOf(() => ({
    block: lengthField({ most: '200 in' }),
    across: countField(100),
    down: countField(100),
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
