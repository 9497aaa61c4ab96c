import type { backingFields, BackingRow, BackingSayings } from '../../calculators/backing/shape.js';
import { BACKING_SEAM, COTTON_WIDTH } from '../../trade/conventions.js';
import type { CommonLabel } from '../common.js';
import type { CalculatorWords } from '../vocabulary.js';

/** The backing's words in English. */
export const backing: CalculatorWords<typeof backingFields, BackingRow, BackingSayings, CommonLabel> = {
  title: 'Backing',
  labels: {
    needWidth: 'Backing width',
    needLength: 'Backing length',
    seam: 'Seam joining panels',
    repeat: 'Pattern repeat',
    oneWay: 'One-way print',
    piecedStrip: 'Allow a pieced strip',
    panels: 'Panels side by side',
    panel: 'Each panel, along the cloth',
    strip: 'Strip, each piece',
    stripCount: 'Pieces in the strip',
  },
  hints: {
    repeat: '0 if the print has nothing to match',
    oneWay: 'all prints face one way',
    piecedStrip: 'less cloth, more seams',
  },
  options: {},
  entries: {},
  sentences: {
    seamsLeaveNothing: ({ seam, cloth, isSeam }, t) =>
      `Two seams of ${t.l(seam)} leave nothing of cloth ${t.l(cloth)} wide. Write ${isSeam ? `a smaller seam, like ${t.usual(BACKING_SEAM)}` : `wider cloth, like ${t.usual(COTTON_WIDTH)}`}.`,
    tooManyPanels: ({ cloth, panels }, t) =>
      `Cloth ${t.l(cloth)} wide takes ${panels} panels. Write wider cloth, like ${t.usual(COTTON_WIDTH)}.`,
    panelsReach: ({ reach, need, isShort }, t) =>
      isShort
        ? `${t.reckoned(reach)} < ${t.l(need)}: a strip makes up the rest`
        : `${t.reckoned(reach)} ≥ ${t.l(need)}`,
    panelLength: ({ side }) => `the backing’s ${side}`,
    backingPanel: 'backing panel',
    stripToJoin: 'strip, to be joined end to end',
    summary: ({ panels, seams, direction, strip, oneWay, need }, t) => {
      const made = `${panels === 1 ? 'One panel' : `${panels} panels`}${strip ? ' and a pieced strip' : ''}`;
      const running = direction === 'lengthwise' ? 'along the quilt’s length' : 'across the quilt';
      const alone =
        direction === 'lengthwise' ? 'no seam' : 'no seam, with the quilt’s length across the cloth';
      const sewn = seams ? `${seams} seam${seams > 1 ? 's' : ''}, running ${running}` : alone;
      return `${made}, ${sewn}${oneWay ? ', as a one-way print has to lie' : ''}, for a back ${t.size(need)}.`;
    },
    layouts: 'Ways to lay it out',
    panelsHead: 'Panels',
    seamsHead: 'Seams',
    layout: ({ panels, strip, seams, direction }) =>
      `${panels} ${panels > 1 ? 'panels' : 'panel'}${strip ? ` and a strip pieced from ${strip.count}` : ''}, ${seams === 0 ? 'cloth' : 'seams'} ${direction === 'lengthwise' ? 'along the length' : 'across'}`,
    picture: ({ summary }, t) => `${t.say(summary)} The broken line is the quilt.`,
    panelNumber: ({ number }) => `panel ${number}`,
    stripInPicture: 'strip',
    pieced: 'A pieced strip',
  },
};
