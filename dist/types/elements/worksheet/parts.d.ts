import type { Answer } from '../../ledger/answer.js';
import type { Reckoning } from '../../ledger/ledger.js';
import type { Face } from '../../face/face.js';
import { type Flow, type FlowingPart } from '../../workbook/flow.js';
import type { PartOnPage } from '../../workbook/gather.js';
import type { ListFace } from '../../face/list-face.js';
/** A list of what to cut for the blocks. */
export declare const isCutList: (part: Face) => part is ListFace;
/** A part that sizes flow through. */
interface PartInPage extends FlowingPart {
    part: Face;
}
export declare const flowingPart: (part: Face) => PartInPage;
/** Gives a part what flows to it, and returns its new result. */
export declare const giveTo: ({ part }: PartInPage, flow: Flow) => Reckoning<Answer>;
/** A part, and its result. */
export declare const partOnPage: ({ calculator, outcome, fabric }: Face) => PartOnPage;
export {};
