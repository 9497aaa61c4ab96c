import type { Calculator } from '../calculators/calculator.js';
import type { Answer } from '../ledger/answer.js';
import type { Reckoning } from '../ledger/ledger.js';
import type { Cut } from '../ledger/purchase.js';
import type { Message } from '../measure/message.js';
import type { Fabrics } from './fabrics.js';
import type { WorkbookInput } from './input.js';
/** A calculator on a worksheet, and what it has reckoned. */
export interface PartOnPage {
    calculator: Calculator;
    reckoning: Reckoning<Answer>;
    /** The letters of its fabrics, as they are written on it. */
    fabric?: unknown;
}
/** One line of the cut list of all parts. */
export interface PieceOfPart {
    /** The letter of its fabric, or empty if the part names none. */
    letter: string;
    /** The name of the fabric. If it has no letter: what it is for. */
    name: string | Message;
    title: Message;
    cut: Cut;
}
/** What all parts take from which fabric, what they buy by the piece, and every piece to cut. */
export declare const gather: (parts: PartOnPage[], fabrics: Fabrics, isColour: (swatch: string) => boolean) => {
    gathered: WorkbookInput;
    pieces: PieceOfPart[];
};
