import { inputsOf, optional } from '../ledger/field.js';
import { countField } from '../ledger/kinds.js';
import { lengthField } from '../ledger/lengths.js';
import { quiltFields } from '../ledger/quilt.js';
import { shopFields } from '../ledger/shop.js';
import { soldLength } from '../measure/shop.js';
import { BOLT } from '../trade/conventions.js';

const { shrinkage, increment, currency } = shopFields;
const worksheetFields = /* @__PURE__ */ inputsOf(() => ({
    width: optional(quiltFields.width, { more: true }),
    length: optional(quiltFields.length, { more: true }),
    fabricWidth: optional(lengthField({ more: true })),
    seam: optional(lengthField({ zero: true, most: '2 in', more: true, example: { in: ['1/4'], cm: ['0.75'] } })),
    kits: optional(countField(10_000)),
    bolt: { ...lengthField({ initial: BOLT, most: '100000 in' }), write: soldLength },
    shrinkage,
    increment,
    currency,
}));

export { worksheetFields };
