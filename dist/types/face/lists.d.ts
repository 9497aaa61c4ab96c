import { type TemplateResult } from 'lit';
import type { Answer } from '../ledger/answer.js';
import type { Listing } from '../ledger/listing.js';
import type { Picture } from '../ledger/picture.js';
import type { Teller } from '../words/teller.js';
/** On a narrow page a long word breaks where it is joined, and widens no list. */
export declare const parted: (text: string) => string;
/** A ruled table with its caption. */
export declare const listing: ({ caption, head, rows }: Listing, t: Teller) => TemplateResult;
/** What to cut, where anything is. */
export declare const cutList: ({ cuts }: Answer, t: Teller) => unknown;
export declare const figures: (pictures: Picture[], t: Teller) => TemplateResult[];
