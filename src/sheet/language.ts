/** The language that holds where an element stands: its own, or its closest ancestor's, through shadow roots. */
export const languageAt = (element: Element): string => {
  const found = element.closest<HTMLElement>('[lang]');
  if (found) return found.lang;
  const { host } = element.getRootNode() as ShadowRoot;
  return host ? languageAt(host) : 'en';
};
