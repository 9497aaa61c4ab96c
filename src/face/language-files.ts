import type { Language } from '../words/language.js';
import { learn, tagsOf } from '../words/languages.js';
import { loadBritish } from './british.js';
import { loadGerman } from './german.js';

/** The languages that have words of their own, by their tags. */
const FILES: Record<string, () => Promise<Language>> = {
  de: async () => (await loadGerman()).de,
  'en-gb': async () => (await loadBritish()).enGB,
};

const asked = new Set<string>();

/** Loads the words of this language once, and calls `ready` when they are there. If they do not load, the page stays English. */
export const askFor = (lang: string, ready: () => void): void => {
  const tag = tagsOf(lang).find((tag) => Object.hasOwn(FILES, tag));
  if (!tag || asked.has(tag)) return;
  asked.add(tag);
  const forget = (): void => void asked.delete(tag);
  FILES[tag]?.()
    .then((language) => {
      learn(language);
      ready();
    })
    .catch(forget);
};
