/** A mattress, in inches. */
export interface Mattress {
    width: string;
    length: string;
}
/**
 * Crib: 16 CFR Part 1219 (full-size baby cribs), interior 28 × 52 3/8 in. The others: "Mattresses", sizes.com.
 */
export declare const BED_SIZES: {
    readonly crib: {
        readonly width: "28";
        readonly length: "52 3/8";
    };
    readonly twin: {
        readonly width: "39";
        readonly length: "75";
    };
    readonly 'twin-long': {
        readonly width: "39";
        readonly length: "80";
    };
    readonly full: {
        readonly width: "54";
        readonly length: "75";
    };
    readonly queen: {
        readonly width: "60";
        readonly length: "80";
    };
    readonly king: {
        readonly width: "78";
        readonly length: "80";
    };
    readonly 'california-king': {
        readonly width: "72";
        readonly length: "84";
    };
};
export type Bed = keyof typeof BED_SIZES;
/** What the quilt is for: no bed, or one of these. Written out, so that a bundler can leave it out where nobody asks for it. */
export declare const BED_CHOICES: readonly ['none', ...Bed[]];
