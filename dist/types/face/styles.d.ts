/**
 * A ruled ledger: fine rules between rows, a double line before the amounts, the answer over a double rule. Every colour
 * is mixed from the page's own text colour and one accent, so that it fits light and dark pages alike.
 */
export declare const faceStyles: import("lit").CSSResult;
