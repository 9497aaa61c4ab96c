import { isServer, type ReactiveElement } from 'lit';
import { askFor } from './language-files.js';

/** The roots around an element: its shadow root, that of its host, and so on up to the document. */
const rootsOf = (element: Element): Node[] => {
  const root = element.getRootNode() as ShadowRoot;
  return root.host ? [root, ...rootsOf(root.host)] : [root];
};

/** The language of an element: its own, or that of its closest ancestor, through shadow roots. */
export const languageAt = (element: Element): string => {
  const found = element.closest<HTMLElement>('[lang]');
  if (found) return found.lang;
  const { host } = element.getRootNode() as ShadowRoot;
  return host ? languageAt(host) : 'en';
};

/** The elements in a page, with the language in which each was last shown. */
const shown = new Map<ReactiveElement, string>();

const showAgain = (): void => shown.forEach((_, element) => element.requestUpdate());

// One observer for all elements is enough: a `lang` seldom changes.
const changes = isServer
  ? undefined
  : new MutationObserver(() => {
      for (const [element, before] of shown) {
        const now = languageAt(element);
        if (now === before) continue;
        shown.set(element, now);
        askFor(now, showAgain);
        element.requestUpdate();
      }
    });

/** Draws an element again when the language around it changes. */
export const followLanguage = (element: ReactiveElement): void => {
  if (!changes) return;
  const lang = languageAt(element);
  shown.set(element, lang);
  askFor(lang, showAgain);
  for (const root of rootsOf(element))
    changes.observe(root, { attributes: true, attributeFilter: ['lang'], subtree: true });
};

/** Stops that. */
export const leaveLanguage = (element: ReactiveElement): void => {
  shown.delete(element);
  if (!shown.size) changes?.disconnect();
};
