import { type TemplateResult } from 'lit';
/**
 * Prints one element alone. It puts a copy, or the paper version, into a frame of its own, so that the rest of the page is not
 * printed.
 */
export declare const printAlone: (sheet: ShadowRoot, title: string, paper?: TemplateResult) => void;
