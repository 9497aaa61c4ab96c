import type { Style } from '../measure/format.js';
import type { BackingResult } from '../reckon/backing.js';
import { type Picture } from './picture.js';
/** The back from behind: its panels and seams, and the quilt within its overage. */
export declare const drawBacking: (result: BackingResult, style: Style) => Picture;
