import type { Fields } from '../ledger/field.js';
import type { Hint, Teller } from './teller.js';
/** A sentence for each code of a set: as it stands, or made from the code's values. */
export type Sentences<S> = {
    [Code in keyof S]: string | ((values: S[Code], t: Teller) => string);
};
/** The inputs of which one of several is chosen. */
type Choices<F extends Fields> = {
    [K in keyof F]: F[K] extends {
        options: readonly (infer O extends string)[];
    } ? Record<O, string> : never;
};
type ChoiceKey<F extends Fields> = {
    [K in keyof F]: F[K] extends {
        options: readonly string[];
    } ? K : never;
}[keyof F];
/** The inputs with a cell for each entry of a list. */
type ListKey<F extends Fields> = {
    [K in keyof F]: F[K] extends {
        each: true;
    } ? K : never;
}[keyof F];
/**
 * Every word of one calculator in one language. What all calculators share has its words in `CommonWords`, and may be called
 * something else here. A word that is missing does not compile.
 */
export interface CalculatorWords<F extends Fields, Rows extends string, S, CommonLabel extends string = never> {
    /** Heads the rows, and names its files: `Backing`. */
    title: string;
    /** What each input and each reckoned row is called. */
    labels: Record<Exclude<(keyof F & string) | Rows, CommonLabel>, string> & Partial<Record<CommonLabel, string>>;
    /** A few words beside an input, where nothing was reckoned. */
    hints: Partial<Record<keyof F & string, Hint>>;
    /** The same for one that the page holds fast, where that differs. */
    lockedHints?: Partial<Record<keyof F & string, string>>;
    /** What can be chosen. */
    options: Pick<Choices<F>, Exclude<ChoiceKey<F>, CommonLabel>>;
    /** What an entry of a list is called: `Border 2, width`. */
    entries: Record<ListKey<F>, (number: number) => string>;
    /** The same in short, to be taken away: `border 2`. */
    entryNames?: Record<ListKey<F>, (number: number) => string>;
    sentences: Sentences<S>;
}
export {};
