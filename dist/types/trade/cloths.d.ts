import type { Units } from '../measure/units.js';
/** The name of cloth of a fixed size. Everybody knows the size of a fat quarter and a fat eighth by the name. */
export type SheetKind = 'fat-quarter' | 'fat-eighth' | 'strip' | 'square' | 'sheet';
/** Cloth that shops sell in a fixed size. The size is the usable one, without the selvage. */
export interface SheetSize {
    width: string;
    height: string;
}
/** The same, as it is sold where people measure in inches and in centimetres. */
interface Sheet {
    kind: SheetKind;
    size: Record<Units, SheetSize>;
}
/**
 * A fat quarter with its selvage off. Common practice, no source. Half a metre halved is 50 × 55 cm, and half a yard halved about
 * 45 × 55; shops in metric countries sell both, so the centimetres hold for either. From memory.
 */
export declare const FAT_QUARTER: {
    readonly in: {
        readonly width: "20 in";
        readonly height: "18 in";
    };
    readonly cm: {
        readonly width: "50 cm";
        readonly height: "45 cm";
    };
};
/** What a shop cuts from a bolt and halves across, for two fat quarters. Common practice, no source; in metric from memory. */
export declare const FOR_TWO_QUARTERS: {
    readonly in: "18 in";
    readonly cm: "50 cm";
};
/**
 * Squares and strips as named; common practice, no source. A fat quarter is nominally 18 × 22 in: "Number of squares from a
 * fat quarter", Pieceful Living, 13 August 2011.
 */
export declare const SHEETS: Record<string, Sheet>;
/** Their names, in the order in which a reader chooses from them. */
export declare const SHEET_NAMES: readonly ["fat-quarter", "fat-eighth", "square-10", "square-5", "strip-2.5"];
export type SheetName = (typeof SHEET_NAMES)[number];
/** The sheet that somebody named, in any spelling of the name: `Fat quarter`. */
export declare const sheetNamed: (text: string) => SheetName | undefined;
/**
 * Shops name cloth by its width with selvages. From, to, and the usable width, in the unit. Common practice, no source; the
 * centimetres are from memory.
 */
export declare const BOLT_WIDTHS: {
    readonly in: readonly [readonly [21, 23, 20], readonly [43, 46, 40], readonly [53, 55, 52], readonly [107, 110, 106]];
    readonly cm: readonly [readonly [53, 58, 50], readonly [109, 117, 105], readonly [134, 142, 130], readonly [148, 152, 145], readonly [272, 280, 265]];
};
export {};
