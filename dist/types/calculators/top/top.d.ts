import type { Calculator } from '../calculator.js';
import { type Blocks, type TopAnswer, type TopInput } from './shape.js';
/** A quilt top from its blocks. */
export declare const top: Calculator<TopAnswer>;
/** How many blocks a top has and how large they are, without planning its cloth. Undefined if something is wrong. */
export declare const blocksOf: (input: TopInput) => Blocks | undefined;
