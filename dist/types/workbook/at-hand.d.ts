import { type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import type { Message } from '../measure/message.js';
import type { SheetKind } from '../trade/cloths.js';
/** Equal pieces of a reader's own cloth, as they are before a wash. */
export interface AtHand {
    kind: SheetKind | 'length';
    width: Exact;
    length: Exact;
    count: number;
}
/**
 * Reads what a reader has at hand of a fabric: `9 fat quarters`, `1 1/2 yd`, `9 x 40 in`, or several of these. What cannot be read
 * counts as nothing, and is said.
 */
export declare const readAtHand: (written: string, width: Exact, style: Style) => {
    pieces: AtHand[];
    problems: Message[];
};
/** How a piece lies to be cut: its long side across, unless the print has one way up, or it is a length of cloth. */
export declare const lyingFor: ({ kind, width, length }: AtHand, oneWay: boolean) => {
    width: Exact;
    height: Exact;
};
