/** What stands in a worksheet as a reader sees it, slots filled, and not in one inside it. */
export declare const inside: (worksheet: Element) => Element[];
/** What slots in a worksheet pass on to it from elsewhere. */
export declare const passedOn: (worksheet: Element) => Element[];
