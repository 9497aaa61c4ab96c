import { type BindingJob, type Cutting } from './job.js';
/** Squares for continuous bias: one, or the fewest equal ones that fit across the cloth. */
export declare const cutBias: (job: BindingJob) => Cutting;
