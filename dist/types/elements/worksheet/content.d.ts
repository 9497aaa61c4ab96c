/** The elements in a worksheet as the reader sees them, with slots filled. A worksheet inside it keeps its own. */
export declare const contentOf: (worksheet: Element) => Element[];
/** What the slots among these elements bring in from elsewhere. */
export declare const passedOn: (content: Element[]) => Element[];
