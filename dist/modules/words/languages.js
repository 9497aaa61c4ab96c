import { vocabularyOf } from './common.js';

/** The languages besides English that this page knows, by their tags. */
const learned = new Map();
const vocabularies = new Map();
/** Adds a language. From now on, results and elements can speak it. */
const learn = (language) => {
    learned.set(language.common.lang.toLowerCase(), language);
    vocabularies.clear();
};
/** A language tag and the more general ones: `de-AT`, `de`. */
const tagsOf = (lang) => {
    const parts = lang.toLowerCase().split('-');
    return parts.map((_, at) => parts.slice(0, parts.length - at).join('-'));
};
/** A calculator's words in this language, or in English if we do not have it. */
const wordsIn = (lang, name, english) => {
    if (!learned.size)
        return english;
    const tag = tagsOf(lang).find((tag) => learned.has(tag));
    const language = tag === undefined ? undefined : learned.get(tag);
    if (!language)
        return english;
    const key = `${tag} ${name}`;
    let words = vocabularies.get(key);
    if (!words) {
        const { common, calculators, face, spreadsheet } = language;
        vocabularies.set(key, (words = vocabularyOf(common, calculators[name], { ...face, ...spreadsheet })));
    }
    return words;
};

export { learn, tagsOf, wordsIn };
