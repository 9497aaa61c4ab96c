/** Money as a language writes it: `€12.50`. A price with parts of a coin shows all its decimals. Without a currency it is a number alone. */
export declare const moneyIn: (lang: string, value: number, currency: string | undefined) => string;
/** How many decimals a currency has. */
export declare const decimalsOfCurrency: (currency: string) => number;
