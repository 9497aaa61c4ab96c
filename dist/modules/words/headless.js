import { vocabularyOf } from './common.js';
import { common } from './en/common.js';
import { wordsIn } from './languages.js';
import { Teller } from './teller.js';
import { told } from './told.js';

/** Makes the teller that puts a result into words, in its language. */
const tellerOf = (name, words) => {
    const english = vocabularyOf(common, words);
    return ({ lang, style }) => new Teller(wordsIn(lang, name, english), style, lang);
};
/** A calculator as a function from plain input to a plain result. */
const headless = (calculator, words) => {
    const { name, fields } = calculator;
    const teller = tellerOf(name, words);
    return (input = null, ...more) => {
        // `list.map(reckonBlock)` gives a number where a planner may be.
        const reckoning = calculator.reckon(input, ...more.filter((one) => typeof one === 'function'));
        return told(reckoning, fields, teller(reckoning));
    };
};

export { headless, tellerOf };
