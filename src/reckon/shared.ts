import { COTTON_WIDTH, RULER_MARK, STEP } from '../trade/conventions.js';
import type { Fields } from './fields.js';

/** The finished quilt's two sides. */
export const quiltFields = {
  width: { kind: 'length', label: 'Quilt width' },
  length: { kind: 'length', label: 'Quilt length' },
} as const satisfies Fields;

/** The cloth as it lies in the shop. */
export const clothFields = {
  fabricWidth: { kind: 'length', label: 'Usable width of the cloth', initial: COTTON_WIDTH, hint: 'selvages off; measure yours' },
} as const satisfies Fields;

/** How the cloth is washed, sold and priced. */
export const shopFields = {
  shrinkage: { kind: 'percent', label: 'Shrinkage', initial: '0', hint: 'cotton about 3 % when prewashed', more: true },
  increment: { kind: 'step', label: 'The shop cuts by', initial: STEP, more: true },
  price: { kind: 'money', label: 'Price of a yard or metre', optional: true, more: true },
  currency: { kind: 'text', label: 'Currency', optional: true, more: true, pattern: /^[a-z]{3}$/i, example: 'EUR' },
} as const satisfies Fields;

/** What the reader's ruler marks; cut sizes fall on it. */
export const markField = {
  mark: { kind: 'mark', label: 'Cut to marks of', initial: RULER_MARK, more: true },
} as const satisfies Fields;
