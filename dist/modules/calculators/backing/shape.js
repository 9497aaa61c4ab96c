import { inputsOf } from '../../ledger/field.js';
import { clothFields } from '../../ledger/cloth.js';
import { flagField } from '../../ledger/kinds.js';
import { lengthField } from '../../ledger/lengths.js';
import { overageField, quiltFields } from '../../ledger/quilt.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { BACKING_SEAM } from '../../trade/conventions.js';

const backingFields = /* @__PURE__ */ inputsOf(() => ({
    ...quiltFields,
    overage: overageField,
    ...clothFields,
    seam: lengthField({ initial: BACKING_SEAM, zero: true, most: '4 in' }),
    repeat: lengthField({ initial: '0', zero: true, most: '60 in', more: true }),
    oneWay: flagField(),
    piecedStrip: flagField({ more: true }),
    ...shopFields,
}));
const say = sayings();

export { backingFields, say };
