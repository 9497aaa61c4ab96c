import { isServer } from 'lit';
import { askFor } from './language-files.js';

/** The roots around an element: its shadow root, that of its host, and so on up to the document. */
const rootsOf = (element) => {
    const root = element.getRootNode();
    return root.host ? [root, ...rootsOf(root.host)] : [root];
};
/** The language of an element: its own, or that of its closest ancestor, through shadow roots. */
const languageAt = (element) => {
    const found = element.closest('[lang]');
    if (found)
        return found.lang;
    const { host } = element.getRootNode();
    return host ? languageAt(host) : 'en';
};
/** The elements in a page, with the language in which each was last shown. */
const shown = new Map();
const showAgain = () => shown.forEach((_, element) => element.requestUpdate());
// One observer for all elements is enough: a `lang` seldom changes.
const changes = isServer
    ? undefined
    : new MutationObserver(() => {
        for (const [element, before] of shown) {
            const now = languageAt(element);
            if (now === before)
                continue;
            shown.set(element, now);
            askFor(now, showAgain);
            element.requestUpdate();
        }
    });
/** Draws an element again when the language around it changes. */
const followLanguage = (element) => {
    if (!changes)
        return;
    const lang = languageAt(element);
    shown.set(element, lang);
    askFor(lang, showAgain);
    for (const root of rootsOf(element))
        changes.observe(root, { attributes: true, attributeFilter: ['lang'], subtree: true });
};
/** Stops that. */
const leaveLanguage = (element) => {
    shown.delete(element);
    if (!shown.size)
        changes?.disconnect();
};

export { followLanguage, languageAt, leaveLanguage };
