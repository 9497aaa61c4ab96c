import type { Message } from '../measure/message.js';
import type { BoughtLengths } from './lengths.js';
import type { Group } from './parts.js';
import type { WorksheetLedger } from './shape.js';
/** How many bolts so many kits take, with its row; undefined, with a note, where a bolt is shorter than a kit's length. */
export declare const boltsFor: (ledger: WorksheetLedger, kits: number, { key, parts }: Group, cloth: Message, { buy, lengths }: BoughtLengths) => number | undefined;
