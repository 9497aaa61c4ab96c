/** Registers an element once; a second load, or another build, leaves the first in place. */
export const define = (name: string, element: CustomElementConstructor): void => {
  if (!customElements.get(name)) customElements.define(name, element);
};
