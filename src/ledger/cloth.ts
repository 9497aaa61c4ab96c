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
  /** Cloth that is sold with this width has less without its selvages. */
  selvages: { width: Exact; usable: Exact };
  /** A message about one of several cloths, with its number. */
  ofCloth: { number: number; says: Message };
}

export const sayOfCloth = sayings<ClothSayings>();

/** The ledger of a calculator that cuts from cloth. */
export type ClothLedger = Ledger<{ fabricWidth: Field<Exact>; shrinkage: Field<Exact> }, 'washedWidth'>;

/** The cloth to cut from: its usable width after the wash, and how much a wash leaves of a length. */
export interface Cloth {
  width: Quantity;
  /** The same as sold. */
  sold: Quantity;
  /** How much a wash leaves of one inch. */
  kept: Exact;
  /** How much a wash leaves of this length. */
  washed: (sold: Quantity) => Quantity;
  /** How much cloth to buy, so that this length is left after the wash. */
  toBuy: (washed: Quantity) => Quantity;
}

/** Warns if a width is one that shops name with selvages; empty if it is not. */
export const selvagesOf = (width: Exact, { units }: Style): Message[] => {
  const wide = toUnit(width, units);
  const [, , usable] = BOLT_WIDTHS[units].find(([from, to]) => wide.gte(from) && wide.lte(to)) ?? [];
  return usable ? [sayOfCloth('selvages', { width, usable: exact(usable).mul(INCHES[units]) })] : [];
};

/** Adds the rows of the cloth's usable width and, if it shrinks, its width after the wash. */
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
