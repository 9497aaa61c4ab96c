import type { CalculatorName } from '../calculators/calculator.js';
import type { Fields } from '../ledger/field.js';
import type { Input, Reckoning } from '../ledger/ledger.js';
import { vocabularyOf, type OwnWords } from './common.js';
import { common } from './en/common.js';
import { wordsIn } from './languages.js';
import { Teller } from './teller.js';
import { told, type Refused, type Result } from './told.js';

/** Makes the teller that puts a result into words, in its language. */
export const tellerOf = (name: CalculatorName, words: OwnWords) => {
  const english = vocabularyOf(common, words);
  return ({ lang, style }: Pick<Reckoning, 'lang' | 'style'>): Teller =>
    new Teller(wordsIn(lang, name, english), style, lang);
};

/** A calculator as a function from plain input to a plain result. */
export const headless = <I extends Input, A extends object, More extends unknown[]>(
  calculator: {
    name: CalculatorName;
    fields: Fields;
    reckon(input: I | null, ...more: More): Reckoning<A>;
  },
  words: OwnWords,
): ((input?: I | null, ...more: More) => Result<A> | Refused) => {
  const { name, fields } = calculator;
  const teller = tellerOf(name, words);
  return (input = null, ...more) => {
    // `list.map(reckonBlock)` gives a number where a planner may be.
    const reckoning = calculator.reckon(input, ...(more.filter((one) => typeof one === 'function') as More));
    return told(reckoning, fields, teller(reckoning));
  };
};
