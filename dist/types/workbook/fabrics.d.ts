import { type Exact } from '../measure/exact.js';
import { type Style } from '../measure/format.js';
import type { Message } from '../measure/message.js';
import type { WorkbookFabric } from './input.js';
/** A fabric as it is declared, with what it looks like. */
export interface FabricOnPage extends WorkbookFabric {
    /** A colour, or the address of a picture. */
    swatch?: string | undefined;
}
/** A length that flows to parts, which may have other units. A text that cannot be read flows too: the part then says what is wrong. */
export declare const flowing: (raw: unknown, style: Style) => {
    value: unknown;
    inches?: Exact;
};
/** How wide a fabric is, and who said so. */
interface Width {
    /** The value that flows, or undefined if nobody gave one. */
    width: unknown;
    inches: Exact;
    from: Message;
}
/** The width that flows to a part: that of its first fabric, and those of all if they differ. */
export interface FlowingWidths {
    fabricWidth: unknown;
    fabricWidths?: unknown[];
    from: Message;
}
/** The fabrics of a worksheet, by letter. If two have the same letter, the first one counts. */
export declare class Fabrics {
    #private;
    readonly declared: FabricOnPage[];
    /** The width of fabrics that do not say their own. */
    readonly width: unknown;
    readonly style: Style;
    constructor(declared: FabricOnPage[], 
    /** The width of fabrics that do not say their own. */
    width: unknown, style: Style);
    /** Empty if the fabric has no name. Undefined if no fabric has this letter. */
    nameOf(letter: string): string | undefined;
    /** The letters that a part names, in order. A declared letter may have a space in it: `A 1`. */
    lettersIn(written: unknown): string[];
    /** The width of a fabric, or that of the worksheet. An unreadable width counts as the narrowest, so that its part says what is wrong. */
    widthOf(letter: string): Width;
    /** How wide the first of these is, how wide each is if they differ, and who said so. */
    widthsOf([first, ...others]: string[]): FlowingWidths;
    /** The widths of those that say their own. */
    get widths(): Record<string, unknown>;
    get swatches(): Map<string, string>;
    /** What the author has to correct. Only a page knows what is a colour, so it gives the function. */
    troubles(isColour: (swatch: string) => boolean): Message[];
}
export {};
