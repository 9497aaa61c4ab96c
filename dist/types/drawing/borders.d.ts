import { type Style } from '../measure/format.js';
import type { BordersResult } from '../reckon/borders.js';
import { type Picture } from './picture.js';
/** The borders round the top, from the inside out, each piece with the length it is cut to. */
export declare const drawBorders: (result: BordersResult, style: Style) => Picture;
