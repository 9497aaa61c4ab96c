import { clothFields } from '../../ledger/cloth.js';
import { markField } from '../../ledger/cuts.js';
import { inputsOf, optional } from '../../ledger/field.js';
import { countField, flagField, sheetField } from '../../ledger/kinds.js';
import { sizeField, lengthField } from '../../ledger/lengths.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { SEAM } from '../../trade/conventions.js';
import { MAT, RULER } from '../../trade/patches.js';
import { cutListInUnit, writeCutList } from './cut-list.js';

const cuttingFields = /* @__PURE__ */ inputsOf(() => ({
    list: optional({
        kind: 'own',
        lines: true,
        read: (raw) => raw,
        write: writeCutList,
        marked: cutListInUnit,
    }),
    sheet: sheetField(),
    ...clothFields,
    seam: lengthField({ initial: SEAM, zero: true, most: '2 in', more: true }),
    oneWay: flagField(),
    ruler: lengthField({ initial: RULER, most: '120 in', more: true }),
    mat: sizeField({ initial: MAT, more: true }),
    ...markField,
    week: optional(countField(520), { more: true }),
    ...shopFields,
}));
const say = sayings();

export { cuttingFields, say };
