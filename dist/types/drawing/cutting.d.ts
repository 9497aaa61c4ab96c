import { type Style } from '../measure/format.js';
import type { CuttingResult } from '../reckon/cutting.js';
import { type Picture } from './picture.js';
/** Each fabric's cloth to scale with its pieces; of sheets cut alike, one with their number. */
export declare const drawCutting: (result: Pick<CuttingResult, "fabrics">, style: Style) => Picture[];
