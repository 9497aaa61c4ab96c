import type { Size } from '../../ledger/quilt.js';
import type { Package } from './packages.js';
/** A package, and whether it covers what is needed. */
export interface RankedPackage extends Package {
    fits: boolean;
    /** It is large enough only if it is turned. */
    turned: boolean;
}
/** Those that fit come first. Among them the cheapest comes first; those without a price come after, by area. */
export declare const rankPackages: (packages: Package[], need: Size) => RankedPackage[];
