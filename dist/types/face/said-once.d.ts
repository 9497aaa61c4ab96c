export declare const comesFromServer: (element: Element) => void;
/**
 * Whether this element says something that a page needs to read only once. The first that wants to say it does, until it has left
 * the page or no longer wants to.
 */
export declare const saysForAll: (element: Element, what: string, wants?: boolean) => boolean;
