import type {
  BorderBought,
  bordersFields,
  BordersRow,
  BordersSayings,
} from '../../calculators/borders/shape.js';
import type { CommonLabel } from '../common.js';
import { equals, type Forms, type Teller } from '../teller.js';
import type { CalculatorWords } from '../vocabulary.js';
import { listed, SEVERAL, SIZE, so, STRIP } from './examples.js';

/** After „mit“ and after „für“. */
const WITH_BORDERS: Forms = { one: 'Rand', other: 'Rändern' };
const FOR_BORDERS: Forms = { one: 'Rand', other: 'Ränder' };
const JOIN: Forms = { one: 'Ansatznaht', other: 'Ansatznähte' };
const ROW: Forms = { one: 'Reihe', other: 'Reihen' };

const PARTS = {
  cutWidth: 'Zuschnittbreite',
  sidesCutWidth: 'Zuschnittbreite der Seiten',
  endsCutWidth: 'Zuschnittbreite oben und unten',
  side: 'Seiten',
  end: 'oben und unten',
  strips: 'Streifen',
  cloth: 'Stoff',
};
const PIECES = { side: 'Seite', end: 'oben oder unten', corner: 'Ecke' };
const PLANS = {
  joined: 'quer, alle zu einem verbunden und abgelängt',
  separate: 'quer, jeder Randstreifen für sich',
  along: 'längs zum Fadenlauf, ohne Ansatznähte',
};
const GRAIN = { across: 'quer zum Stoff', along: 'längs zum Stoff' };

const eachSide = ({ side, end }: BordersSayings['lastBorder'], t: Teller): string =>
  `${t.l(side)} an jeder Seite und ${t.l(end)} oben und unten`;
const copied = ({ styles, borders }: BordersSayings['cornersCopied'], t: Teller): string =>
  `${styles} Eckenarten stehen für ${t.many(borders, FOR_BORDERS)}`;

/** What to buy for each border, and that little of it is left over. */
const forEach = (buys: BorderBought[], t: Teller): string =>
  listed(
    buys.map(({ buy, spare }, at) => {
      const little = spare && ` (${spare.gt(0) ? `Reserve: nur ${t.l(spare)}` : 'keine Reserve'})`;
      return `${t.bought(buy)} für Rand ${at + 1}${little ?? ''}`;
    }),
  );

/** The borders' words in German. */
export const borders: CalculatorWords<typeof bordersFields, BordersRow, BordersSayings, CommonLabel> = {
  title: 'Ränder',
  labels: {
    width: 'Breite des Tops',
    length: 'Länge des Tops',
    borders: 'Randbreite',
    corners: 'Ecken',
    target: 'Gewünschte Größe',
    grain: 'Streifen zuschneiden',
    seam: 'Nahtzugabe',
    targetSides: 'Fehlt an jeder Seite',
    targetEnds: 'Fehlt jeweils oben und unten',
  },
  hints: {
    width: 'fertig, ohne Ränder',
    borders: 'fertig, der innerste zuerst',
    target: 'mit einem weiteren Rand erreicht',
  },
  options: {
    corners: {
      'sides-first': 'Seiten zuerst',
      'ends-first': 'oben und unten zuerst',
      squares: 'Eckquadrate',
      mitred: 'Briefecken',
    },
    grain: GRAIN,
  },
  entries: { borders: (number) => `Rand ${number}` },
  entryNames: { borders: (number) => `Rand ${number}` },
  sentences: {
    // What is wrong.
    noBorder: (_, t) =>
      `Die Breiten der Ränder von innen nach außen eintragen, zum Beispiel ${so(SEVERAL, t)}, oder eine gewünschte Größe, zum Beispiel ${SIZE}.`,
    reachedAlready: ({ borders, size, larger }, t) =>
      `${borders ? `Mit ${t.many(borders, WITH_BORDERS)}` : 'Ohne Rand'} sind es schon ${t.size(size)}. Ein größeres Maß eintragen, zum Beispiel ${t.n(larger.width)} x ${t.n(larger.length)}.`,
    mitredUneven: (widths, t) =>
      `Die gewünschte Größe verlangt ${eachSide(widths, t)}; ein Rand mit Briefecken ist aber ringsum gleich breit. Eckquadrate oder „Seiten zuerst“ wählen.`,
    tooWideAlong: ({ number, wide, cloth }, t) =>
      `Rand ${number} wird ${t.l(wide)} breit zugeschnitten, zu breit für den Zuschnitt längs aus ${t.l(cloth)} breitem Stoff. „quer zum Stoff“ wählen.`,
    tooShortToJoin: ({ cloth }, t) =>
      `${t.l(cloth)} lange Streifen sind zu kurz zum Verbinden. Breiteren Stoff eintragen, zum Beispiel 105 cm.`,
    joinedNoLonger: ({ wide, cloth }, t) =>
      `Im 45°-Winkel verbunden werden ${t.l(wide)} breite und ${t.l(cloth)} lange Streifen nicht länger. Die Streifen gerade verbinden.`,
    seamsLeaveNothing: ({ measured, reckoned }, t) =>
      `Die Nahtzugaben lassen von ${t.l(measured)} nichts übrig. Von Kante zu Kante messen, zum Beispiel ${t.l(reckoned)}.`,

    // What is worth knowing.
    cornersCopied: ({ styles, borders }, t) =>
      `${copied({ styles, borders }, t)}: Die übrigen haben Ecken wie Rand ${styles}. Andere in der jeweiligen Zeile wählen.`,
    cornersUnused: ({ styles, borders }, t) => {
      const unused = styles - borders;
      return `${copied({ styles, borders }, t)}: ${unused > 1 ? `Die letzten ${unused} gelten` : 'Die letzte gilt'} nicht.`;
    },
    reachedWithoutLast: 'Die gewünschte Größe ist ohne letzten Rand erreicht.',
    lastBorder: (widths, t) => `Für die gewünschte Größe ist der letzte Rand ${eachSide(widths, t)} breit.`,
    fromDifferentCloths: ({ buys }, t) => `Bei verschiedenen Stoffen ${forEach(buys, t)} kaufen.`,
    forEachBorder: ({ buys }, t) => `Das sind ${forEach(buys, t)}.`,
    measureTop:
      'Das Top vor dem Zuschneiden durch die Mitte messen, in beide Richtungen, und die Maße anstelle der berechneten Längen eintragen.',

    // The rows.
    borderRow: ({ number, is }) => `Rand ${number}, ${PARTS[is]}`,
    topBefore: ({ number, side }) =>
      `${side === 'width' ? 'Breite' : 'Länge'} des Tops vor Rand ${number}, von Kante zu Kante`,
    topWith: ({ number, side }) => `${side === 'width' ? 'Breite' : 'Länge'} mit Rand ${number}`,
    cutOnMark: ({ size, cut }, t) => `${t.reckonedLength(size)}, zugeschnitten ${t.l(cut)}`,
    stripCount: ({ strips, joins }, t) =>
      `${t.many(strips, STRIP)}${joins ? `, ${t.many(joins, JOIN)}` : ''}`,
    eachWidth: ({ widths }, t) => widths.map((width) => t.say(width)).join('; '),
    allJoined: ({ reach, need }, t) => `${t.reckoned(reach)} ≥ ${t.reckoned(need)}`,
    eachSeparate: ({ whole, shared, pieces, loss }, t) => {
      const cut = `${shared} geteilt in ${pieces.map((piece) => t.formula(piece)).join('; ')}`;
      return whole ? `${whole} ganze + ${cut} (Verlust je Ansatznaht ${t.n(loss)})` : cut;
    },
    sideBySide: ({ across, fit, rows, isBehind }, t) => {
      const beside = across ? `${t.formula(across)}: ${fit} passen` : 'so viele wie passen';
      return `${beside} nebeneinander, in ${t.many(rows, ROW)}${isBehind ? ', kürzere hintereinander' : ''}`;
    },
    longestPiece: ({ fabric, shrinkage }, t) =>
      equals(`das längste Teil${shrinkage ? ` ÷ (1 − ${t.n(shrinkage)})` : ''}`, t.l(fabric)),
    allAlong: ({ how, fabric, longest }, t) =>
      `alle, ${t.say(how)}: ${longest ? t.say(longest) : t.reckonedLength(fabric)}`,

    // The cut list and the answer.
    borderPiece: ({ number, piece, isSquare }) =>
      `Rand ${number}, ${piece === 'corner' && isSquare ? 'Eckquadrat' : PIECES[piece]}`,
    borderNumber: ({ number }) => `Rand ${number}`,
    summary: ({ strips, joins, grain, borders, finished }, t) =>
      `${t.many(strips, STRIP)} ${GRAIN[grain]}, ${joins ? t.many(joins, JOIN) : 'keine Ansatznaht'}; mit ${borders > 1 ? t.many(borders, WITH_BORDERS) : 'dem Rand'} misst der Quilt ${t.size(finished)}.`,

    // The lists.
    plans: 'Möglichkeiten, die Streifen zuzuschneiden',
    borderHead: 'Rand',
    stripsHead: 'Streifen',
    joinsHead: 'Ansatznähte',
    planOf: ({ number, plan }) => `${number}: ${PLANS[plan]}`,
    stripsForBorders: 'Streifen für die Ränder',

    // The drawing.
    picture: ({ summary }, t) => `Die Ränder rund um das Quilttop. ${t.say(summary)}`,
    quiltTop: 'Quilttop',
  },
};
