import type { CSSResult, LitElement } from 'lit';

/**
 * Gives a shadow root the styles of an element, whatever document it stands in: style sheet objects, which a strict content
 * policy allows, belong to one document. One without a window shows nothing and needs none.
 */
export const dress = (root: ShadowRoot, { constructor }: Element): void => {
  const inside = root.ownerDocument.defaultView;
  if (!inside) return;
  root.adoptedStyleSheets = (constructor as typeof LitElement).elementStyles.map((written) => {
    const style = new inside.CSSStyleSheet();
    style.replaceSync((written as CSSResult).cssText);
    return style;
  });
};
