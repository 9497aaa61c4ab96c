import { tagsOf, learn } from '../words/languages.js';
import { loadBritish } from './british.js';
import { loadGerman } from './german.js';

/** The languages that have words of their own, by their tags. */
const FILES = {
    de: async () => (await loadGerman()).de,
    'en-gb': async () => (await loadBritish()).enGB,
};
const asked = new Set();
/** Asks once for the words of this language, and says when they have come. A page whose words do not come stays English. */
const askFor = (lang, ready) => {
    const tag = tagsOf(lang).find((tag) => Object.hasOwn(FILES, tag));
    if (!tag || asked.has(tag))
        return;
    asked.add(tag);
    const forget = () => void asked.delete(tag);
    FILES[tag]?.()
        .then((language) => {
        learn(language);
        ready();
    })
        .catch(forget);
};

export { askFor };
