import { inputsOf, optional } from '../../ledger/field.js';
import { choiceField } from '../../ledger/kinds.js';
import { lengthsField, lengthField } from '../../ledger/lengths.js';
import { overageField, quiltFields } from '../../ledger/quilt.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { BEDS, BED_CHOICES } from '../../trade/beds.js';
import { BED_DROP } from '../../trade/conventions.js';
import { packagesField } from './packages.js';

const battingFields = /* @__PURE__ */ inputsOf(() => ({
    bed: choiceField(BED_CHOICES, { offered: BEDS }),
    width: optional(quiltFields.width),
    length: optional(quiltFields.length),
    drop: lengthField({ initial: BED_DROP, zero: true, most: '60 in' }),
    tuck: lengthField({ initial: '0', zero: true, most: '60 in' }),
    overage: overageField,
    roll: optional(lengthsField({ most: '400 in' })),
    packages: optional(packagesField),
    ...shopFields,
}));
const say = sayings();

export { battingFields, say };
