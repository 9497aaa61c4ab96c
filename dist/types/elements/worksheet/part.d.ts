import type { PartInput } from '../../reckon/worksheet.js';
import type { Take } from '../../sheet/calculator.js';
import type { QuiltSheet } from '../../sheet/sheet.js';
/** The letters of the fabrics that a part is cut from. */
export declare const lettersOf: ({ fabric }: QuiltSheet) => string[];
/** What a part takes from which fabric; nothing while it has something to mend. */
export declare const takesOf: (part: QuiltSheet) => (Take & PartInput)[];
