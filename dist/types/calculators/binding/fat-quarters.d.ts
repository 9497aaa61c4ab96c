import { type BindingJob } from './job.js';
import { type BindingAnswer } from './shape.js';
type FatQuarters = BindingAnswer['fatQuarters'];
/** The same binding from fat quarters, with its rows; a row says so where none holds it. */
export declare const fromFatQuarters: (job: BindingJob) => FatQuarters;
export {};
