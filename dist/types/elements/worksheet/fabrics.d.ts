import { type Exact } from '../../measure/exact.js';
import { type Style } from '../../measure/format.js';
import type { QuiltFabric } from '../fabric/fabric.js';
/** A length as it flows to parts that may have other units. One that cannot be read flows as it is, and is wrong there too. */
export declare const flowing: (raw: unknown, style: Style) => {
    text: unknown;
    inches?: Exact;
};
/** How wide a fabric is, and in words where that was said. */
interface Width {
    width: unknown;
    inches: Exact;
    from: string;
}
/** The fabrics declared in a worksheet, by letter; of two with one letter the first. */
export declare class Fabrics {
    #private;
    readonly declared: QuiltFabric[];
    /** Of those that do not say their own width. */
    readonly width: unknown;
    readonly style: Style;
    constructor(declared: QuiltFabric[], 
    /** Of those that do not say their own width. */
    width: unknown, style: Style);
    /** Empty for one without a name; undefined where no such letter is declared. */
    nameOf: (letter: string) => string | undefined;
    /** The letters that a part names, in order; one with a space in it, as it is declared, is taken whole: `A 1`. */
    lettersOf({ fabric }: {
        fabric?: unknown;
    }): string[];
    /** A fabric's width, or the worksheet's. One that cannot be read is the narrowest, so that its part says so. */
    widthOf: (letter: string) => Width;
    /** How wide the first of these is, and each of them where they differ; in words where that was said. */
    widthsOf([first, ...others]: string[]): {
        fabricWidth: unknown;
        fabricWidths?: unknown[];
        from: string;
    };
    /** The widths of those that say their own. */
    get widths(): Record<string, unknown>;
    /** What the author has to mend in them, in sentences. */
    get troubles(): string[];
    get swatches(): Map<string, string>;
}
export {};
