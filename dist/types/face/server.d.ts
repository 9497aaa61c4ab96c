import { type ReactiveElement } from 'lit';
import type { Table } from './table.js';
/**
 * Whether only attributes count. They do on a server, which sees neither the content of an element nor the page around it. They do
 * in the first render in the browser too, which has to find the same as the server.
 */
export declare const isAsServed: (element: object) => boolean;
/**
 * Takes over what a server wrote. Lit can do that if `@lit-labs/ssr-client` is loaded. Without it, Lit would write everything a second
 * time, so we remove the server's nodes first. We remove them too if the values do not come from attributes: in a worksheet, which
 * may give a part its size at any time, and for pieces in a table.
 * @returns whether the server's nodes stay, until {@link isTakenOver}.
 */
export declare const takeOver: (element: ReactiveElement) => boolean;
export declare const isTakenOver: (element: object) => void;
/**
 * Whether an element is a worksheet or in one, and the server does not know its sizes yet. On a server an element can ask its
 * surroundings only by an event. {@link answerOnServer} answers it.
 */
export declare const isUnknown: (element: Element) => boolean;
/** The parts and fabrics in a worksheet, as far as the server has seen them. */
export declare const insideOnServer: (worksheet: Element) => Element[];
/**
 * Lets a worksheet on a server answer its parts. In the second pass they get the results of the first.
 * @param know gives the worksheet what the same one of the first pass knows, and lets it reckon.
 */
export declare const answerOnServer: <W extends Element>(worksheet: W, know: (first: W) => void) => void;
/** The table of the element that is being made, as far as the server knows it. */
export declare const tableOnServer: () => Table | undefined;
/**
 * Writes a page several times on a server. Each pass knows more: first nothing, then the tables, then the worksheets.
 * @param tablesIn finds the tables in the HTML.
 */
export declare const writeAgain: (write: () => string, tablesIn: (html: string) => (Table | undefined)[]) => string;
