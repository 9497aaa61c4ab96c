/** The language that holds where an element stands: its own, or its closest ancestor's, through shadow roots. */
export declare const languageAt: (element: Element) => string;
