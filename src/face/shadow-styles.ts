import type { CSSResult, LitElement } from 'lit';

/**
 * Gives a shadow root the styles of its element. We make new style sheet objects, because each belongs to one document, and because
 * a strict content policy allows them. A document without a window shows nothing, so it needs none.
 */
export const giveStyles = (root: ShadowRoot, { constructor }: Element): void => {
  const view = root.ownerDocument.defaultView;
  if (!view) return;
  root.adoptedStyleSheets = (constructor as typeof LitElement).elementStyles.map((written) => {
    const style = new view.CSSStyleSheet();
    style.replaceSync((written as CSSResult).cssText);
    return style;
  });
};
