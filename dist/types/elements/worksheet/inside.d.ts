/**
 * The worksheet that an element is shown in, or is: around it in its own markup, or around a slot that it is passed on
 * through.
 */
export declare const worksheetAround: (element: Element) => Element | undefined;
/** What slots in an element pass on to it from elsewhere. */
export declare const passedOn: (element: Element) => Element[];
/** What stands in a worksheet, and not in one inside it. */
export declare const inside: (worksheet: Element) => Element[];
