import type { Message } from '../measure/message.js';
import type { BoughtLengths } from './lengths.js';
import type { Group } from './parts.js';
import type { WorksheetLedger } from './shape.js';
/** How many bolts the kits take, with the row. If a bolt is shorter than the length for one kit: undefined, with a note. */
export declare const boltsFor: (ledger: WorksheetLedger, kits: number, { key, parts }: Group, cloth: Message, { buy, lengths }: BoughtLengths) => number | undefined;
/** How many bolts the kits take if the shop cuts its fat quarters itself, as a row. A bolt that is too short for two has no row. */
export declare const noteBoltsForQuarters: (ledger: WorksheetLedger, { kits, ofKit }: {
    kits: number;
    ofKit: number;
}, key: string, cloth: Message) => void;
