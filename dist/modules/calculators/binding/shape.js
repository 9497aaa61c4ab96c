import { clothFields } from '../../ledger/cloth.js';
import { markField, joinField } from '../../ledger/cuts.js';
import { inputsOf, optional } from '../../ledger/field.js';
import { choiceField } from '../../ledger/kinds.js';
import { lengthField } from '../../ledger/lengths.js';
import { quiltFields } from '../../ledger/quilt.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { SEAM, QUILT_THICKNESS, BINDING_ALLOWANCE } from '../../trade/conventions.js';

const bindingFields = /* @__PURE__ */ inputsOf(() => ({
    width: optional(quiltFields.width),
    length: optional(quiltFields.length),
    perimeter: optional(lengthField({ most: '4000 in', more: true })),
    allowance: lengthField({ initial: BINDING_ALLOWANCE, zero: true, most: '100 in' }),
    stripWidth: optional(lengthField()),
    finished: optional(lengthField({ most: '6 in', example: { in: ['3/8'], cm: ['1'] } })),
    fold: choiceField(['double', 'single']),
    thickness: lengthField({ initial: QUILT_THICKNESS, zero: true, most: '2 in', more: true }),
    ...clothFields,
    cut: choiceField(['straight', 'bias']),
    join: joinField,
    seam: lengthField({ initial: SEAM, most: '4 in', more: true }),
    ...markField,
    ...shopFields,
}));
const say = sayings();

export { bindingFields, say };
