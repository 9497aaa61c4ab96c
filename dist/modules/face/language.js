import { isServer } from 'lit';
import { askFor } from './language-files.js';

/** The roots that an element stands in: its shadow root, that of its host, and so on up to the document. */
const rootsOf = (element) => {
    const root = element.getRootNode();
    return root.host ? [root, ...rootsOf(root.host)] : [root];
};
/** The language that holds where an element stands: its own, or its closest ancestor's, through shadow roots. */
const languageAt = (element) => {
    const found = element.closest('[lang]');
    if (found)
        return found.lang;
    const { host } = element.getRootNode();
    return host ? languageAt(host) : 'en';
};
/** The elements in a page that show themselves in its language, with the language each was last shown in. */
const shown = new Map();
const showAgain = () => shown.forEach((_, element) => element.requestUpdate());
// One for all elements, while there are any: a `lang` seldom changes.
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
/** Draws an element anew whenever the language around it changes. */
const followLanguage = (element) => {
    if (!changes)
        return;
    const lang = languageAt(element);
    shown.set(element, lang);
    askFor(lang, showAgain);
    for (const root of rootsOf(element))
        changes.observe(root, { attributes: true, attributeFilter: ['lang'], subtree: true });
};
/** No more. */
const leaveLanguage = (element) => {
    shown.delete(element);
    if (!shown.size)
        changes?.disconnect();
};

export { followLanguage, languageAt, leaveLanguage };
