import { say } from './sayings.js';

/**
 * Whether it says where a picture is: it begins like an address or a path, or ends as a picture's file does. A bare word, such
 * as a fabric's name, is no address, and nothing is asked for it.
 */
const isPicture = (swatch) => /^(data:image\/|blob:|https?:\/\/|\.{0,2}\/\S)|\.(avif|bmp|gif|ico|jfif|jpe?g|png|svg|webp)([?#].*)?$/i.test(swatch.trim());
/** What is wrong with a fabric's swatch, if anything is. */
const swatchTrouble = (letter, written, isColour) => {
    const swatch = written.trim();
    return !swatch || isColour(written) || isPicture(written) ? [] : [say('noSwatch', { letter, swatch })];
};

export { isPicture, swatchTrouble };
