/** A calculator's own words over those that all share; in a page, with the face's. */
const together = (common, own, face = {}) => ({
    lang: common.lang,
    title: own.title,
    labels: { ...common.labels, ...own.labels },
    hints: { ...common.hints, ...own.hints },
    lockedHints: { ...common.lockedHints, ...own.lockedHints },
    options: { ...common.options, ...own.options },
    entries: { ...own.entries },
    entryNames: { ...own.entryNames },
    sentences: { ...common.sentences, ...face, ...own.sentences },
});

export { together };
