import { type ReactiveElement } from 'lit';
/** The language of an element: its own, or that of its closest ancestor, through shadow roots. */
export declare const languageAt: (element: Element) => string;
/** Draws an element again when the language around it changes. */
export declare const followLanguage: (element: ReactiveElement) => void;
/** Stops that. */
export declare const leaveLanguage: (element: ReactiveElement) => void;
