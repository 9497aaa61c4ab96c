import { type BindingJob, type Cutting } from './job.js';
/** Strips across the cloth, joined end to end. */
export declare const cutStraight: (job: BindingJob) => Cutting;
