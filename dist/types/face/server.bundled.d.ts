import type { ReactiveElement } from 'lit';
/**
 * Stands for `server.ts` in the bundles: their templates are shortened, so that they are never those a server wrote, and
 * what a server wrote makes room for the same sheet.
 */
export declare const isAsServed: (_element: object) => boolean;
export declare const takeOver: ({ shadowRoot }: ReactiveElement) => boolean;
export declare const isTakenOver: (_element: object) => void;
export declare const isUnknown: (_element: Element) => boolean;
export declare const insideOnServer: (_worksheet: Element) => Element[];
export declare const answerOnServer: (_worksheet: Element, _know: unknown) => void;
export declare const tableOnServer: () => undefined;
