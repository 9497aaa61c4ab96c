import { type TemplateResult } from 'lit';
/**
 * Prints one sheet alone: a copy of it, or what stands for it on paper, in a frame of its own, so that the page around it
 * stays off the paper.
 */
export declare const printAlone: (sheet: ShadowRoot, title: string, paper?: TemplateResult) => void;
