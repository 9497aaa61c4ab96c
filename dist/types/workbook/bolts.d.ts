import type { Message } from '../measure/message.js';
import type { BoughtLengths } from './lengths.js';
import type { Group } from './parts.js';
import type { WorksheetLedger } from './shape.js';
/** How many bolts the kits take, with the row. If a bolt is shorter than the length for one kit: undefined, with a note. */
export declare const boltsFor: (ledger: WorksheetLedger, kits: number, { key, parts }: Group, cloth: Message, { buy, lengths }: BoughtLengths) => number | undefined;
