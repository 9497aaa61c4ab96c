/** Puts a calculator's own words over the shared ones. In a page the words of the face are added. */
const vocabularyOf = (common, own, face = {}) => ({
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

export { vocabularyOf };
