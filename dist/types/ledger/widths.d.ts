import { type Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { type Cloth, type ClothLedger } from './cloth.js';
/** The cloth of one fabric: its usable width, once washed, and the same as sold. */
export interface OwnCloth {
    width: Exact;
    sold: Exact;
}
/** The cloth of a fabric that says its own width; any other is as wide as the ledger says. `of` it a wrong width is said. */
export declare const ownCloth: (ledger: ClothLedger, { width, kept }: {
    width: Exact;
    kept: Exact;
}, own: unknown, of: (problem: Message) => Message) => OwnCloth;
/** The cloth of each part in turn, as `fabricWidths` has them; the last is that of all further parts. */
export declare const ownCloths: (ledger: ClothLedger, { width, kept }: Cloth) => ((at: number) => OwnCloth);
