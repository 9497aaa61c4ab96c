import type { CommonSayings } from '../ledger/sayings.js';
import type { SheetName } from '../trade/cloths.js';
import type { Hint, Vocabulary } from './teller.js';
import type { Sentences } from './vocabulary.js';
/** Inputs and rows that several calculators have, with the same name in most of them. */
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
        /** What cloth of a fixed size is called, with the size that it is sold as. Empty: cloth by length. */
        sheet: Record<SheetName | '', Hint>;
    };
    sentences: Sentences<CommonSayings>;
}
/** The words that a calculator has itself. */
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
/** Puts a calculator's own words over the shared ones. In a page the words of the face are added. */
export declare const vocabularyOf: (common: CommonWords, own: OwnWords, face?: object) => Vocabulary;
