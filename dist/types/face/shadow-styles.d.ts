/**
 * Gives a shadow root the styles of its element. We make new style sheet objects, because each belongs to one document, and because
 * a strict content policy allows them. A document without a window shows nothing, so it needs none.
 */
export declare const giveStyles: (root: ShadowRoot, { constructor }: Element) => void;
