import { least, most, type Exact } from '../measure/exact.js';
import { sayings } from '../measure/message.js';
import { OVERAGE } from '../trade/conventions.js';
import type { Field } from './field.js';
import { countField } from './kinds.js';
import type { Ledger } from './ledger.js';
import { lengthField, usualLength, sideField } from './lengths.js';
import type { Quantity } from './quantity.js';

/** The finished quilt's two sides. */
export const quiltFields = { width: sideField(), length: sideField() };

/** How many blocks there are of a kind. One that takes what others leave of a top may be left with none. */
export const blocksField = /* @__PURE__ */ countField(20_000, { initial: '1' }, 0);

/** What is added round the quilt for its back and its batting. */
export const overageField = lengthField({ initial: OVERAGE, zero: true, most: '36 in' });

/** The most lengths side by side. Nobody joins more, and a page could not draw them. */
export const MOST_JOINED = 100;

/** A rectangle's two sides. */
export interface Size<Length = Exact> {
  width: Length;
  length: Length;
}

/** The same size with its short side first, for a piece that may lie either way round. */
export const shortFirst = ({ width, length }: Size): Size => ({
  width: least(width, length),
  length: most(width, length),
});

/** The exact sides of a size. */
export const sidesOf = ({ width, length }: Size<Quantity>): Size => ({
  width: width.value,
  length: length.value,
});

/** The sides of a size across the cloth and along it. Usually its length lies along the cloth. */
export const facing = <Length>(
  { width, length }: Size<Length>,
  turned: boolean,
): [across: Length, along: Length] => (turned ? [length, width] : [width, length]);

export interface OverageSayings {
  overageTooLarge: undefined;
}

const say = sayings<OverageSayings>();

/** Adds the rows for a quilt with its overage, for a backing or batting. Gives back the size that is needed. */
export const withOverage = (
  ledger: Ledger<{ overage: Field<Exact> }, 'needWidth' | 'needLength'>,
  quilt: Size<Quantity>,
): Size<Quantity> => {
  ledger.given('overage');
  const { overage } = ledger.inputs;
  const { width, length } = sidesOf(quilt);
  if (overage.value.gt(most(width, length, usualLength(OVERAGE, ledger.style))))
    ledger.refuse('overage', say('overageTooLarge'));
  return {
    width: ledger.row('needWidth', quilt.width.plus(overage.times(2))),
    length: ledger.row('needLength', quilt.length.plus(overage.times(2))),
  };
};
