/** The currency that each sign usually means. What a dollar sign means depends on the page's region. */
const SIGNS = {
    $: 'USD',
    '€': 'EUR',
    '£': 'GBP',
    '¥': 'JPY',
    '₩': 'KRW',
    '₹': 'INR',
};
const DOLLARS = /-(au|ca|nz)\b/i;
/** Whether this browser knows it as the code of a currency. It does not know `yds`. */
const isCurrency = (code) => Intl.supportedValuesOf('currency').includes(code.toUpperCase());
const signIn = (price) => /\p{Sc}/u.exec(price.normalize('NFKC'))?.[0];
/** Whether this currency is written with this sign. */
const isSignOf = (sign, currency) => new Intl.NumberFormat('en', { style: 'currency', currency, currencyDisplay: 'narrowSymbol' })
    .formatToParts(1)
    .some(({ type, value }) => type === 'currency' && value === sign);
/** The code before or after a price, as somebody wrote it. There is none beside the sign of another currency. */
const codeIn = (price) => {
    const text = price.trim();
    const [code = '', ...more] = text.match(/\p{L}+/gu) ?? [];
    const isOutside = text.startsWith(code) || text.endsWith(code);
    const isCode = /^[a-z]{3}$/i.test(code) && !more.length && isOutside && isCurrency(code);
    const sign = signIn(text);
    return isCode && (!sign || isSignOf(sign, code)) ? code : undefined;
};
/** A price without the code of its currency. */
const withoutCode = (price) => price.replace(codeIn(price) ?? '', '');
/** The currency that a price names by its code or its sign, or undefined if it names none. */
const currencyIn = (price, lang) => {
    const sign = signIn(price);
    const region = sign === '$' && DOLLARS.exec(lang)?.[1];
    return codeIn(price)?.toUpperCase() ?? (region ? `${region.toUpperCase()}D` : sign && SIGNS[sign]);
};
/** Whether a price can be in this currency: it names no currency, or this one by its code or its sign. */
const isIn = (price, currency, lang) => {
    const named = currencyIn(price, lang);
    if (!named || named === currency.toUpperCase())
        return true;
    return !codeIn(price) && isSignOf(signIn(price), currency);
};

export { currencyIn, isCurrency, isIn, withoutCode };
