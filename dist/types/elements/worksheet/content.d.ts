/** The elements in a worksheet as the reader sees them, with slots filled. A worksheet inside it keeps its own. */
export declare const contentOf: (worksheet: Element) => Element[];
/** The elements that slots in a worksheet bring in from elsewhere. */
export declare const passedOn: (worksheet: Element) => Element[];
