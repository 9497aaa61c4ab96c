import { type ReactiveElement } from 'lit';
/**
 * Whether only attributes count as yet: on a server, which knows neither what stands inside an element nor what stands around
 * it, and in the first render over its writing, which has to find the same.
 */
export declare const isAsServed: (element: object) => boolean;
/**
 * Takes over what a server wrote. Lit does it if `@lit-labs/ssr-client` taught it so; by itself it would write a second time,
 * so what stands there makes room.
 * @returns whether it stays, until {@link isTakenOver}.
 */
export declare const takeOver: (element: ReactiveElement) => void;
export declare const isTakenOver: (element: object) => void;
/** Whether sizes may flow to an element from a worksheet, which it may itself be. */
export declare const isInWorksheet: (element: Element) => boolean;
/** Lets a worksheet on a server answer {@link isInWorksheet}. */
export declare const answerOnServer: (worksheet: Element) => void;
