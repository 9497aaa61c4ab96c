import { type CutCell, type CutRow } from '../../calculators/cutting/cut-cells.js';
import type { Issue } from '../../ledger/refusal.js';
/** Whether an issue is about this row. */
export declare const isAboutRow: ({ values }: Issue, rows: CutRow[], row: number) => boolean;
/** Whether an issue of the list is about this cell. */
export declare const isAboutCell: (issue: Issue, rows: CutRow[], row: number, cell: CutCell) => boolean;
