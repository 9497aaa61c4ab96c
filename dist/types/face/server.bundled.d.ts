import type { ReactiveElement } from 'lit';
/**
 * Takes the place of `server.ts` in the bundles. Their templates are shortened, so they never match what a server wrote. The element
 * then removes the server's nodes and writes itself again.
 */
export declare const isAsServed: (_element: object) => boolean;
export declare const takeOver: ({ shadowRoot }: ReactiveElement) => boolean;
export declare const isTakenOver: (_element: object) => void;
export declare const isUnknown: (_element: Element) => boolean;
export declare const insideOnServer: (_worksheet: Element) => Element[];
export declare const answerOnServer: (_worksheet: Element, _know: unknown) => void;
export declare const tableOnServer: () => undefined;
