import type { Message } from '../measure/message.js';
/**
 * Whether it says where a picture is: it begins like an address or a path, or ends as a picture's file does. A bare word, such
 * as a fabric's name, is no address, and nothing is asked for it.
 */
export declare const isPicture: (swatch: string) => boolean;
/** What is wrong with a fabric's swatch, if anything is. */
export declare const swatchTrouble: (letter: string, written: string, isColour: (swatch: string) => boolean) => Message[];
