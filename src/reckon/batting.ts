import { rollPlans, type RollPlan } from '../cutting/rolls.js';
import { exact, ONE, ZERO, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { purchase, toStep, type Purchase } from '../measure/shop.js';
import { PACKAGES, ROLLS } from '../trade/batting.js';
import { MATTRESSES } from '../trade/beds.js';
import { BED_DROP, OVERAGE } from '../trade/conventions.js';
import { buyFromRoll, buyPackage } from './batting-buy.js';
import { quiltOrBed } from './bed.js';
import { Book, type Answer, type Input, type Refused } from './book.js';
import { rankPackages, readPackages, writePackages } from './packages.js';
import { quiltFields, shopFields } from './shared.js';
import type { Fields } from './fields.js';

const beds = Object.entries(MATTRESSES).map(([key, { name }]) => [key, name] as const);

export const battingFields = {
  bed: {
    kind: 'choice',
    label: 'Quilt for a bed',
    initial: 'none',
    options: { none: 'no bed', ...Object.fromEntries(beds) },
  },
  width: { ...quiltFields.width, optional: true },
  length: { ...quiltFields.length, optional: true },
  drop: {
    kind: 'length',
    label: 'Drop over the edge',
    initial: BED_DROP,
    zero: true,
    most: '60 in',
    hint: 'at both sides and the foot',
  },
  tuck: { kind: 'length', label: 'Tuck under the pillows', initial: '0', zero: true, most: '60 in' },
  overage: {
    kind: 'length',
    label: 'Overage, each side',
    initial: OVERAGE,
    zero: true,
    most: '36 in',
    hint: 'what longarm quilters ask for',
  },
  roll: {
    kind: 'lengths',
    label: 'From a roll this wide',
    optional: true,
    most: '400 in',
    hint: 'in place of a package',
  },
  packages: {
    kind: 'own',
    label: 'Packages',
    optional: true,
    read: readPackages,
    write: writePackages,
    hint: 'the usual sizes where nothing is written',
    more: true,
  },
  ...shopFields,
  shrinkage: { ...shopFields.shrinkage, hint: 'cotton batting 3 to 5 %' },
  price: { ...shopFields.price, label: 'Price of a yard or metre from the roll' },
} as const satisfies Fields;

/** Input of {@link reckonBatting}: `width` and `length`, or `bed`, `drop` and `tuck`; `overage`, `packages`, `roll`, … */
export type BattingInput = Input<typeof battingFields>;

/** A rectangle's two sides. */
export interface Size<Length = string> {
  width: Length;
  length: Length;
}

/** A package that is sold, and whether it will do. Lengths are exact inches. */
export interface BattingPackageResult extends Size {
  name: string;
  /** Whether it covers the batting needed, one way round or the other. */
  fits: boolean;
  /** The price of one, where the list gives it. */
  price?: string;
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
  /** Every package, best first: those that fit, by price where the whole list has prices, else by area. */
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
    const { n, l } = book;
    const { overage, roll, shrinkage, increment, bed } = book.values;
    const { quilt, ids } = quiltOrBed(book);
    book.given('overage');
    const need: Size<Exact> = {
      width: quilt.width.add(overage.mul(2)),
      length: quilt.length.add(overage.mul(2)),
    };
    book.row(
      'needWidth',
      'Batting width',
      need.width,
      `${n(quilt.width)} + 2 × ${n(overage)} = ${l(need.width)}`,
      [ids.width, 'overage'],
    );
    book.row(
      'needLength',
      'Batting length',
      need.length,
      `${n(quilt.length)} + 2 × ${n(overage)} = ${l(need.length)}`,
      [ids.length, 'overage'],
    );
    book.given('roll', 'packages', 'shrinkage', 'increment', 'price', 'currency');
    const kept = ONE.sub(shrinkage);
    const washed: Size<Exact> = { width: quilt.width.mul(kept), length: quilt.length.mul(kept) };
    if (shrinkage.gt(ZERO))
      book.row(
        'washed',
        'Quilt once washed, about',
        book.size(washed.width, washed.length),
        `${n(quilt.width)} and ${n(quilt.length)}, each × (1 − ${book.percent(shrinkage)})`,
        [ids.width, ids.length, 'shrinkage'],
      );

    const list = book.values.packages ?? readPackages(PACKAGES, { units: 'in' });
    const packages = rankPackages(list, need);
    const wanted = roll?.length ? roll : undefined;
    const plans = rollPlans(wanted ?? ROLLS.map((width) => exact(width)), need);
    const best = packages.find(({ fits }) => fits);
    const bought = best && !wanted ? buyPackage(book, best, need) : buyFromRoll(book, plans[0]!, need);
    if (bed === 'crib' || best?.name === 'crib')
      book.notes.push(
        'A quilt does not belong in a baby’s sleep space: that is a bare crib with a fitted sheet. Follow your local guidance.',
      );
    const written = ({ width, length }: Size<Exact>): Size => ({
      width: mixed(width),
      length: mixed(length),
    });
    return {
      ...bought,
      need: written(need),
      quilt: written(quilt),
      washed: written(washed),
      packages: packages.map(({ name, fits, price, ...size }) => ({
        name,
        ...written(size),
        fits,
        ...(price && { price: price.valueOf().toFixed(2) }),
      })),
      rolls: plans.map((plan) => ({
        width: mixed(plan.roll),
        lengths: plan.lengths,
        length: mixed(plan.each),
        direction: plan.direction,
        seams: plan.lengths - 1,
        fabric: mixed(plan.fabric),
        buy: purchase(toStep(plan.fabric, increment), increment, book.style.comma),
      })),
    };
  });
};
