/**
 * Gives a shadow root the styles of its element. We make new style sheet objects, because each belongs to one document, and because
 * a strict content policy allows them. A document without a window shows nothing, so it needs none.
 */
const giveStyles = (root, { constructor }) => {
    const view = root.ownerDocument.defaultView;
    if (!view)
        return;
    root.adoptedStyleSheets = constructor.elementStyles.map((written) => {
        const style = new view.CSSStyleSheet();
        style.replaceSync(written.cssText);
        return style;
    });
};

export { giveStyles };
