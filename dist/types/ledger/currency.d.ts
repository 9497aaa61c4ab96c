/** Whether this browser knows it as the code of a currency. It does not know `yds`. */
export declare const isCurrency: (code: string) => boolean;
/** A price without the code of its currency. */
export declare const withoutCode: (price: string) => string;
/** The currency that a price names by its code or its sign, or undefined if it names none. */
export declare const currencyIn: (price: string, lang: string) => string | undefined;
/** Whether a price can be in this currency: it names no currency, or this one by its code or its sign. */
export declare const isIn: (price: string, currency: string, lang: string) => boolean;
