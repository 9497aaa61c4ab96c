/** Finds what the page surely has. */
export const find = <E extends Element = HTMLElement>(selector: string, inside: ParentNode = document): E => {
  const found = inside.querySelector<E>(selector);
  if (!found) throw new Error(`The page has no ${selector}`);
  return found;
};

/** Sets a text only where it differs: a screen reader may hear it again otherwise. */
export const write = (element: Element, text: string): void => {
  if (element.textContent !== text) element.textContent = text;
};
