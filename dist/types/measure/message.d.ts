import { Branded } from './brand.js';
/**
 * Something to say, as a code and the values it is about. The sentence is made in `words/`, in the reader's language, and no
 * code reads one back.
 */
export declare class Message<Code extends string = string> extends Branded {
    readonly code: Code;
    readonly values: object;
    get brand(): 'message';
    constructor(code: Code, values: object);
}
export declare const isMessage: (value: unknown) => value is Message;
/** A set of codes, each with the values that its sentence needs; `undefined` where it needs none. */
export type Sayings = object;
/**
 * Makes the messages of one set. A code that is not in the set, or a value that its sentence lacks, does not compile:
 * `const say = sayings<BackingSayings>(); say('seamsLeaveNothing', { seam, cloth })`.
 */
export declare const sayings: <S extends Sayings>() => <Code extends keyof S & string>(code: Code, ...[values]: S[Code] extends undefined ? [] : [values: S[Code]]) => Message<Code>;
