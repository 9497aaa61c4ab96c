import type { Language } from '../language.js';
/**
 * English as British quilters speak it, where that differs: wadding, metres before yards, pounds.
 * The words are from memory and have no source.
 */
export declare const enGB: Language;
