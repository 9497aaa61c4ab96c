import { type Exact } from './exact.js';
/** The unit of a number alone, and of the answers. */
export type Units = 'in' | 'cm';
/** The units that somebody wrote, or `otherwise` if it is neither of the two. */
export declare const unitsOr: (written: unknown, otherwise: Units) => Units;
/** Inches in one of each unit. International yard and pound agreement, 1959: 1 yd = 0.9144 m exactly. */
export declare const INCHES: {
    readonly in: import("fraction.js").default;
    readonly ft: import("fraction.js").default;
    readonly yd: import("fraction.js").default;
    readonly mm: import("fraction.js").default;
    readonly cm: import("fraction.js").default;
    readonly m: import("fraction.js").default;
};
export type Unit = keyof typeof INCHES;
export declare const toUnit: (inches: Exact, unit: Unit) => Exact;
export declare const fromUnit: (amount: Exact, unit: Unit) => Exact;
/** How this language writes numbers. Throws if there is no such language or currency. */
export declare const numbersIn: (lang: string, options?: Intl.NumberFormatOptions) => Intl.NumberFormat;
/** Whether a language writes decimals with a comma ("52,5"). An unknown language does not. */
export declare const writesComma: (lang: string | undefined) => boolean;
