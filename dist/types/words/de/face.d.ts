import type { FaceSayings } from '../face-sayings.js';
import type { Sentences } from '../vocabulary.js';
/** The face's words in German. */
export declare const face: Sentences<FaceSayings>;
