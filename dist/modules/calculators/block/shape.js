import { clothFields } from '../../ledger/cloth.js';
import { markField } from '../../ledger/cuts.js';
import { inputsOf, optional, textOf } from '../../ledger/field.js';
import { countField, flagField, sheetField, choiceField } from '../../ledger/kinds.js';
import { lengthField } from '../../ledger/lengths.js';
import { blocksField } from '../../ledger/quilt.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { SEAM } from '../../trade/conventions.js';
import { writeChart } from './chart.js';

/** Each method by its code: half-square triangles first, then geese. */
const METHODS = {
    'two-one': { halves: 'two', geese: 'one', rows: 'patches' },
    'two-four': { halves: 'two', geese: 'four', rows: 'patches' },
    'eight-one': { halves: 'eight', geese: 'one', rows: 'patches' },
    'eight-four': { halves: 'eight', geese: 'four', rows: 'patches' },
    // A chart that is made of strips has no triangles.
    strips: { halves: 'two', geese: 'one', rows: 'strips' },
};
const CODES = ['two-one', 'two-four', 'eight-one', 'eight-four', 'strips'];
/** An author may leave out what stays as usual, and write the rest in any order: `four`, `four, eight`. */
const codeOf = (written) => {
    const words = written
        .trim()
        .toLowerCase()
        .split(/[\s,;+-]+/);
    const isKnown = words.every((word) => /^(two|eight|one|four)$/.test(word));
    if (!isKnown)
        return written;
    return `${words.includes('eight') ? 'eight' : 'two'}-${words.includes('four') ? 'four' : 'one'}`;
};
const methodField = () => {
    const field = choiceField(CODES);
    return { ...field, read: (raw, style, what) => field.read(codeOf(textOf(raw)), style, what) };
};
const blockFields = /* @__PURE__ */ inputsOf(() => ({
    chart: {
        kind: 'own',
        lines: true,
        example: ['A B A; B A B; A B A'],
        read: (raw) => raw,
        write: writeChart,
    },
    block: lengthField({ most: '200 in' }),
    count: blocksField,
    method: methodField(),
    sheet: optional(sheetField(), { more: true }),
    oneWay: flagField({ more: true }),
    ...clothFields,
    seam: lengthField({ initial: SEAM, zero: true, most: '2 in', more: true }),
    ...markField,
    week: optional(countField(520), { more: true }),
    ...shopFields,
}));
const say = sayings();

export { METHODS, blockFields, say };
