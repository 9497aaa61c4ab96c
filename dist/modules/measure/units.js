import { exact } from './exact.js';

/** What was written for them; these where it is neither. */
const unitsOr = (written, otherwise) => written === 'cm' || written === 'in' ? written : otherwise;
/** Inches in one of each unit. International yard and pound agreement, 1959: 1 yd = 0.9144 m exactly. */
const INCHES = {
    in: exact(1),
    ft: exact(12),
    yd: exact(36),
    mm: exact(5, 127),
    cm: exact(50, 127),
    m: exact(5000, 127),
};
const toUnit = (inches, unit) => inches.div(INCHES[unit]);
const fromUnit = (amount, unit) => amount.mul(INCHES[unit]);
/** Whether a language writes decimals with a comma ("52,5"). An unknown language does not. */
const writesComma = (lang) => {
    try {
        return new Intl.NumberFormat(lang || 'en').format(1.5).includes(',');
    }
    catch {
        return false;
    }
};

export { INCHES, fromUnit, toUnit, unitsOr, writesComma };
