import { type TemplateResult } from 'lit';
import type { Take } from '../../sheet/calculator.js';
import type { QuiltSheet } from '../../sheet/sheet.js';
/** What a part takes from which fabric; nothing while it has something to mend. */
export declare const takesOf: ({ result, calculator, fabric }: QuiltSheet) => (Take & {
    title: string;
    washed: string;
})[];
/** What a printed worksheet shows of a part: its cut list and its drawings. */
export declare const paperOf: ({ result, calculator, fabric, lengthStyle }: QuiltSheet) => TemplateResult | undefined;
