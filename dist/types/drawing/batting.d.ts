import { type Style } from '../measure/format.js';
import type { BattingResult } from '../reckon/batting.js';
import { type Picture } from './picture.js';
/** The batting needed on what is bought, with what is left over. */
export declare const drawBatting: (result: BattingResult, style: Style) => Picture;
