/** The words of a spreadsheet file in English. */
const spreadsheet = {
    unitColumnHead: 'Unit',
    onPageHead: 'Working on the page',
    numberedRow: ({ label, number }) => `${label}, ${number}`,
    cutCountHead: 'How many',
    cutWidthHead: (_, t) => `Width (${t.style.units})`,
    cutLengthHead: (_, t) => `Length (${t.style.units})`,
    formulasFollow: 'Cells with a formula follow your changes. Everything else was worked out on the page, for these numbers: counts of strips and panels, layouts, choices and cut sizes. To change those, go back to the page.',
    notFollowed: 'change it on the page, no formula here uses it',
    tooLittleNow: 'Not enough for these numbers any more. Work it out again on the page.',
    toNextStep: ({ formula, step }) => `${formula}, up to the next step of ${step}`,
    toCoin: ({ formula }) => `${formula}, to the nearest coin`,
};

export { spreadsheet };
