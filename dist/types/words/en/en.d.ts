import type { Language } from '../language.js';
/** Every word in English. An element takes its own part of these; a kind of English starts from all of them. */
export declare const en: Language;
