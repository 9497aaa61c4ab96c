import type { CommonSayings } from '../ledger/sayings.js';
import type { Hint, Vocabulary } from './teller.js';
import type { Sentences } from './vocabulary.js';
/** Inputs and rows that several calculators have, and that are called the same in most of them. */
export type CommonLabel = 'width' | 'length' | 'overage' | 'fabricWidth' | 'washedWidth' | 'join' | 'mark' | 'shrinkage' | 'increment' | 'price' | 'currency' | 'fabric' | 'buy' | 'spare' | 'cost';
/** The words that all calculators share, in one language. */
export interface CommonWords {
    /** BCP 47: `en`, `de`. */
    lang: string;
    labels: Record<CommonLabel, string>;
    hints: Partial<Record<CommonLabel, Hint>>;
    lockedHints: Partial<Record<CommonLabel, string>>;
    options: {
        join: Record<'diagonal' | 'straight', string>;
        /** The steps that are no length say what they are. */
        increment: Record<'thirds', string>;
    };
    sentences: Sentences<CommonSayings>;
}
/** What a calculator's own words have of all these. */
export interface OwnWords {
    title: string;
    labels: Record<string, string>;
    hints: object;
    lockedHints?: object;
    options: object;
    entries: object;
    entryNames?: object;
    sentences: object;
}
/** A calculator's own words over those that all share; in a page, with the face's. */
export declare const together: (common: CommonWords, own: OwnWords, face?: object) => Vocabulary;
