import { type ReactiveElement } from 'lit';
/**
 * Whether only attributes count as yet: on a server, which knows neither what stands inside an element nor what stands around
 * it, and in the first render over its writing, which has to find the same.
 */
export declare const isAsServed: (element: object) => boolean;
/**
 * Takes over what a server wrote. Lit does it if `@lit-labs/ssr-client` taught it so; by itself it would write a second time,
 * so what stands there makes room. So it does where what is written came from elsewhere than the attributes: in a worksheet,
 * where a part may be told its size at any time, and where a cut list may stand in a table.
 * @returns whether it stays, until {@link isTakenOver}.
 */
export declare const takeOver: (element: ReactiveElement) => boolean;
export declare const isTakenOver: (element: object) => void;
/**
 * Whether an element is in a worksheet, or is one, whose sizes a server does not know. It can ask what stands around it by an
 * event only; {@link answerOnServer} answers.
 */
export declare const isUnknown: (element: Element) => boolean;
/** The parts and fabrics in a worksheet, as far as a server heard of them. */
export declare const insideOnServer: (worksheet: Element) => Element[];
/**
 * Lets a worksheet on a server answer those inside it. In a second writing they are given what the first came to.
 * @param know lets the worksheet take on what the same one of the first writing knows, which is reckoned then.
 */
export declare const answerOnServer: <W extends Element>(worksheet: W, know: (first: W) => void) => void;
/** A cut list that stands in a table. */
export type Table = string[][];
/** What stands in the table of the cutting plan that is being made, as far as a server knows. */
export declare const tableOnServer: () => Table | undefined;
/**
 * Writes a page again and again on a server, each time knowing more: first nothing, then what stands in tables, then what
 * stands in worksheets.
 * @param tablesIn finds the tables in the HTML.
 */
export declare const writeAgain: (write: () => string, tablesIn: (html: string) => (Table | undefined)[]) => string;
