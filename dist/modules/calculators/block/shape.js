import { clothFields } from '../../ledger/cloth.js';
import { markField } from '../../ledger/cuts.js';
import { inputsOf, optional, textOf } from '../../ledger/field.js';
import { countField, choiceField } from '../../ledger/kinds.js';
import { lengthField } from '../../ledger/lengths.js';
import { shopFields } from '../../ledger/shop.js';
import { sayings } from '../../measure/message.js';
import { SEAM } from '../../trade/conventions.js';
import { writeChart } from './chart.js';

/** Each method by its code: half-square triangles first, then geese. */
const METHODS = {
    'two-one': { halves: 'two', geese: 'one' },
    'two-four': { halves: 'two', geese: 'four' },
    'eight-one': { halves: 'eight', geese: 'one' },
    'eight-four': { halves: 'eight', geese: 'four' },
};
const CODES = ['two-one', 'two-four', 'eight-one', 'eight-four'];
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
    count: countField(10_000, { initial: '1' }),
    method: methodField(),
    ...clothFields,
    seam: lengthField({ initial: SEAM, zero: true, most: '2 in', more: true }),
    ...markField,
    week: optional(countField(520), { more: true }),
    ...shopFields,
}));
const say = sayings();

export { METHODS, blockFields, say };
