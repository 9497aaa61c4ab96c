import type {
  BorderBought,
  bordersFields,
  BordersRow,
  BordersSayings,
} from '../../calculators/borders/shape.js';
import { COTTON_WIDTH } from '../../trade/conventions.js';
import type { CommonLabel } from '../common.js';
import { equals, type Teller } from '../teller.js';
import type { CalculatorWords } from '../vocabulary.js';

const BORDER = { one: 'border', other: 'borders' };
const STRIP = { one: 'strip', other: 'strips' };
const JOIN = { one: 'join', other: 'joins' };
const ROW = { one: 'row', other: 'rows' };

const PARTS = {
  cutWidth: 'cut width',
  sidesCutWidth: 'cut width of the sides',
  endsCutWidth: 'cut width of top and bottom',
  side: 'sides',
  end: 'top and bottom',
  strips: 'strips',
  cloth: 'cloth',
};
const PIECES = { side: 'side', end: 'top or bottom', corner: 'corner' };
const PLANS = {
  joined: 'across, all joined into one and cut up',
  separate: 'across, each border cut on its own',
  along: 'along the cloth, without joins',
};

const eachSide = ({ side, end }: BordersSayings['lastBorder'], t: Teller): string =>
  `${t.l(side)} at each side and ${t.l(end)} at top and at bottom`;

/** What to buy for each border, and that little of it is left over. */
const forEach = (buys: BorderBought[], t: Teller): string =>
  buys
    .map(({ buy, spare }, at) => {
      const little = spare && ` (${spare.gt(0) ? `only ${t.l(spare)}` : 'nothing'} to spare)`;
      return `${t.bought(buy)} for border ${at + 1}${little ?? ''}`;
    })
    .join(', ');

/** The borders' words in English. */
export const borders: CalculatorWords<typeof bordersFields, BordersRow, BordersSayings, CommonLabel> = {
  title: 'Borders',
  labels: {
    width: 'Top width',
    length: 'Top length',
    borders: 'Border width',
    corners: 'Corners',
    target: 'Wanted size',
    grain: 'Strips cut',
    seam: 'Seam allowance',
    targetSides: 'Missing at each side',
    targetEnds: 'Missing at top and bottom',
  },
  hints: {
    width: 'finished, without borders',
    borders: 'finished, innermost first',
    target: 'reached with one more border',
  },
  options: {
    corners: {
      'sides-first': 'sides first',
      'ends-first': 'ends first',
      squares: 'corner squares',
      mitred: 'mitred',
    },
    grain: { across: 'across the cloth', along: 'along the cloth' },
  },
  entries: { borders: (number) => `Border ${number}` },
  entryNames: { borders: (number) => `border ${number}` },
  sentences: {
    // What is wrong.
    noBorder: (_, t) =>
      `Write the widths of the borders from the inside out, like ${t.forUnits({ in: '2, 4 1/2', cm: '5, 12' })}, or a wanted size, like ${t.forUnits({ in: '60 x 80', cm: '150 x 200' })}.`,
    reachedAlready: ({ borders, size, larger }, t) =>
      `${borders ? `With ${t.many(borders, BORDER)}` : 'Without a border'} it is ${t.size(size)} already. Write a larger size, like ${t.n(larger.width)} x ${t.n(larger.length)}.`,
    mitredUneven: (widths, t) =>
      `The wanted size needs ${eachSide(widths, t)}, but a mitred border has the same width all round. Write squares or sides-first.`,
    tooWideAlong: ({ number, wide, cloth }, t) =>
      `Border ${number} is cut ${t.l(wide)} wide, too wide to be cut along cloth of ${t.l(cloth)}. Write across.`,
    tooShortToJoin: ({ cloth }, t) =>
      `Strips ${t.l(cloth)} long are too short to be joined. Write wider cloth, like ${t.usual(COTTON_WIDTH)}.`,
    joinedNoLonger: ({ wide, cloth }, t) =>
      `Strips ${t.l(wide)} wide and ${t.l(cloth)} long do not get longer when you join them at 45°. Write straight.`,
    seamsLeaveNothing: ({ measured, reckoned }, t) =>
      `The seams leave nothing of ${t.l(measured)}. Measure from edge to edge, like ${t.l(reckoned)}.`,

    // What is worth knowing.
    cornersCopied: ({ styles, borders }, t) =>
      `There are ${styles} corner styles for ${t.many(borders, BORDER)}: the others have corners like border ${styles}. Choose another in its row.`,
    cornersUnused: ({ styles, borders }, t) => {
      const unused = styles - borders;
      return `There are ${styles} corner styles for ${t.many(borders, BORDER)}: the last ${unused > 1 ? `${unused} are` : 'is'} not used.`;
    },
    reachedWithoutLast: 'The wanted size is reached without a last border.',
    lastBorder: (widths, t) => `To reach the wanted size the last border is ${eachSide(widths, t)}.`,
    fromDifferentCloths: ({ buys }, t) => `For different cloths, buy ${forEach(buys, t)}.`,
    forEachBorder: ({ buys }, t) => `That is ${forEach(buys, t)}.`,
    measureTop:
      'Before you cut, measure your own top through the middle, both ways. Write your measurements over ours.',

    // The rows.
    borderRow: ({ number, is }) => `Border ${number}, ${PARTS[is]}`,
    topBefore: ({ number, side }) => `Top’s ${side}, edge to edge, before border ${number}`,
    topWith: ({ number, side }) => `${side === 'width' ? 'Width' : 'Length'} with border ${number}`,
    cutOnMark: ({ size, cut }, t) => `${t.reckonedLength(size)}, cut ${t.l(cut)}`,
    stripCount: ({ strips, joins }, t) =>
      `${t.many(strips, STRIP)}${joins ? `, ${t.many(joins, JOIN)}` : ''}`,
    eachWidth: ({ widths }, t) => widths.map((width) => t.say(width)).join('; '),
    allJoined: ({ reach, need }, t) => `${t.reckoned(reach)} ≥ ${t.reckoned(need)}`,
    eachSeparate: ({ whole, shared, pieces, loss }, t) => {
      const cut = `${shared} cut into ${pieces.map((piece) => t.formula(piece)).join(', ')}`;
      return whole ? `${whole} whole + ${cut} (each join uses ${t.n(loss)})` : cut;
    },
    sideBySide: ({ across, fit, rows, isBehind }, t) => {
      const beside = across ? `${t.formula(across)}: ${fit} fit` : 'as many as fit';
      return `${beside} side by side, in ${t.many(rows, ROW)}${isBehind ? ', shorter ones one behind another' : ''}`;
    },
    longestPiece: ({ fabric, shrinkage }, t) =>
      equals(`the longest piece${shrinkage ? ` ÷ (1 − ${t.n(shrinkage)})` : ''}`, t.l(fabric)),
    allAlong: ({ how, fabric, longest }, t) =>
      `all of them, ${t.say(how)}: ${longest ? t.say(longest) : t.reckonedLength(fabric)}`,

    // The cut list and the answer.
    borderPiece: ({ number, piece, isSquare }) =>
      `border ${number}, ${piece === 'corner' && isSquare ? 'corner square' : PIECES[piece]}`,
    borderNumber: ({ number }) => `Border ${number}`,
    summary: ({ strips, joins, grain, borders, finished }, t) =>
      `${t.many(strips, STRIP)} ${grain} the cloth, ${joins ? t.many(joins, JOIN) : 'no join'}; with ${borders > 1 ? `${borders} borders` : 'its border'} the quilt is ${t.size(finished)}.`,

    // The lists.
    plans: 'Ways to cut',
    borderHead: 'Border',
    stripsHead: 'Strips',
    joinsHead: 'Joins',
    planOf: ({ number, plan }) => `${number}: ${PLANS[plan]}`,
    stripsForBorders: 'Strips for the borders',

    // The drawing.
    picture: ({ summary }, t) => `The borders round the quilt top. ${t.say(summary)}`,
    quiltTop: 'quilt top',
  },
};
