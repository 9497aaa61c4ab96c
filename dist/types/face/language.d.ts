import { type ReactiveElement } from 'lit';
/** The language that holds where an element stands: its own, or its closest ancestor's, through shadow roots. */
export declare const languageAt: (element: Element) => string;
/** Draws an element anew whenever the language around it changes. */
export declare const followLanguage: (element: ReactiveElement) => void;
/** No more. */
export declare const leaveLanguage: (element: ReactiveElement) => void;
