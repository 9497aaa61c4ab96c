import { type Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { type Cloth, type ClothLedger } from './cloth.js';
/** The cloth of one fabric: its usable width after the wash, and the usable width as sold. */
export interface OwnCloth {
    width: Exact;
    sold: Exact;
}
/** The cloth of a fabric with a width of its own, or else of the width in the ledger. `of` is what an error is about. */
export declare const ownCloth: (ledger: ClothLedger, { width, kept }: {
    width: Exact;
    kept: Exact;
}, own: unknown, of: (problem: Message) => Message) => OwnCloth;
/** The cloth of each part in order, from `fabricWidths`. The last one counts for all further parts. */
export declare const ownCloths: (ledger: ClothLedger, { width, kept }: Cloth) => ((at: number) => OwnCloth);
