/** Whether it is a currency's code, as far as this browser knows them: `yds` is none. */
export declare const isCurrency: (code: string) => boolean;
/** A price without the code of its currency. */
export declare const withoutCode: (price: string) => string;
/** The currency that a price names by its code or its sign; undefined where it names none. */
export declare const currencyIn: (price: string, lang: string) => string | undefined;
/** Whether a price can be in this currency: it names none, or that one, by its code or by a sign that it is written with. */
export declare const isIn: (price: string, currency: string, lang: string) => boolean;
