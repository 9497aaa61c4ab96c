import type { Operation, Quantity } from '../ledger/quantity.js';

/** The operations that round. */
export type Rounding = 'up' | 'step' | 'mark' | 'coin';

/** How to write numbers and rounding. */
export interface Numerals {
  n(value: Quantity): string;
  rounded(how: Rounding, formula: string, step: Quantity): string;
}

/** How strongly an operation binds. A weaker one inside it gets brackets. */
const STRENGTH: Partial<Record<Operation, number>> = {
  up: 0,
  step: 0,
  mark: 0,
  coin: 0,
  '+': 1,
  '−': 1,
  '×': 2,
  '×√2': 2,
  '÷': 2,
  '÷√2': 2,
};
const strengthOf = ({ operation }: Quantity): number => STRENGTH[operation] ?? 3;

const bracketed = (quantity: Quantity, least: number, t: Numerals): string => {
  const text = formulaOf(quantity, t);
  return strengthOf(quantity) < least ? `(${text})` : text;
};

/** A formula with its numbers filled in: `58 + 2 × 4`. */
export const formulaOf = (quantity: Quantity, t: Numerals): string => {
  const { operation, parts } = quantity;
  const [first, second] = parts;
  if (!first || operation === 'row' || operation === 'number' || operation === 'result') return t.n(quantity);
  const side = (part: Quantity, least: number): string => bracketed(part, least, t);
  switch (operation) {
    case '√':
      return `√(${formulaOf(first, t)})`;
    case '×√2':
      return `${side(first, 2)} × √2`;
    case '÷√2':
      return `${side(first, 2)} ÷ √2`;
    case 'up':
    case 'step':
    case 'mark':
    case 'coin':
      return t.rounded(operation, formulaOf(first, t), second ?? first);
    case '+':
      return `${side(first, 1)} + ${second ? side(second, 1) : ''}`;
    case '−':
      return `${side(first, 1)} − ${second ? side(second, 2) : ''}`;
    case '×':
      return `${side(first, 2)} × ${second ? side(second, 2) : ''}`;
    case '÷':
      return `${side(first, 2)} ÷ ${second ? side(second, 3) : ''}`;
  }
};
