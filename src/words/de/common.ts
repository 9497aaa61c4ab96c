import { number } from '../../measure/format.js';
import { toUnit } from '../../measure/units.js';
import type { CommonWords } from '../common.js';
import { piecesGiven, sizesGiven } from '../gives.js';
import { ranges } from '../ranges.js';
import {
  BRACKETED,
  PRODUCT,
  TOGETHER,
  LENGTHS,
  like,
  listed,
  or,
  SEVERAL,
  SIZE,
  so,
  STEPS,
  SUM,
  upTo,
  PRICE,
} from './examples.js';
import type { Teller } from '../teller.js';

const LENGTH = '52 1/2 in';
const several = (t: Teller): string => `Mehrere mit Semikolon trennen, zum Beispiel ${so(SEVERAL, t)}.`;
const steps = (t: Teller): string => `Zum Beispiel ${or(STEPS, t)}.`;

/** What is drawn of a fabric: `Stoff A: 2 m`. */
const drawn = (fabric: string, what: string): string => `${fabric ? `Stoff ${fabric}` : 'Stoff'}: ${what}`;

const TOO_CLOSE =
  'Ein schiefer Schnitt im Laden oder das Vorwaschen kann den Stoff zu knapp machen. Die nächstgrößere Menge ist';

/** What all calculators share, in German. */
export const common: CommonWords = {
  lang: 'de',
  labels: {
    width: 'Quiltbreite',
    length: 'Quiltlänge',
    overage: 'Überstand je Seite',
    fabricWidth: 'Nutzbare Stoffbreite',
    washedWidth: 'Breite nach dem Waschen',
    join: 'Streifen verbinden',
    mark: 'Einteilung des Lineals',
    shrinkage: 'Einlaufen beim Waschen',
    increment: 'Verkauft in Schritten von',
    price: 'Preis je yd oder m',
    currency: 'Währung',
    fabric: 'Stoffbedarf',
    buy: 'Kaufen',
    spare: 'Reserve',
    cost: 'Kosten',
  },
  hints: {
    overage: 'wie für das Longarm-Quilten üblich',
    fabricWidth: 'ohne Webkanten; bitte nachmessen',
    shrinkage: 'Baumwolle beim Vorwaschen etwa 3 %',
    mark: 'Zuschnittmaße werden darauf aufgerundet',
  },
  lockedHints: { fabricWidth: 'ohne Webkanten; auf dieser Seite festgelegt' },
  options: {
    increment: { thirds: '1/8 oder 1/3 yd' },
    join: { diagonal: 'im 45°-Winkel', straight: 'gerade' },
    sheet: {
      '': 'Meterware',
      'fat-quarter': { in: 'Fat Quarter, 18 × 22 in', cm: 'Fat Quarter, etwa 50 × 55 cm' },
      'fat-eighth': { in: 'Fat Eighth, 9 × 22 in', cm: 'Fat Eighth, etwa 25 × 55 cm' },
      'square-10': 'Quadrate, 10 in',
      'square-5': 'Quadrate, 5 in',
      'strip-2.5': 'Streifen, 2 1/2 in',
    },
  },
  sentences: {
    quoted: ({ text }) => (text ? `„${text}“` : 'Das'),
    ownWords: ({ text }) => text,
    roundedUp: ({ formula, step }, t) => `${formula}, aufgerundet auf volle Rapporte von ${t.n(step)}`,
    roundedToMark: ({ formula, step }, t) => `${formula}, aufgerundet auf volle ${t.l(step)}`,

    // Why a text cannot be read.
    notLength: ({ text }, t) => `${t.quote(text)} ist keine Länge. Zum Beispiel ${or(LENGTHS, t)}.`,
    twoNumbers: (_, t) => `Zwei Zahlen stehen nebeneinander. Zum Beispiel ${or(TOGETHER, t)} schreiben.`,
    unitFirst: `Die Einheit steht direkt hinter ihrer Zahl. Zum Beispiel ${SUM}.`,
    noComma: 'Ein Komma trennt hier keine Dezimalstellen. Zum Beispiel 52.5 oder 52 1/2 schreiben.',
    twoReadings: ({ text }, t) => `${t.quote(text)} ist nicht eindeutig. Zum Beispiel ${LENGTH} schreiben.`,
    openBracket: `Hinter einer Länge fehlt die schließende Klammer. Zum Beispiel ${BRACKETED}.`,
    divideByZero: `Durch 0 lässt sich nicht teilen. Zum Beispiel ${LENGTH} schreiben.`,
    notPlain: `Eine Länge lässt sich nur mit einer einfachen Zahl malnehmen oder teilen. Zum Beispiel ${PRODUCT}.`,
    tooLong: 'Dieser Text ist zu lang für eine Länge. Zum Beispiel 132 cm schreiben.',
    tooFine: 'Diese Zahl ist zu groß oder zu fein für eine Länge. Zum Beispiel 132 cm schreiben.',
    notStep: ({ text }, t) => `In Schritten von ${t.quote(text)} schneidet kein Laden. ${steps(t)}`,
    stepRange: (_, t) => `Ein Schritt im Laden liegt zwischen 1/8 in und 10 yd. ${steps(t)}`,

    // What is wrong with an input.
    missing: ({ what, like: examples }, t) =>
      `${t.label(what)}: Hier fehlt eine Angabe. ${like(examples, t)}`,
    negative: ({ what }, t) => `${t.label(what)}: nicht weniger als 0. Bitte ohne Minuszeichen schreiben.`,
    noLength: ({ what, like: examples }, t) => `${t.label(what)}: muss mehr als 0 sein. ${like(examples, t)}`,
    tooSmall: ({ what, like: examples }, t) =>
      `${t.label(what)}: muss mindestens 1/64 in sein. ${like(examples, t)}`,
    tooLarge: ({ what, most, like: examples }, t) =>
      `${t.label(what)}: höchstens ${t.l(most)}. Stimmt die Einheit? ${like(examples, t)}`,
    entry: ({ of, number }, t) => t.entry(of, number),
    inList: ({ problem }, t) => `${t.say(problem)} ${several(t)}`,
    tooManyEntries: ({ what, most }, t) => `${t.label(what)}: höchstens ${most} auf einmal. ${several(t)}`,
    twoSides: ({ text, side, other }, t) =>
      `${t.quote(text)} sind zwei Seiten. Hier nur ${side} eintragen und ${other} bei der anderen Seite.`,
    feetForInches: ({ text, feet, length }, t) =>
      `${t.quote(text)} sind ${feet} Fuß, also ${t.l(length)}. Sind Zoll gemeint? Bitte ${feet} in oder ${feet} ft schreiben.`,
    notShortLength: ({ text, like: examples }, t) => `${t.quote(text)} ist keine Länge. ${like(examples, t)}`,
    notSize: ({ text }, t) => `${t.quote(text)} ist keine Größe. Zum Beispiel ${SIZE}.`,
    notNumber: ({ text, like: examples }, t) => `${t.quote(text)} ist keine Zahl. ${like(examples, t)}`,
    outOfRange: ({ what, least, most, like: examples }, t) =>
      `${t.label(what)}: nur von ${least} bis ${most}. ${like(examples, t)}`,
    notWhole: ({ what }, t) => `${t.label(what)}: nur ganze Zahlen, zum Beispiel 4.`,
    lessThanHalfPercent: ({ what, text }, t) =>
      `${t.label(what)}: „${text}“ wäre weniger als 1/2 %. Für 3 % nur 3 schreiben.`,
    notChoice: ({ text, of, choices }, t) =>
      `${t.quote(text)} steht nicht zur Wahl. Möglich: ${or(
        choices.map((code) => t.chosen(of, code)),
        t,
      )}.`,
    notCode: ({ text, choices }, t) => `${t.quote(text)} steht nicht zur Wahl. Möglich: ${or(choices, t)}.`,
    yes: 'ja',
    no: 'nein',
    notCurrency: ({ text }, t) => `${t.quote(text)} ist kein Code aus drei Buchstaben. Zum Beispiel EUR.`,
    otherCurrency: ({ text, named, here }, t) =>
      `${t.quote(text)} ist in ${named}, gerechnet wird hier in ${here}. Bitte in ${here} schreiben, zum Beispiel ${so(PRICE, t)}.`,
    notUnits: 'Als Einheit geht nur in oder cm. Bitte units="cm" oder units="in" schreiben.',
    measuredLess: ({ what, measured, reckoned }, t) =>
      `${t.label(what)}: gemessen ${t.l(measured)}, gerechnet ${t.l(reckoned)}. Stimmt das Maß noch?`,
    overageTooLarge: 'Der Überstand ist größer als der Quilt selbst. Zum Beispiel 10 cm.',

    // Why a list cannot be planned.
    sizeOfNothing: 'Ein Maß muss mehr als 0 sein. Zum Beispiel 9 cm.',
    longerThanCloth: 'Das ist länger als jeder Stoff. Zum Beispiel 110 cm schreiben.',
    wholeCount: 'Die Anzahl als ganze Zahl angeben, zum Beispiel 12.',
    tooManySizes: ({ most }) =>
      `Das sind mehr als ${most} verschiedene Teile. Weniger auf einmal planen, zum Beispiel ${most / 2}.`,
    tooManyPieces: 'Das sind mehr als eine Million Teile. Weniger auf einmal planen, zum Beispiel 1000.',
    tooManyToPlace:
      'Das sind zu viele Teile, um jedes einzeln zu legen. Weniger auf einmal planen, zum Beispiel 1000.',
    largerThanSheet:
      'Das passt nicht auf ein einzelnes Stoffstück. Aus kleineren Teilen zusammensetzen, zum Beispiel 25 cm, oder aus Meterware zuschneiden.',
    largerThanCloth: ({ cloth }, t) =>
      `Das passt nicht auf ${t.l(cloth)} breiten Stoff. Aus kleineren Teilen zusammensetzen oder breiteren Stoff nehmen, zum Beispiel 270 cm.`,

    // Cloth.
    washFirst: 'Stoff vor dem Zuschneiden waschen: Die Zuschnittmaße gelten für gewaschenen Stoff.',
    washedWider: ({ width }, t) =>
      `Gewaschener Stoff ist nicht breiter als vorher: ${t.l(width)}. Noch einmal messen oder den berechneten Wert nehmen.`,
    selvages: ({ width, usable }, t) =>
      `Stoff, der mit ${t.l(width)} Breite verkauft wird, hat ohne Webkanten meist ${t.l(usable)}. Bitte nachmessen und die nutzbare Breite eintragen.`,

    ofCloth: ({ number, says }, t) => `Stoff ${number}: ${t.say(says)}`,

    // Plans.
    planning: ({ done }) => `Der Plan entsteht gerade: ${Math.round(done * 100)} % fertig.`,
    unsound:
      'Dieser Plan hat die Prüfung nicht bestanden und wird nicht gezeigt. Ein Maß etwas ändern oder in Teilen planen.',

    // What is bought.
    about: ({ what, says }, t) => `${t.label(what)}: ${t.say(says)}`,
    onlyToSpare: ({ spare, next }, t) => `Die Reserve ist nur ${t.l(spare)}. ${TOO_CLOSE} ${t.bought(next)}.`,
    nothingToSpare: ({ next }, t) => `Keine Reserve. ${TOO_CLOSE} ${t.bought(next)}.`,
    boughtTogether:
      'Die Einkaufsliste rechnet diesen Stoff mit allem anderen zusammen, was aus ihm geschnitten wird.',
    boughtOfAll: ({ buys }, t) => listed(buys.map((buy) => t.bought(buy))),
    eachUpToStep: ({ step }, t) => `jeder Stoff ${upTo(step, t)}`,
    upToStep: ({ need, below, step, unit }, t) => {
      const inYards = unit === 'yd' ? number(toUnit(need.value, 'yd'), { units: 'in' }) : '';
      // A rounded amount may fall on a step that is not enough.
      const isRough = (t.n(need) + inYards).includes('≈');
      const amount = isRough && below ? `, mehr als ${t.bought(below)}` : inYards && ` = ${inYards} yd`;
      return `${t.l(need)}${amount}, ${upTo(step, t)}`;
    },
    costOf: ({ bought, price }, t) => `${t.value(bought)} × ${t.money(price)}`,

    // Heads of lists.
    clothHead: 'Stoff',
    buyHead: 'Kaufen',
    stripsFromTop: 'Streifen, von oben nach unten',
    stripsHead: 'Streifen',
    stripWidthHead: 'Breite',
    givesHead: 'Daraus jeweils',
    gives: (given, t) => piecesGiven(given, t, 'wie gezeichnet'),
    givesSizes: (given, t) => sizesGiven(given, t, 'wie gezeichnet'),

    // In drawings.
    laidPicture: ({ caption, pieces }, t) =>
      `${t.say(caption)}. Ausgelegt: ${listed(pieces.map((piece) => t.say(piece)))}.`,
    laidOn: ({ fabric, buy }, t) => drawn(fabric, t.bought(buy)),
    laidOnSome: ({ fabric, alike, of }, t) => drawn(fabric, `${alike} von ${t.say(of)} so zuschneiden`),
    laidOnNumbers: ({ fabric, numbers, of }, t) =>
      drawn(fabric, `Nummer ${ranges(numbers)} von ${t.say(of)}`),
    laidSides: ({ short, long }, t) => `${t.n(short)}${long ? ` × ${t.n(long)}` : ''}`,
    quiltSide: ({ side }, t) => `Quilt ${t.l(side)}`,
    topSide: ({ side }, t) => `Top ${t.l(side)}`,
    boughtSide: ({ side }, t) => `gekauft ${t.l(side)}`,
  },
};
