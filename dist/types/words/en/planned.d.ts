import type { PlannedSayings } from '../../calculators/cutting/plan-shape.js';
import type { Sentences } from '../vocabulary.js';
/** What is said of a list that is planned, in English. */
export declare const planned: Sentences<PlannedSayings>;
