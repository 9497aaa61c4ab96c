import { type Table } from '../../face/table.js';
/** The table of each cutting plan and each block that a server wrote, in that order. */
export declare const tablesWritten: (html: string) => (Table | undefined)[];
