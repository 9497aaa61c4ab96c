import { mixed } from '../measure/format.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { quoted } from '../measure/parse.js';

type Values = { text: string; cloth: Exact };
const STEPS = '1/8 yd, 1/4 yd, thirds or 10 cm';

const SENTENCES: Record<string, (values: Values) => string> = {
  notLength: ({ text }) => `${quoted(text)} is not a length. Write it like 52 1/2, 52 in or 132 cm.`,
  twoNumbers: () => 'Two numbers stand side by side. Write it like 52 1/2, 4 ft 6 in or 12 + 4.',
  unitFirst: () => 'A unit goes right after its number. Write it like 2 in + 4 in.',
  noComma: () => 'A comma does not mark decimals here. Write it like 52.5 or 52 1/2.',
  twoReadings: ({ text }) => `${quoted(text)} can be read two ways. Write it like 52 1/2.`,
  openBracket: () => 'A bracket has to close after a length. Write it like 2 * (12 + 4).',
  divideByZero: () => 'Nothing can be divided by 0. Write it like 52 1/2.',
  notPlain: () => 'Only plain numbers multiply or divide a length. Write it like 3 * 12 in.',
  tooLong: () => 'That is too long to be a length. Write it like 52 1/2.',
  tooFine: () => 'That is too large or too fine to be a length. Write it like 52 1/2.',
  notStep: ({ text }) => `${quoted(text)} is not a step a shop cuts in. Write it like ${STEPS}.`,
  stepRange: () => `A shop’s step is between 1/8 in and 10 yd. Write it like ${STEPS}.`,
  sizeOfNothing: () => 'A size has to be more than nothing. Write it like 2 1/2.',
  longerThanCloth: () => 'That is longer than any cloth. Write it in inches, like 42 1/2.',
  wholeCount: () => 'Say how many as a whole number, like 12.',
  tooManySizes: () => 'That is more than 1000 different pieces. Plan fewer at a time, like 500.',
  tooManyPieces: () => 'That is more than a million pieces. Plan fewer at a time, like 1000.',
  tooManyToPlace: () => 'That is too many pieces to place one by one. Plan fewer at a time, like 1000.',
  largerThanSheet: () =>
    'This does not fit on one sheet. Join it from pieces, like 10 in, or cut it from cloth by length.',
  largerThanCloth: ({ cloth }) =>
    `This does not fit on cloth ${mixed(cloth)} in wide. Join it from smaller pieces, or give wider cloth, like 108 in.`,
};

/** What calculators that are not yet written in the ledger say of what cannot be read or planned. */
export const sentence = ({ code, values }: Message): string => SENTENCES[code]!(values as Values);
