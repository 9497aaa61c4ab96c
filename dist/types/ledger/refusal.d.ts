import type { Message } from '../measure/message.js';
/** Why there is no result: which input causes it, and a message that says what is wrong. */
export interface Issue extends Pick<Message, 'code' | 'values'> {
    /** The key of the input, or the id of a row that the reader typed over. */
    input: string;
}
/** Carries a value that nobody can have meant to the ledger. Nothing else is thrown on purpose. */
export declare class Refusal extends Error {
    readonly problem: Message;
    /** The input that causes it, if we know it. */
    readonly input: string;
    constructor(problem: Message, 
    /** The input that causes it, if we know it. */
    input?: string);
}
/** Throws a {@link Refusal}. A caller may say which input it is about. */
export declare const refuse: (problem: Message, input?: string) => never;
/** Runs this. A refusal goes to `otherwise`. Any other error is thrown on. */
export declare const unlessRefused: <T, U>(work: () => T, otherwise: (refusal: Refusal) => U) => T | U;
