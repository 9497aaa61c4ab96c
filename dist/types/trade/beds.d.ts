import type { Units } from '../measure/units.js';
/** A mattress. */
interface Mattress {
    width: string;
    length: string;
    /** It is for a baby. */
    isCrib?: true;
}
/**
 * Crib: 16 CFR Part 1219 (full-size baby cribs), interior 28 × 52 3/8 in. The others in inches: "Mattresses", sizes.com.
 * Those in centimetres, of British and of continental shops: from memory.
 */
declare const SIZES: {
    readonly crib: {
        readonly width: "28 in";
        readonly length: "52 3/8 in";
        readonly isCrib: true;
    };
    readonly twin: {
        readonly width: "39 in";
        readonly length: "75 in";
    };
    readonly 'twin-long': {
        readonly width: "39 in";
        readonly length: "80 in";
    };
    readonly full: {
        readonly width: "54 in";
        readonly length: "75 in";
    };
    readonly queen: {
        readonly width: "60 in";
        readonly length: "80 in";
    };
    readonly king: {
        readonly width: "78 in";
        readonly length: "80 in";
    };
    readonly 'california-king': {
        readonly width: "72 in";
        readonly length: "84 in";
    };
    readonly '60x120': {
        readonly width: "60 cm";
        readonly length: "120 cm";
        readonly isCrib: true;
    };
    readonly '70x140': {
        readonly width: "70 cm";
        readonly length: "140 cm";
        readonly isCrib: true;
    };
    readonly '90x190': {
        readonly width: "90 cm";
        readonly length: "190 cm";
    };
    readonly '90x200': {
        readonly width: "90 cm";
        readonly length: "200 cm";
    };
    readonly '120x200': {
        readonly width: "120 cm";
        readonly length: "200 cm";
    };
    readonly '135x190': {
        readonly width: "135 cm";
        readonly length: "190 cm";
    };
    readonly '140x200': {
        readonly width: "140 cm";
        readonly length: "200 cm";
    };
    readonly '150x200': {
        readonly width: "150 cm";
        readonly length: "200 cm";
    };
    readonly '160x200': {
        readonly width: "160 cm";
        readonly length: "200 cm";
    };
    readonly '180x200': {
        readonly width: "180 cm";
        readonly length: "200 cm";
    };
    readonly '200x200': {
        readonly width: "200 cm";
        readonly length: "200 cm";
    };
};
export type Bed = keyof typeof SIZES;
export declare const BED_SIZES: Record<Bed, Mattress>;
/** No bed, or one of those that shops sell where people measure in these units. */
export declare const BEDS: Record<Units, readonly ['none', ...Bed[]]>;
/** Every bed that can be written, whatever the units. */
export declare const BED_CHOICES: readonly ['none', ...Bed[]];
export {};
