import type { FaceSayings } from '../face-sayings.js';
import type { Sentences } from '../vocabulary.js';

/** The face's words in English. */
export const face: Sentences<FaceSayings> = {
  buyLead: 'Buy',
  byItselfLead: 'By itself',
  notReckonedYet: ({ inputs, hasAnswer }) =>
    `Not reckoned${hasAnswer ? ' again' : ''} yet: ${inputs.join(', ')}.`,
  announced: ({ lead, large, cost }) => `${`${lead} ${large} ${cost}`.trim()}.`,
  overStock: ({ stock, takes, instead }, t) =>
    `In stock: ${stock}, and this takes ${t.bought(takes)}. ${
      instead
        ? `${t.say(instead.way)} would do: ${t.bought(instead.buy)}`
        : 'A smaller size or wider cloth would take less'
    }.`,
  wrongStock: ({ problem }, t) => `Stock, max: ${t.say(problem)}`,
  strayLock: ({ text, names }, t) =>
    `${t.quote(text)} in lock is no input here. Write it like ${names.join(' ')}.`,

  valueHead: 'Value',
  howHead: 'How it was got',
  fewerSettings: 'Fewer settings',
  moreSettings: ({ labels }) => `More: ${labels.join(', ').toLowerCase()}`,
  oneMore: 'one more, if there is one',
  yourOwn: 'your own',
  measured: 'measured',
  putBack: ({ value }) => `put back ${value}`,
  takeAway: ({ label }) => `take ${label.toLowerCase()} away`,
  entryOf: ({ label, number }) => `${label}, ${number}`,
  fractionKeys: 'Fraction keys',

  cutCaption: 'Cut',
  times: ({ count }) => `${count} ×`,
  cutterCaution:
    'Rotary cutter: close the blade after every cut, cut away from yourself, and keep it from children.',
  measureFirst: 'Amounts are for planning: measure your own cloth and quilt before cutting.',

  showInCentimetres: 'Show in centimetres',
  showInInches: 'Show in inches',
  copyTable: 'Copy table',
  downloadCsv: 'Download CSV',
  print: 'Print',
  copied: 'Copied.',
  cannotCopy: 'This browser does not allow copying here; the CSV holds the same.',

  rowHead: 'Row',
  inchesHead: 'Inches',
  cutCell: ({ piece }, t) => `Cut: ${t.say(piece)}`,

  fromWorksheet: 'from the worksheet',
  fromTop: 'from the quilt top',
  fromBorders: 'from the borders',
  fromFabric: ({ letter }) => `fabric ${letter}`,
  fromFabrics: ({ first, others }, t) =>
    [t.say(first), ...others.map(({ letter, width }) => `fabric ${letter}: ${width}`)].join('; '),
};
