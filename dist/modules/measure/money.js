import { numbersIn } from './units.js';

/** Kinds of English that write the sign of a currency before its amount. */
const ENGLISH = /^en(-US|-GB|-IE)?$/;
/** The signs of the currencies that are written here, and in which languages. */
const SIGNS = new Map([
    ['EUR', { sign: '€', languages: ENGLISH }],
    ['GBP', { sign: '£', languages: ENGLISH }],
    ['USD', { sign: '$', languages: /^en(-US)?$/ }],
    // Money without a currency.
    ['', { sign: '', languages: ENGLISH }],
]);
/**
 * Whole cents in plain English, as the browser would write them. It takes a browser long to begin with that, and a page would wait
 * for it. Undefined for all other money.
 */
const centsInEnglish = (lang, value, currency = '') => {
    const known = SIGNS.get(currency.toUpperCase());
    const cents = value.toFixed(2);
    if (!known?.languages.test(lang) || !(value >= 0 && value < 1e9) || Number(cents) !== value)
        return undefined;
    return known.sign + cents.replace(/\d(?=(\d{3})+\.)/g, '$&,');
};
/** Money as a language writes it: `€12.50`. A price with parts of a coin shows all its decimals. Without a currency it is a number alone. */
const moneyIn = (lang, value, currency) => {
    const known = centsInEnglish(lang, value, currency);
    if (known !== undefined)
        return known;
    try {
        return numbersIn(lang, {
            maximumFractionDigits: 6,
            ...(currency ? { style: 'currency', currency } : { minimumFractionDigits: 2 }),
        }).format(value);
    }
    catch {
        return value.toFixed(2);
    }
};
/** How many decimals a currency has. */
const decimalsOfCurrency = (currency) => SIGNS.has(currency.toUpperCase())
    ? 2
    : (numbersIn('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2);

export { decimalsOfCurrency, moneyIn };
