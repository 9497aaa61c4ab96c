/** What only a spreadsheet file says. It is loaded with the code that writes the file. */
export interface SpreadsheetSayings {
    unitColumnHead: undefined;
    onPageHead: undefined;
    /** A row holds a list: which entry of it this is. */
    numberedRow: {
        label: string;
        number: number;
    };
    cutCountHead: undefined;
    cutWidthHead: undefined;
    cutLengthHead: undefined;
    /** Under the rows: what follows a change, and what does not. */
    formulasFollow: undefined;
    /** About an input that no formula uses. */
    notFollowed: undefined;
    /** Shown in place of the reason, when a number is not enough any more. */
    tooLittleNow: undefined;
    /** Formulas in words. */
    toNextStep: {
        formula: string;
        step: string;
    };
    toCoin: {
        formula: string;
    };
}
export declare const sayInSpreadsheet: <Code extends "unitColumnHead" | "onPageHead" | "numberedRow" | "cutCountHead" | "cutWidthHead" | "cutLengthHead" | "formulasFollow" | "notFollowed" | "tooLittleNow" | "toNextStep" | "toCoin">(code: Code, ...[values]: SpreadsheetSayings[Code] extends undefined ? [] : [values: SpreadsheetSayings[Code]]) => import("../measure/message.js").Message<Code>;
