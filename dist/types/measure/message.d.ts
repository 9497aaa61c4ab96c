import { Branded } from './brand.js';
/**
 * Something to say: a code, and the values that its sentence needs. `words/` makes the sentence, in the reader's language. No
 * code reads a sentence back.
 */
export declare class Message<Code extends string = string> extends Branded {
    readonly code: Code;
    readonly values: object;
    get brand(): 'message';
    constructor(code: Code, values: object);
}
export declare const isMessage: (value: unknown) => value is Message;
/** A set of codes, each with the values that its sentence needs, or `undefined` if it needs none. */
export type Sayings = object;
/**
 * Makes the messages of one set. If the code is not in the set, or a value is missing, it does not compile:
 * `const say = sayings<BackingSayings>(); say('seamsLeaveNothing', { seam, cloth })`.
 */
export declare const sayings: <S extends Sayings>() => <Code extends keyof S & string>(code: Code, ...[values]: S[Code] extends undefined ? [] : [values: S[Code]]) => Message<Code>;
