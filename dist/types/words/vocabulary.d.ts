import type { Fields } from '../ledger/field.js';
import type { Hint, Teller } from './teller.js';
/** A sentence for each code of a set: a text, or a function of the code's values. */
export type Sentences<S> = {
    [Code in keyof S]: string | ((values: S[Code], t: Teller) => string);
};
/** The inputs that are a choice. */
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
 * Every word of one calculator in one language. Shared words are in `CommonWords`; a calculator may replace them here. If a word is
 * missing, it does not compile.
 */
export interface CalculatorWords<F extends Fields, Rows extends string, S, CommonLabel extends string = never> {
    /** The head of the rows, and the name of its files: `Backing`. */
    title: string;
    /** The name of each input and each reckoned row. */
    labels: Record<Exclude<(keyof F & string) | Rows, CommonLabel>, string> & Partial<Record<CommonLabel, string>>;
    /** A few words beside an input. */
    hints: Partial<Record<keyof F & string, Hint>>;
    /** The same for an input that the page has locked, if the words differ. */
    lockedHints?: Partial<Record<keyof F & string, string>>;
    /** The choices. */
    options: Pick<Choices<F>, Exclude<ChoiceKey<F>, CommonLabel>>;
    /** The name of an entry of a list: `Border 2`. */
    entries: Record<ListKey<F>, (number: number) => string>;
    /** The same in short, for the button that takes it away: `border 2`. */
    entryNames?: Record<ListKey<F>, (number: number) => string>;
    sentences: Sentences<S>;
}
export {};
