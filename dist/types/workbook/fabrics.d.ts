import { type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import type { Message } from '../measure/message.js';
import type { WorkbookFabric } from './input.js';
/** A fabric as it is declared, with what it looks like. */
export interface FabricOnPage extends WorkbookFabric {
    /** A colour, or the address of a picture. */
    swatch?: string | undefined;
}
/** A length as it flows to parts that may have other units. One that cannot be read flows as it is, and is wrong there too. */
export declare const flowing: (raw: unknown, style: Style) => {
    value: unknown;
    inches?: Exact;
};
/** How wide a fabric is, and where that was said. */
interface Width {
    /** As it flows; undefined where nobody said it. */
    width: unknown;
    inches: Exact;
    from: Message;
}
/** The width of the cloth that flows to a part: that of its first fabric, and of each where they differ. */
export interface FlowingWidths {
    fabricWidth: unknown;
    fabricWidths?: unknown[];
    from: Message;
}
/** The fabrics declared in a worksheet, by letter; of two with one letter the first. */
export declare class Fabrics {
    #private;
    readonly declared: FabricOnPage[];
    /** Of those that do not say their own width. */
    readonly width: unknown;
    readonly style: Style;
    constructor(declared: FabricOnPage[], 
    /** Of those that do not say their own width. */
    width: unknown, style: Style);
    /** Empty for one without a name; undefined where no such letter is declared. */
    nameOf(letter: string): string | undefined;
    /** The letters that a part names, in order; one with a space in it, as it is declared, is taken whole: `A 1`. */
    lettersIn(written: unknown): string[];
    /** A fabric's width, or the worksheet's. One that cannot be read is the narrowest, so that its part says so. */
    widthOf(letter: string): Width;
    /** How wide the first of these is, and each of them where they differ; and where that was said. */
    widthsOf([first, ...others]: string[]): FlowingWidths;
    /** The widths of those that say their own. */
    get widths(): Record<string, unknown>;
    get swatches(): Map<string, string>;
    /** What the author has to mend in them; a page can tell what is a colour. */
    troubles(isColour: (swatch: string) => boolean): Message[];
}
export {};
