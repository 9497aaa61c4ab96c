import { isServer, type LitElement, type ReactiveElement } from 'lit';

/** Elements that stand as a server wrote them. */
const served = new WeakSet<object>();

/**
 * Whether only attributes count as yet: on a server, which knows neither what stands inside an element nor what stands around
 * it, and in the first render over its writing, which has to find the same.
 */
export const isAsServed = (element: object): boolean => isServer || served.has(element);

/**
 * Takes over what a server wrote. Lit does it if `@lit-labs/ssr-client` taught it so; by itself it would write a second time,
 * so what stands there makes room.
 * @returns whether it stays, until {@link isTakenOver}.
 */
export const takeOver = (element: ReactiveElement): void => {
  const { shadowRoot, constructor } = element;
  if ((constructor as typeof LitElement).observedAttributes.includes('defer-hydration')) served.add(element);
  else shadowRoot!.replaceChildren();
};

export const isTakenOver = (element: object): void => void served.delete(element);

/** On a server an element can ask what stands around it by an event only; a worksheet answers this one. */
const ASKED = 'quilt-worksheet';

/** Whether sizes may flow to an element from a worksheet, which it may itself be. */
export const isInWorksheet = (element: Element): boolean =>
  isServer
    ? !element.dispatchEvent(new Event(ASKED, { bubbles: true, cancelable: true }))
    : !!element.closest('quilt-worksheet');

/** Lets a worksheet on a server answer {@link isInWorksheet}. */
export const answerOnServer = (worksheet: Element): void => {
  if (!isServer) return;
  // Events of what stands inside come by way of it.
  worksheet.attachShadow({ mode: 'open' });
  worksheet.addEventListener(ASKED, (event) => event.preventDefault());
};
