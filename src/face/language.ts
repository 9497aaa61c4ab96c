import { isServer, type ReactiveElement } from 'lit';
import { askFor } from './language-files.js';

/** The roots that an element stands in: its shadow root, that of its host, and so on up to the document. */
const rootsOf = (element: Element): Node[] => {
  const root = element.getRootNode() as ShadowRoot;
  return root.host ? [root, ...rootsOf(root.host)] : [root];
};

/** The language that holds where an element stands: its own, or its closest ancestor's, through shadow roots. */
export const languageAt = (element: Element): string => {
  const found = element.closest<HTMLElement>('[lang]');
  if (found) return found.lang;
  const { host } = element.getRootNode() as ShadowRoot;
  return host ? languageAt(host) : 'en';
};

/** The elements in a page that show themselves in its language, with the language each was last shown in. */
const shown = new Map<ReactiveElement, string>();

const showAgain = (): void => shown.forEach((_, element) => element.requestUpdate());

// One for all elements, while there are any: a `lang` seldom changes.
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

/** Draws an element anew whenever the language around it changes. */
export const followLanguage = (element: ReactiveElement): void => {
  if (!changes) return;
  const lang = languageAt(element);
  shown.set(element, lang);
  askFor(lang, showAgain);
  for (const root of rootsOf(element))
    changes.observe(root, { attributes: true, attributeFilter: ['lang'], subtree: true });
};

/** No more. */
export const leaveLanguage = (element: ReactiveElement): void => {
  shown.delete(element);
  if (!shown.size) changes?.disconnect();
};
