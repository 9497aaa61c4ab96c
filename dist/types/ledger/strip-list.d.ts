import { type Message } from '../measure/message.js';
import type { ListCell, Listing } from './listing.js';
import type { CutStrip } from './strips.js';
export interface StripSayings {
    stripsFromTop: undefined;
    stripsHead: undefined;
    stripWidthHead: undefined;
    givesHead: undefined;
    gives: Pick<CutStrip, 'gives'>;
}
/** The strips to cut of each fabric or for each part, those cut alike in one row, and what comes from each. */
export declare const stripList: (plans: {
    of: ListCell;
    strips: CutStrip[];
}[], head: Message, caption?: Message) => Listing;
