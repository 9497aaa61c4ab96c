import { inputsOf, optional } from '../../ledger/field.js';
import { clothFields } from '../../ledger/cloth.js';
import { lengthField, sizeField, sideField } from '../../ledger/lengths.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { SEAM, SLEEVE_HEM, SLEEVE_SHORT, SLEEVE_STRIP } from '../../trade/conventions.js';

const sleeveFields = /* @__PURE__ */ inputsOf(() => ({
    width: sideField(),
    stripWidth: lengthField({ initial: SLEEVE_STRIP, most: '40 in' }),
    short: lengthField({ initial: SLEEVE_SHORT, zero: true, most: '20 in' }),
    hem: lengthField({ initial: SLEEVE_HEM, zero: true, most: '4 in', more: true }),
    label: optional(sizeField({ more: true })),
    ...clothFields,
    seam: lengthField({ initial: SEAM, zero: true, most: '2 in', more: true }),
    ...shopFields,
}));
const say = sayings();

export { say, sleeveFields };
