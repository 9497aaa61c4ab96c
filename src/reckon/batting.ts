import { rollPlans, type RollPlan } from '../planner/rolls.js';
import { exact, ONE } from '../measure/exact.js';
import type { Purchase } from '../measure/shop.js';
import { PACKAGES, ROLLS } from '../trade/batting.js';
import { MATTRESSES } from '../trade/beds.js';
import { BED_DROP } from '../trade/conventions.js';
import { buyFromRoll, buyPackage } from './batting-buy.js';
import { quiltOrBed } from './bed.js';
import type { Answer, Input, Refused } from './answer.js';
import { Book } from './book.js';
import { choiceField, lengthField, lengthsField, optional, type Field } from './fields.js';
import { packagesInUnit, rankPackages, readPackages, writePackages, type Package } from './packages.js';
import { overageField, quiltFields, shopFields, withOverage, type Size } from './shared.js';

const beds = Object.entries(MATTRESSES).map(([key, { name }]): [string, string] => [key, name]);

/** A shop's own list. */
const packagesField: Field<Package[]> = {
  kind: 'own',
  label: 'Packages',
  hint: 'the usual sizes where nothing is written',
  more: true,
  read: readPackages,
  write: (_packages, _style, raw) => writePackages(raw),
  marked: packagesInUnit,
};

export const battingFields = {
  bed: choiceField('Quilt for a bed', { none: 'no bed', ...Object.fromEntries(beds) }),
  width: optional(quiltFields.width),
  length: optional(quiltFields.length),
  drop: lengthField('Drop over the edge', {
    initial: BED_DROP,
    zero: true,
    most: '60 in',
    hint: 'at both sides and the foot',
  }),
  tuck: lengthField('Tuck under the pillows', { initial: '0', zero: true, most: '60 in' }),
  overage: overageField,
  roll: optional(lengthsField('From a roll this wide', { most: '400 in', hint: 'in place of a package' })),
  packages: optional(packagesField),
  ...shopFields,
  shrinkage: { ...shopFields.shrinkage, hint: 'cotton batting 3 to 5 %' },
  price: { ...shopFields.price, label: 'Price of a yard or metre from the roll' },
};

/** Input of {@link reckonBatting}: `width` and `length`, or `bed`, `drop` and `tuck`; `overage`, `packages`, `roll`, … */
export type BattingInput = Input<typeof battingFields>;

/** A package that is sold, and whether it will do. Lengths are exact inches. */
export interface BattingPackageResult extends Size {
  name: string;
  /** Whether it covers the batting needed, one way round or the other. */
  fits: boolean;
  /** The price of one, where the list gives it: a decimal number, and as it is shown. */
  price?: string;
  priceText?: string;
}

/** One way to cut the batting from a roll. Lengths are exact inches. */
export interface BattingRoll {
  /** How wide the roll is. */
  width: string;
  /** Lengths side by side: one, or two butted edge to edge; more only where no roll does with two. */
  lengths: number;
  /** What each is cut to. */
  length: string;
  /** `lengthwise`: the roll's length runs along the quilt's length; `crosswise`: across it. */
  direction: RollPlan['direction'];
  seams: number;
  fabric: string;
  buy: Purchase;
}

/** What {@link reckonBatting} gives back. */
export interface BattingResult extends Answer {
  /** The batting's size before quilting. */
  need: Size;
  /** The finished quilt: as given, or for the bed. */
  quilt: Size;
  /** About what the quilt will be once washed. */
  washed: Size;
  /** Every package, best first: those that fit, by price, and those without a price after them by area. */
  packages: BattingPackageResult[];
  /** Ways to cut it from a roll, best first: the fewest lengths, then the least batting. */
  rolls: BattingRoll[];
}

/**
 * Batting for a quilt, from a package or from the roll, and the quilt's size where it is for a bed. Impossible inputs
 * give `errors`, never an exception.
 */
export const reckonBatting = (input: BattingInput = {}): BattingResult | Refused => {
  const book = new Book(battingFields, input);
  if (book.values.bed === 'none') book.require('width', 'length');
  return book.finish<BattingResult>(() => {
    const { roll, shrinkage, bed } = book.values;
    const prices = book.values.packages?.map(({ priced }) => priced) ?? [];
    book.adopt(...prices);
    book.blame('packages', () => prices.forEach((price) => book.sameCurrency(price)));
    const { quilt, rows } = quiltOrBed(book);
    const need = withOverage(book, 'Batting', quilt, rows);
    book.given('roll', 'packages', 'shrinkage', 'increment', 'price', 'currency');
    const kept = ONE.sub(shrinkage);
    const washed = { width: quilt.width.mul(kept), length: quilt.length.mul(kept) };
    if (shrinkage.gt(0))
      book.row(
        'washed',
        'Quilt once washed, about',
        book.size(washed.width, washed.length),
        `{${rows.width}} and {${rows.length}}, each × (1 − {shrinkage})`,
      );

    const packages = rankPackages(book.values.packages ?? readPackages(PACKAGES, { units: 'in' }), need);
    const wanted = roll?.length ? roll : undefined;
    const plans = rollPlans(wanted ?? ROLLS.map((width) => exact(width)), need);
    const best = packages.find(({ fits }) => fits);
    if (bed === 'crib' || best?.name === 'crib')
      book.notes.push(
        'A quilt does not belong in a baby’s sleep space: that is a bare crib with a fitted sheet. Follow your local guidance.',
      );
    return {
      ...(best && !wanted ? buyPackage(book, best, need) : buyFromRoll(book, plans[0]!, need)),
      need,
      quilt,
      washed,
      packages: packages.map(({ name, width, length, fits, price }) => {
        const sum = price && book.sum(price, price);
        return { name, width, length, fits, price: sum?.amount, priceText: sum?.text };
      }),
      rolls: plans.map(({ roll, lengths, each, direction, fabric }) => ({
        width: roll,
        lengths,
        length: each,
        direction,
        seams: lengths - 1,
        fabric,
        buy: book.toBuy(fabric),
      })),
    };
  });
};
