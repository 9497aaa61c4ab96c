import { isServer } from 'lit';
import { quoted } from '../../measure/parse.js';

/** A server cannot tell: it takes whatever is written for one. */
const isColour = (swatch) => isServer || CSS.supports('color', swatch);
/**
 * Whether it says where a picture is: it begins like an address or a path, or ends as a picture's file does. A bare word, such
 * as a fabric's name, is no address, and nothing is asked for it.
 */
const isPicture = (swatch) => /^(data:image\/|blob:|https?:\/\/|\.{0,2}\/\S)|\.(avif|bmp|gif|ico|jfif|jpe?g|png|svg|webp)([?#].*)?$/i.test(swatch.trim());
/** What is wrong with a fabric's swatch, if anything is. */
const swatchTrouble = (letter, swatch) => !swatch.trim() || isColour(swatch) || isPicture(swatch)
    ? []
    : [
        `The swatch of fabric ${letter}, ${quoted(swatch.trim())}, is neither a colour nor the address of a picture. Write it like #d9c7a3 or pictures/sand.png.`,
    ];

export { isColour, isPicture, swatchTrouble };
