import type { ReactiveElement } from 'lit';

/**
 * Stands for `server.ts` in the bundles: their templates are shortened, so that they are never those a server wrote, and
 * what a server wrote makes room for the same sheet.
 */
export const isAsServed = (_element: object): boolean => false;
export const takeOver = ({ shadowRoot }: ReactiveElement): boolean => {
  shadowRoot!.replaceChildren();
  return false;
};
export const isTakenOver = (_element: object): void => undefined;
export const isUnknown = (_element: Element): boolean => false;
export const insideOnServer = (_worksheet: Element): Element[] => [];
export const answerOnServer = (_worksheet: Element, _know: unknown): void => undefined;
export const tableOnServer = (): undefined => undefined;
