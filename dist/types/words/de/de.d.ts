import type { Language } from '../language.js';
/** Every word in German. The trade's words, such as Zwischenstreifen and Ecksteine, are from memory and have no source. */
export declare const de: Language;
