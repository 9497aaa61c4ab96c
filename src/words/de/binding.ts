import type {
  BindingRow,
  BindingSayings,
  bindingFields,
  Fold,
  Narrower,
} from '../../calculators/binding/shape.js';
import type { CommonLabel } from '../common.js';
import type { Forms, Teller } from '../teller.js';
import type { CalculatorWords } from '../vocabulary.js';
import { reaches, so, STRIP, upTo } from './examples.js';

/** Before „Einfassung“. */
const FOLDS: Record<Fold, string> = { double: 'doppelt gelegte', single: 'einfache' };

const NARROWER: Record<Narrower, string> = {
  cloth: 'Breiteren Stoff eintragen, zum Beispiel 105 cm.',
  strip: 'Einen schmaleren eintragen, zum Beispiel 6,5 cm, oder breiteren Stoff.',
  finished: 'Eine schmalere fertige Breite eintragen, zum Beispiel 1 cm, oder breiteren Stoff.',
};
const narrow = (narrower: Narrower, t: Teller): string => so(NARROWER[narrower], t);

const JOINS = {
  straight: 'Die Streifen gerade verbinden',
  smallerSeam: 'Eine kleinere Nahtzugabe eintragen, zum Beispiel 0,5 cm',
  widerCloth: 'Breiteren Stoff eintragen, zum Beispiel 105 cm',
};

const SQUARE: Forms = { one: 'Quadrat', other: 'Quadrate' };

/** The binding's words in German. */
export const binding: CalculatorWords<typeof bindingFields, BindingRow, BindingSayings, CommonLabel> = {
  title: 'Einfassung',
  labels: {
    perimeter: 'Umfang, gemessen',
    around: 'Umfang',
    allowance: 'Zugabe für Ecken und Schluss',
    need: 'Länge der Einfassung',
    stripWidth: 'Streifenbreite',
    finished: 'Fertige Breite',
    fold: 'Art der Einfassung',
    thickness: 'Dicke des Quilts',
    strip: 'Streifen zuschneiden',
    cut: 'Zuschnitt',
    seam: 'Nahtzugabe',
    loss: 'Verlust je Ansatznaht',
    strips: 'Streifen quer zum Stoff',
    square: 'Quadrat',
    rounds: 'Runden im Schlauch',
    yields: 'Ergibt zusammen',
    byArea: 'Nur nach Fläche: Quadrat von',
    fatStrips: 'Streifen aus Fat Quarters',
    fatQuarters: 'Oder Fat Quarters kaufen',
  },
  hints: {
    perimeter: 'bei runden Kanten statt Breite und Länge',
    allowance: 'Briefecken und Enden zum Schließen',
    stripWidth: {
      in: 'zugeschnitten; leer heißt 2 1/2 in, oder aus der fertigen Breite berechnet',
      cm: 'zugeschnitten; leer heißt 6,5 cm, oder aus der fertigen Breite berechnet',
    },
    finished: 'wie vorn sichtbar; darf leer bleiben',
    thickness: 'zählt bei der fertigen Breite mit',
    seam: 'gerader Ansatznähte und des Schlauchs',
  },
  options: {
    fold: { double: 'doppelt gelegt', single: 'einfach' },
    cut: { straight: 'quer', bias: 'schräg' },
  },
  entries: {},
  sentences: {
    asMeasured: 'wie gemessen',
    curvedEdge: 'Eine runde Kante braucht Schrägband: Gerade geschnittene Streifen legen sich nicht um sie.',
    betweenMarks: ({ text, strip }, t) =>
      `${t.quote(text)} liegt zwischen zwei Strichen des Lineals: Die Streifen ${t.l(strip)} breit zuschneiden.`,
    upToMark: ({ stripWidth, mark }, t) => `${t.n(stripWidth)}, ${upTo(mark, t)}`,
    usualWidth: 'die übliche Breite',
    cutOnMark: ({ whole, cut }, t) =>
      `${t.reckonedLength(whole)}${whole.value.equals(cut) ? '' : `, zugeschnitten ${t.l(cut)}`}`,
    stripWidthUsed: 'Die Streifenbreite gilt, nicht die fertige Breite.',
    stripTooWide: ({ strip, cloth, narrower }, t) =>
      `Ein ${t.l(strip)} breiter Streifen ist breiter als der Stoff, ${t.l(cloth)}. ${narrow(narrower, t)}`,
    noSquare: ({ strip, cloth, narrower }, t) =>
      `Kein Quadrat aus ${t.l(cloth)} breitem Stoff reicht für einen ${t.l(strip)} breiten Schrägstreifen. ${narrow(narrower, t)}`,
    joinLeavesNothing: ({ loss, cloth, write }, t) =>
      `Eine Ansatznaht mit ${t.l(loss)} Verlust lässt von ${t.l(cloth)} langen Streifen nichts übrig. ${so(JOINS[write], t)}.`,
    joinAtAngle: 'im 45°-Winkel: die Breite des Streifens',
    stripsReach: ({ reach, need }, t) => reaches(reach, need, t),
    bindingStrip: 'Streifen für die Einfassung',
    summary: ({ strips, strip, isDiagonal, need, fold }, t) => {
      const cut = `${strips > 1 ? `${strips} Streifen` : 'Ein Streifen'}, ${t.l(strip)} breit`;
      const joined = strips > 1 ? `, ${isDiagonal ? 'im 45°-Winkel' : 'gerade'} verbunden` : '';
      return `${cut}${joined}, für eine ${t.l(need)} lange, ${FOLDS[fold]} Einfassung.`;
    },

    // Bias.
    eachSquare: ({ count }) => `Jedes der ${count} Quadrate`,
    leastSquare: ({ need, tooNarrow }, t) =>
      `das kleinste, dessen volle Runden ${t.l(need)} ergeben${tooNarrow ? `; ein einziges passt nicht auf ${t.l(tooNarrow)} breiten Stoff` : ''}`,
    roundsFit: ({ across, rounds, strip }, t) =>
      `${t.reckonedLength(across)} quer: ${rounds} × ${t.n(strip)} passen`,
    roundsGive: ({ all, need }, t) => `${t.formula(all)}, nicht unter ${t.l(need)}`,
    byAreaAlone: ({ side }, t) =>
      `${t.formula(side)}, aufgerundet; die letzte Runde ist vielleicht zu schmal`,
    biasSquare: 'Quadrat für endloses Schrägband',
    biasSummary: ({ count, side, need, fold, strip }, t) =>
      `${count > 1 ? t.many(count, SQUARE) : 'Ein Quadrat'} von ${t.l(side)} für eine ${t.l(need)} lange, ${FOLDS[fold]} Einfassung aus Schrägband, ${t.l(strip)} breit zugeschnitten.`,

    // Fat quarters.
    squareFromEach: ({ side }, t) => `aus jedem ein Quadrat von ${t.l(side)}`,
    stripsFromEach: ({ high, strip, each }, t) => `${t.n(high)} ÷ ${t.n(strip)}: ${each} aus jedem`,
    notPossible: 'nicht möglich',
    tooWideForFatQuarter: ({ strip, size }, t) =>
      `ein ${t.l(strip)} breiter Streifen ist zu breit für ${t.size(size)}`,

    // In the drawing.
    picture: ({ summary }, t) =>
      `${t.say(summary)} Jeder Streifen liegt quer im Stoff; die gestrichelten Linien rechts sind die Ansatznähte.`,
    biasPicture: ({ side }, t) =>
      `Ein Quadrat von ${t.l(side)} für endloses Schrägband. Die dicke gestrichelte Linie ist der erste Schnitt; die feinen zeigen die Schrägstreifen.`,
    stripNumber: ({ number }) => `Streifen ${number}`,
    stripCount: ({ count }, t) => t.many(count, STRIP),
  },
};
