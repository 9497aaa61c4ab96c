import type { PartInput } from '../../reckon/worksheet.js';
import type { Take } from '../../sheet/calculator.js';
import type { QuiltSheet } from '../../sheet/sheet.js';
/** What a part takes from the fabrics of these letters; nothing while it has something to mend. */
export declare const takesOf: (part: QuiltSheet, letters: string[]) => (Take & PartInput)[];
