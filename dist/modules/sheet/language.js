/** The language that holds where an element stands: its own, or its closest ancestor's, through shadow roots. */
const languageAt = (element) => {
    const found = element.closest('[lang]');
    if (found)
        return found.lang;
    const { host } = element.getRootNode();
    return host ? languageAt(host) : 'en';
};

export { languageAt };
