import type { Bed } from '../trade/beds.js';
/** The beds that have no name but their size, as every language writes it. */
export declare const METRIC_BEDS: Record<Extract<Bed, `${number}x${number}`>, string>;
