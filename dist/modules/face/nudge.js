import { ONE, most, ZERO } from '../measure/exact.js';
import { mixed, asTyped } from '../measure/format.js';
import { parseLength } from '../measure/parse.js';
import { readLength } from '../ledger/lengths.js';
import { RULER_MARK } from '../trade/conventions.js';

/** The text of a cell, moved by some marks of the ruler. If it is not a length, it moves by whole numbers. Undefined without a number. */
const nudged = (text, by, kind, style, mark) => {
    const whole = kind === 'count' || kind === 'percent';
    const read = parseLength(text.replace(/[%≈]/g, ''), whole ? { units: 'in' } : { ...style, bare: undefined });
    if (!read.ok || !(whole || kind === 'length'))
        return;
    const step = whole ? ONE : (mark ?? readLength(RULER_MARK[style.units], style));
    const moved = most(read.value.add(step.mul(by)), ZERO);
    return whole ? mixed(moved) + (kind === 'percent' ? ' %' : '') : asTyped(moved, style);
};

export { nudged };
