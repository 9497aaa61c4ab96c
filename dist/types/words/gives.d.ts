import type { StripSayings } from '../ledger/strip-list.js';
import type { Teller } from './teller.js';
type Gives = StripSayings['gives'];
/** What a strip gives. `lead` comes first if only the drawing says how it is cut. */
export declare const piecesGiven: ({ gives, asDrawn }: Gives, t: Teller, lead: string) => string;
/** The same with the size of each piece. What has one name and one size is counted together. */
export declare const sizesGiven: ({ gives, asDrawn }: Gives, t: Teller, lead: string) => string;
export {};
