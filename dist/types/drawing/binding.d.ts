import { type Style } from '../measure/format.js';
import type { BindingResult } from '../reckon/binding.js';
import { type Picture } from './picture.js';
/** Strips across the cloth with their joins, or a square for bias. */
export declare const drawBinding: (result: BindingResult, style: Style) => Picture;
