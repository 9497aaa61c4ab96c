import { exact, type Exact } from './exact.js';

/** What a bare number means, and what answers are shown in. */
export type Units = 'in' | 'cm';

/** What was written for them; these where it is neither. */
export const unitsOr = (written: unknown, otherwise: Units): Units =>
  written === 'cm' || written === 'in' ? written : otherwise;

/** Inches in one of each unit. International yard and pound agreement, 1959: 1 yd = 0.9144 m exactly. */
export const INCHES = {
  in: exact(1),
  ft: exact(12),
  yd: exact(36),
  mm: exact(5, 127),
  cm: exact(50, 127),
  m: exact(5000, 127),
} as const satisfies Record<string, Exact>;

export type Unit = keyof typeof INCHES;

export const toUnit = (inches: Exact, unit: Unit): Exact => inches.div(INCHES[unit]);
export const fromUnit = (amount: Exact, unit: Unit): Exact => amount.mul(INCHES[unit]);

/** Whether a language writes decimals with a comma ("52,5"). An unknown language does not. */
export const writesComma = (lang: string | undefined): boolean => {
  try {
    return new Intl.NumberFormat(lang || 'en').format(1.5).includes(',');
  } catch {
    return false;
  }
};
