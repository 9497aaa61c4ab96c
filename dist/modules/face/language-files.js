import { tagsOf, learn } from '../words/languages.js';
import { loadBritish } from './british.js';
import { loadGerman } from './german.js';

/** The languages that have words of their own, by their tags. */
const FILES = {
    de: async () => (await loadGerman()).de,
    'en-gb': async () => (await loadBritish()).enGB,
};
const asked = new Set();
/** Loads the words of this language once, and calls `ready` when they are there. If they do not load, the page stays English. */
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
