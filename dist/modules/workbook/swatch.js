import { say } from './sayings.js';

/**
 * Whether it is the address of a picture: it begins like an address or a path, or ends like a picture file. A word alone, such as
 * the name of a fabric, is not an address, so nothing is loaded for it.
 */
const isPicture = (swatch) => /^(data:image\/|blob:|https?:\/\/|\.{0,2}\/\S)|\.(avif|bmp|gif|ico|jfif|jpe?g|png|svg|webp)([?#].*)?$/i.test(swatch.trim());
/** What is wrong with a fabric's swatch, if anything is. */
const swatchTrouble = (letter, written, isColour) => {
    const swatch = written.trim();
    return !swatch || isColour(written) || isPicture(written) ? [] : [say('noSwatch', { letter, swatch })];
};

export { isPicture, swatchTrouble };
