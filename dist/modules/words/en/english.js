import { vocabularyOf } from '../common.js';
import { common } from './common.js';
import { face } from './face.js';

const made = new WeakMap();
/** A calculator's words in English, with the face's. */
const inEnglish = (words) => {
    let vocabulary = made.get(words);
    if (!vocabulary)
        made.set(words, (vocabulary = vocabularyOf(common, words, face)));
    return vocabulary;
};

export { inEnglish };
