import { sayInList, type Listing } from '../../ledger/listing.js';
import type { Exact } from '../../measure/exact.js';
import { say, type BattingAnswer } from './shape.js';

const bySize = <T>(things: T[], size: (thing: T) => Exact): T[] =>
  [...things].sort((a, b) => size(a).compare(size(b)));

/** Every package, and every way to cut it from a roll. */
export const lists = ({ packages, rolls }: BattingAnswer): Listing[] => [
  {
    caption: say('packageList'),
    head: [say('packageHead'), say('sizeHead'), say('fitsHead')],
    rows: bySize(packages, ({ width, length }) => width.mul(length)).map((pack) => [
      pack.name,
      say('size', pack),
      say('fits', pack),
    ]),
  },
  {
    caption: say('rollList'),
    head: [say('rollHead'), say('lengthsHead'), sayInList('buyHead')],
    rows: bySize(rolls, ({ width }) => width).map((roll) => [
      roll.width,
      say('lengthsToCut', roll),
      roll.buy,
    ]),
  },
];
