import { type BindingJob } from './job.js';
import { type BindingAnswer } from './shape.js';
type FatQuarters = BindingAnswer['fatQuarters'];
/** The same binding from fat quarters, with its rows. If a fat quarter is too small, a row says so. */
export declare const fromFatQuarters: (job: BindingJob) => FatQuarters;
export {};
