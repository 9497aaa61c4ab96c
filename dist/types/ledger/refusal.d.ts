import type { Message } from '../measure/message.js';
/** What keeps something from being reckoned: which input it is about, what is wrong, and the values of the sentence. */
export interface Issue extends Pick<Message, 'code' | 'values'> {
    /** The input's key, or the id of a row that was typed over. */
    input: string;
}
/** A value that a person could not have meant, on its way to the ledger. Nothing else is thrown on purpose. */
export declare class Refusal extends Error {
    readonly problem: Message;
    /** The input at fault, where it is known. */
    readonly input: string;
    constructor(problem: Message, 
    /** The input at fault, where it is known. */
    input?: string);
}
/** Throws a {@link Refusal}; which input it is about may be said further up. */
export declare const refuse: (problem: Message, input?: string) => never;
/** Does this; what is refused in it goes to `otherwise`, and anything else that is thrown flies on. */
export declare const unlessRefused: <T, U>(work: () => T, otherwise: (refusal: Refusal) => U) => T | U;
