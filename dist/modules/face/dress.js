/**
 * Gives a shadow root the styles of an element, whatever document it stands in: style sheet objects, which a strict content
 * policy allows, belong to one document. One without a window shows nothing and needs none.
 */
const dress = (root, { constructor }) => {
    const inside = root.ownerDocument.defaultView;
    if (!inside)
        return;
    root.adoptedStyleSheets = constructor.elementStyles.map((written) => {
        const style = new inside.CSSStyleSheet();
        style.replaceSync(written.cssText);
        return style;
    });
};

export { dress };
