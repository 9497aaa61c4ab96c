import type { Size } from '../../ledger/quilt.js';
import type { Package } from './packages.js';
/** A package, and whether it covers what is needed. */
export interface RankedPackage extends Package {
    fits: boolean;
    /** It covers it only turned. */
    turned: boolean;
}
/** Those that fit first; then those with the least price, and after them those without one by area. */
export declare const rankPackages: (packages: Package[], need: Size) => RankedPackage[];
