import { clothFields } from '../../ledger/cloth.js';
import { markField, joinField } from '../../ledger/cuts.js';
import { inputsOf, optional } from '../../ledger/field.js';
import { choiceField, choicesField } from '../../ledger/kinds.js';
import { lengthField, sizeField, lengthCellsField, sideField } from '../../ledger/lengths.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { SEAM } from '../../trade/conventions.js';

const bordersFields = /* @__PURE__ */ inputsOf(() => ({
    width: sideField(),
    length: sideField(),
    borders: lengthCellsField(),
    corners: choicesField(['sides-first', 'ends-first', 'squares', 'mitred']),
    target: optional(sizeField({})),
    ...clothFields,
    grain: choiceField(['across', 'along']),
    join: joinField,
    seam: lengthField({ initial: SEAM, zero: true, most: '2 in' }),
    ...markField,
    ...shopFields,
}));
const rowOf = (number, part) => `border${number}${part}`;
const say = sayings();

export { bordersFields, rowOf, say };
