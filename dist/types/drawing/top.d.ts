import type { Style } from '../measure/format.js';
import type { TopResult } from '../reckon/top.js';
import { type Picture } from './picture.js';
/** The top to scale, block by block, with its sashing or its setting triangles. */
export declare const drawTop: (result: TopResult, style: Style) => Picture;
