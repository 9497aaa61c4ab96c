import { type Message } from '../measure/message.js';
import type { ListCell, Listing } from './listing.js';
import type { CutStrip } from './strips.js';
export interface StripSayings {
    stripsFromTop: undefined;
    stripsHead: undefined;
    stripWidthHead: undefined;
    givesHead: undefined;
    gives: Pick<CutStrip, 'gives' | 'asDrawn'>;
    /** The same with the size of each piece, for pieces of several lists, whose names may be the same. */
    givesSizes: Pick<CutStrip, 'gives' | 'asDrawn'>;
}
/** The strips to cut for each fabric or part, and what comes from each. Equal strips share a row. One that is all of its cloth is not cut as a strip. */
export declare const stripList: (plans: {
    of: ListCell;
    strips: CutStrip[];
}[], head: Message, caption?: Message, gives?: "gives" | "givesSizes") => Listing;
