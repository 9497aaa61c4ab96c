import type { Calculator } from '../calculators/calculator.js';
import type { Answer } from '../ledger/answer.js';
import type { Reckoning } from '../ledger/ledger.js';
import { Cut } from '../ledger/purchase.js';
import type { Message } from '../measure/message.js';
import type { WorkbookItem, WorkbookPart } from './input.js';
/** What a part takes from one fabric. */
export interface PartTake {
    /** The fabric's letter; empty where the part names none. */
    fabric: string;
    title: Message;
    /** All that is cut from it. */
    cuts: Cut[];
    /** The cloth, or undefined if it takes none. */
    part?: WorkbookPart | undefined;
    /** Something bought by the piece, in place of cloth. */
    item?: WorkbookItem | undefined;
}
/** What a calculator takes from the fabrics of these letters. Nothing while it has an error. */
export declare const takesOf: <A extends Answer>(calculator: Calculator<A>, { own, price, cost }: Reckoning<A>, letters: string[]) => PartTake[];
