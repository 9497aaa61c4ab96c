import { bedFields } from '../../ledger/bed.js';
import { inputsOf, optional } from '../../ledger/field.js';
import { lengthsField } from '../../ledger/lengths.js';
import { overageField, quiltFields } from '../../ledger/quilt.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { packagesField } from './packages.js';

const battingFields = /* @__PURE__ */ inputsOf(() => ({
    bed: bedFields.bed,
    width: optional(quiltFields.width),
    length: optional(quiltFields.length),
    drop: bedFields.drop,
    tuck: bedFields.tuck,
    overage: overageField,
    roll: optional(lengthsField({ most: '400 in' })),
    packages: optional(packagesField),
    ...shopFields,
}));
const say = sayings();

export { battingFields, say };
