const BLOCKS = { one: 'block', other: 'blocks' };
const PLACES = { one: 'place', other: 'places' };
const blocksOf = ({ count, block }, t) => `${t.many(count, BLOCKS)} of ${t.typed(block)}`;
const FROM = {
    top: 'from the quilt top',
    borders: 'from the borders',
};
/** The face's words in English. */
const face = {
    buyLead: 'Buy',
    byItselfLead: (_, t) => `${t.words.title} alone`,
    notReckonedYet: ({ inputs, hasAnswer }) => `${hasAnswer ? 'Fix' : 'Fill in'} ${inputs.map((input) => `“${input}”`).join(' and ')} to ${hasAnswer ? 'update this' : 'get an answer'}.`,
    announced: ({ lead, large, cost }) => `${`${lead} ${large} ${cost}`.trim()}.`,
    overStock: ({ stock, takes, instead }, t) => `In stock: ${stock}, and this takes ${t.bought(takes)}. ${instead
        ? `${t.say(instead.way)} would do: ${t.bought(instead.buy)}`
        : 'A smaller size or wider cloth would take less'}.`,
    wrongStock: ({ problem }, t) => `Stock, max: ${t.say(problem)}`,
    strayLock: ({ text, names }, t) => `${t.quote(text)} in lock is not the name of an input here. Write it like ${names.join(' ')}.`,
    valueHead: 'Value',
    howHead: 'How we worked it out',
    showWorking: 'Show the working',
    hideWorking: 'Hide the working',
    changeSettings: 'Change settings',
    hideSettings: 'Hide settings',
    standingSettings: ({ settings, others }) => [
        ...settings.map(({ label, value }) => `${label}: ${value}`),
        ...(others[0] ? [`not set: ${others.join('\u00a0· ')}`] : []),
    ].join('\u00a0· '),
    oneMore: 'one more, if you have one',
    yourOwn: 'your own',
    measured: 'measured',
    putBack: ({ value }) => `put back ${value}`,
    takeAway: ({ label }) => `take ${label.toLowerCase()} away`,
    ofMyOwn: 'a size of my own',
    entryOf: ({ label, number }) => `${label}, ${number}`,
    fractionKeys: 'Fraction keys',
    asFabrics: 'what each fabric is bought in',
    asFabricsHint: ({ hint }) => `the fabrics say it; you can choose something else here; ${hint}`,
    cutCaption: 'What to cut',
    times: ({ count }) => `${count} ×`,
    cutterCaution: 'Rotary cutter: close the blade after every cut, cut away from yourself, and keep it from children.',
    measureFirst: 'Amounts are for planning: measure your own cloth and quilt before cutting.',
    showInCentimetres: 'Show in centimetres',
    showInInches: 'Show in inches',
    otherPictures: ({ count }, t) => t.many(count, { one: 'more picture', other: 'more pictures' }),
    takeAlong: 'Copy or download',
    copyTable: 'Copy table',
    downloadCsv: 'Download CSV',
    downloadSpreadsheet: 'Download spreadsheet',
    print: 'Print',
    copied: 'Copied.',
    cannotCopy: 'This browser does not let us copy here. The CSV holds the same.',
    cannotLoad: 'The spreadsheet writer did not load. The CSV holds the same numbers.',
    rowHead: 'Row',
    inchesHead: 'Inches',
    cutCell: ({ piece }, t) => `Cut: ${t.say(piece)}`,
    // Where a value in a worksheet comes from, and what its blocks lack.
    fromWorksheet: 'from the worksheet',
    fromFabric: ({ letter }) => `fabric ${letter}`,
    fromPart: ({ part }) => FROM[part] ?? 'from another part',
    fromSeveral: ({ first, others }, t) => {
        const also = others.map(({ letter, width }) => `fabric ${letter}: ${typeof width === 'string' ? width : t.typed(width)}`);
        return [t.say(first), ...also].join('; ');
    },
    noClothForBlocks: 'This list has no cloth for the blocks yet. Add a block with its chart, or a list of what to cut.',
    listForOtherBlocks: ({ now, written }, t) => `This list has no cloth for ${blocksOf(now, t)} yet: the cut list is for ${blocksOf(written, t)}. Change the cut list to the pieces that you need now.`,
    blocksForOtherPlaces: ({ places, made, difference }, t) => `The top has ${t.many(places, PLACES)} and the blocks are ${made}. ${difference > 0
        ? `Which block do you want ${difference} more of?`
        : `Which block do you want ${-difference} fewer of?`}`,
};

export { face };
