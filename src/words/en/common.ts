import type { Example } from '../../ledger/field.js';
import { number } from '../../measure/format.js';
import { toUnit } from '../../measure/units.js';
import { OVERAGE } from '../../trade/conventions.js';
import type { CommonWords } from '../common.js';
import { piecesGiven, sizesGiven } from '../gives.js';
import { ranges } from '../ranges.js';

/** `across, along or mitred`. */
const or = (all: readonly string[]): string => all.join(', ').replace(/, ([^,]*)$/, ' or $1');
const like = (examples: Example): string => `Write it like ${examples.join(' or ')}.`;
/** A shop's step, as a sentence names it. */
export const stepOf = (text: string): string =>
  /^\s*thirds\s*$/i.test(text) ? 'eighth or third of a yard' : text;

const STEPS = '1/8 yd, 1/4 yd, thirds or 10 cm';
const SEVERAL = 'Put commas between several, like 2, 4 1/2.';

/** What is drawn of a fabric: `Fabric A: 2 yd`. */
const drawn = (fabric: string, what: string): string =>
  `${fabric ? `Fabric ${fabric}` : 'The cloth'}: ${what}`;

/** What all calculators share, in English. */
export const common: CommonWords = {
  lang: 'en',
  labels: {
    width: 'Quilt width',
    length: 'Quilt length',
    overage: 'Overage, each side',
    fabricWidth: 'Usable width of the cloth',
    washedWidth: 'Width after a wash',
    join: 'Strips joined',
    mark: 'Ruler’s marks',
    shrinkage: 'Shrinkage',
    increment: 'The shop cuts by',
    price: 'Price of a yard or metre',
    currency: 'Currency',
    fabric: 'Cloth needed',
    buy: 'Buy',
    spare: 'Spare',
    cost: 'Cost',
  },
  hints: {
    overage: 'what longarm quilters ask for',
    fabricWidth: 'selvages off; measure yours',
    shrinkage: 'cotton about 3 % when prewashed',
    mark: 'cut sizes go up to the next mark',
  },
  lockedHints: { fabricWidth: 'selvages off; fixed on this page' },
  options: {
    increment: { thirds: '1/8 or 1/3 yd' },
    join: { diagonal: 'at 45°', straight: 'straight' },
    sheet: {
      '': 'cloth by length',
      'fat-quarter': { in: 'fat quarter, 18 × 22 in', cm: 'fat quarter, about 50 × 55 cm' },
      'fat-eighth': { in: 'fat eighth, 9 × 22 in', cm: 'fat eighth, about 25 × 55 cm' },
      'square-10': '10 in squares',
      'square-5': '5 in squares',
      'strip-2.5': '2 1/2 in strips',
    },
  },
  sentences: {
    quoted: ({ text }) => (text ? `“${text}”` : 'This'),
    ownWords: ({ text }) => text,
    roundedUp: ({ formula, step }, t) => `${formula}, rounded up to whole repeats of ${t.n(step)}`,
    roundedToMark: ({ formula, step }, t) => `${formula}, rounded up to the next ${t.l(step)}`,

    // Why a text cannot be read.
    notLength: ({ text }, t) => `${t.quote(text)} is not a length. Write it like 52 1/2, 52 in or 132 cm.`,
    twoNumbers: 'Two numbers stand side by side. Write it like 52 1/2, 4 ft 6 in or 12 + 4.',
    unitFirst: 'A unit goes right after its number. Write it like 2 in + 4 in.',
    noComma: 'A comma does not mark decimals here. Write it like 52.5 or 52 1/2.',
    twoReadings: ({ text }, t) => `${t.quote(text)} can be read two ways. Write it like 52 1/2.`,
    openBracket: 'Every bracket has to close again. Write it like 2 * (12 + 4).',
    divideByZero: 'Nothing can be divided by 0. Write it like 52 1/2.',
    notPlain: 'Only plain numbers multiply or divide a length. Write it like 3 * 12 in.',
    tooLong: 'This is too long for a length. Write it like 52 1/2.',
    tooFine: 'This is too large or too fine for a length. Write it like 52 1/2.',
    notStep: ({ text }, t) => `${t.quote(text)} is not a step a shop cuts in. Write it like ${STEPS}.`,
    stepRange: `A shop’s step is between 1/8 in and 10 yd. Write it like ${STEPS}.`,

    // What is wrong with an input.
    missing: ({ what, like: examples }, t) => `${t.label(what)} is missing. ${like(examples)}`,
    negative: ({ what }, t) => `${t.label(what)} cannot be less than 0. Write it without the minus sign.`,
    noLength: ({ what, like: examples }, t) => `${t.label(what)} has to be more than 0. ${like(examples)}`,
    tooSmall: ({ what, like: examples }, t) =>
      `${t.label(what)} has to be at least ${t.usual({ in: '1/64 in', cm: '0.4 mm' })}. ${like(examples)}`,
    tooLarge: ({ what, most, like: examples }, t) =>
      `${t.label(what)} can be at most ${t.l(most)} here. Is the unit right? ${like(examples)}`,
    entry: ({ of, number }, t) => t.entry(of, number),
    inList: ({ problem }, t) => `${t.say(problem)} ${SEVERAL}`,
    tooManyEntries: ({ what, most }, t) =>
      `${t.label(what)}: we can work out at most ${most} at once. ${SEVERAL}`,
    twoSides: ({ text, side, other }, t) =>
      `${t.quote(text)} is two sides. Write one here, like ${side}, and ${other} as the other.`,
    feetForInches: ({ text, feet, length }, t) =>
      `${t.quote(text)} is ${feet} feet, ${t.l(length)}. Did you mean ${feet} in? Write ${feet} in, or ${feet} ft.`,
    notShortLength: ({ text, like: examples }, t) => `${t.quote(text)} is not a length. ${like(examples)}`,
    notSize: ({ text }, t) => `${t.quote(text)} is not a size. Write it like 60 x 80.`,
    notNumber: ({ text, like: examples }, t) => `${t.quote(text)} is not a number. ${like(examples)}`,
    outOfRange: ({ what, least, most, like: examples }, t) =>
      `${t.label(what)} is between ${least} and ${most}. ${like(examples)}`,
    notWhole: ({ what }, t) => `${t.label(what)} is a whole number. Write it like 4.`,
    lessThanHalfPercent: ({ what, text }, t) =>
      `${t.label(what)}: “${text}” would be less than 1/2 %. Write it like 3, for 3 %.`,
    notChoice: ({ text, of, choices }, t) =>
      `${t.quote(text)} is not one of the choices. Choose ${or(choices.map((code) => t.chosen(of, code)))}.`,
    notCode: ({ text, choices }, t) => `${t.quote(text)} is not one of the choices. Write ${or(choices)}.`,
    yes: 'yes',
    no: 'no',
    notCurrency: ({ text }, t) => `${t.quote(text)} is not a code of three letters. Write it like EUR.`,
    otherCurrency: ({ text, named, here }, t) =>
      `${t.quote(text)} is in ${named}, but prices here are in ${here}. Write it in ${here}, like 12.50.`,
    notUnits: 'The units can be in or cm. Write units="in" or units="cm".',
    measuredLess: ({ what, measured, reckoned }, t) =>
      `${t.label(what)}: you measured ${t.l(measured)}, and we worked out ${t.l(reckoned)}. Is your measure still right?`,
    overageTooLarge: (_, t) =>
      `The overage is larger than the quilt itself. Write it like ${t.usual(OVERAGE)}.`,

    // Why a list cannot be planned.
    sizeOfNothing: 'A size has to be more than 0. Write it like 2 1/2.',
    longerThanCloth: 'This is longer than any cloth. Write it in inches, like 42 1/2.',
    wholeCount: 'Say how many as a whole number, like 12.',
    tooManySizes: ({ most }) =>
      `This is more than ${most} different pieces. Plan fewer at a time, like ${most / 2}.`,
    tooManyPieces: 'This is more than a million pieces. Plan fewer at a time, like 1000.',
    tooManyToPlace: 'These are too many pieces to place one by one. Plan fewer at a time, like 1000.',
    largerThanSheet: (_, t) =>
      `This does not fit on one sheet. Join it from pieces, like ${t.usual({ in: '10 in', cm: '25 cm' })}, or cut it from cloth by length.`,
    largerThanCloth: ({ cloth }, t) =>
      `This does not fit on cloth ${t.l(cloth)} wide. Join it from smaller pieces, or give wider cloth, like ${t.usual({ in: '108 in', cm: '270 cm' })}.`,

    // Cloth.
    washFirst: 'Wash the cloth before you cut it: cut sizes are of washed cloth.',
    washedWider: ({ width }, t) =>
      `Cloth does not get wider in the wash: it was ${t.l(width)}. Measure it again, or put the old width back.`,
    selvages: ({ width, usable }, t) =>
      `Cloth sold as ${t.l(width)} wide is usually ${t.l(usable)} without its selvages. Measure yours and write what is usable.`,

    ofCloth: ({ number, says }, t) => `Cloth ${number}: ${t.say(says)}`,

    // Plans.
    planning: ({ done }) => `The layout is being planned: ${Math.round(done * 100)} % done.`,
    unsound:
      'This layout did not pass its check and is not shown. Change a size a little, or plan it in parts.',

    // What is bought.
    about: ({ what, says }, t) => `${t.label(what)}: ${t.say(says)}`,
    onlyToSpare: ({ spare, next }, t) =>
      `Only ${t.l(spare)} to spare: a crooked cut in the shop or a prewash could leave you short. The next step up is ${t.bought(next)}.`,
    nothingToSpare: ({ next }, t) =>
      `Nothing to spare: a crooked cut in the shop or a prewash could leave you short. The next step up is ${t.bought(next)}.`,
    boughtTogether: 'The shopping list adds this cloth to everything else from the same fabric.',
    boughtOfAll: ({ buys }, t) => buys.map((buy) => t.bought(buy)).join(' and '),
    eachUpToStep: ({ step }, t) => `each cloth rounded up to the next ${stepOf(t.stated(step))}`,
    upToStep: ({ need, below, step, unit }, t) => {
      const inYards = unit === 'yd' ? number(toUnit(need.value, 'yd'), { units: 'in' }) : '';
      // A rounded amount may fall on a step that is not enough.
      const isRough = (t.n(need) + inYards).includes('≈');
      const amount = isRough && below ? `, more than ${t.bought(below)}` : inYards && ` = ${inYards} yd`;
      return `${t.l(need)}${amount}, rounded up to the next ${stepOf(t.stated(step))}`;
    },
    costOf: ({ bought, price }, t) => `${t.value(bought)} × ${t.money(price)}`,

    // Heads of lists.
    clothHead: 'Cloth',
    buyHead: 'Buy',
    stripsFromTop: 'Strips, from the top of the cloth',
    stripsHead: 'Strips',
    stripWidthHead: 'Width',
    givesHead: 'What each gives',
    gives: (given, t) => piecesGiven(given, t, 'as drawn'),
    givesSizes: (given, t) => sizesGiven(given, t, 'as drawn'),

    // In drawings.
    laidPicture: ({ caption, pieces }, t) =>
      `${t.say(caption)}. Laid out: ${pieces.map((piece) => t.say(piece)).join(', ')}.`,
    laidOn: ({ fabric, buy }, t) => drawn(fabric, t.bought(buy)),
    laidOnSome: ({ fabric, alike, of }, t) => drawn(fabric, `cut ${alike} of the ${t.say(of)} like this`),
    laidOnNumbers: ({ fabric, numbers, of }, t) =>
      drawn(fabric, `number${numbers.length > 1 ? 's' : ''} ${ranges(numbers)} of the ${t.say(of)}`),
    laidSides: ({ short, long }, t) => `${t.n(short)}${long ? ` × ${t.n(long)}` : ''}`,
    quiltSide: ({ side }, t) => `quilt ${t.l(side)}`,
    topSide: ({ side }, t) => `quilt top ${t.l(side)}`,
    boughtSide: ({ side }, t) => `bought ${t.l(side)}`,
  },
};
