import type { Message } from '../measure/message.js';
/**
 * Whether it is the address of a picture: it begins like an address or a path, or ends like a picture file. A word alone, such as
 * the name of a fabric, is not an address, so nothing is loaded for it.
 */
export declare const isPicture: (swatch: string) => boolean;
/** What is wrong with a fabric's swatch, if anything is. */
export declare const swatchTrouble: (letter: string, written: string, isColour: (swatch: string) => boolean) => Message[];
