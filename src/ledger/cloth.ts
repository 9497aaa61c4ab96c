import { exact, ONE, type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import { sayings, type Message } from '../measure/message.js';
import { INCHES, toUnit } from '../measure/units.js';
import { BOLT_WIDTHS } from '../trade/cloths.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import type { Field } from './field.js';
import { percentField } from './kinds.js';
import type { Ledger } from './ledger.js';
import { lengthField } from './lengths.js';
import type { Quantity } from './quantity.js';

/** The cloth as it lies in the shop. */
export const clothFields = { fabricWidth: lengthField({ initial: COTTON_WIDTH }) };

/** How much it shrinks in the wash. */
export const shrinkageField = percentField({ initial: '0', more: true });

export interface ClothSayings {
  washFirst: undefined;
  washedWider: { width: Exact };
  /** Cloth sold by this width has less without its selvages. */
  selvages: { width: Exact; usable: Exact };
  /** Something said of one of several cloths, by its number. */
  ofCloth: { number: number; says: Message };
}

export const sayOfCloth = sayings<ClothSayings>();

/** A ledger of something that is cut from cloth. */
export type ClothLedger = Ledger<{ fabricWidth: Field<Exact>; shrinkage: Field<Exact> }, 'washedWidth'>;

/** Cloth as it is cut: its usable width, once washed, and what a wash leaves of any length. */
export interface Cloth {
  width: Quantity;
  /** The same as sold. */
  sold: Quantity;
  /** What a wash leaves of one inch. */
  kept: Exact;
  /** What a wash leaves of so much cloth. */
  washed: (sold: Quantity) => Quantity;
  /** The cloth to buy for so much of it once washed. */
  toBuy: (washed: Quantity) => Quantity;
}

/** That a width is one that cloth is sold as, selvages and all; nothing where it is none. */
export const selvagesOf = (width: Exact, { units }: Style): Message[] => {
  const wide = toUnit(width, units);
  const [, , usable] = BOLT_WIDTHS[units].find(([from, to]) => wide.gte(from) && wide.lte(to)) ?? [];
  return usable ? [sayOfCloth('selvages', { width, usable: exact(usable).mul(INCHES[units]) })] : [];
};

/** Adds the cloth's usable width, and its width once washed where it shrinks. */
export const clothOf = (ledger: ClothLedger): Cloth => {
  const { fabricWidth: sold, shrinkage } = ledger.inputs;
  const kept = ONE.sub(shrinkage.value);
  ledger.given('fabricWidth');
  ledger.notes.push(...selvagesOf(sold.value, ledger.style));
  if (kept.equals(1)) {
    const same = (length: Quantity): Quantity => length;
    return { width: sold, sold, kept, washed: same, toBuy: same };
  }
  ledger.given('shrinkage');
  ledger.note(sayOfCloth('washFirst'));
  const washed: Cloth['washed'] = (sold) => sold.lessPercent(shrinkage);
  const width = ledger.measurable('washedWidth', washed(sold));
  if (width.value.gt(sold.value))
    ledger.refuse('washedWidth', sayOfCloth('washedWider', { width: sold.value }));
  return { width, sold, kept, washed, toBuy: (length) => length.beforeLoss(shrinkage) };
};
