/**
 * Gives a shadow root the styles of an element, whatever document it stands in: style sheet objects, which a strict content
 * policy allows, belong to one document. One without a window shows nothing and needs none.
 */
export declare const dress: (root: ShadowRoot, { constructor }: Element) => void;
