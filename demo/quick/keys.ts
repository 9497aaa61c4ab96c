import { form } from './question.js';
import { find } from './page.js';

/** The fractions that a phone's number keys lack. */
const FRACTIONS = [...'⅛¼⅜½⅝¾⅞'];

const row = find('.keys', form);

/** Types a fraction into the cell that has the focus, which keeps it. */
const keyFor = (fraction: string): HTMLButtonElement => {
  const key = document.createElement('button');
  Object.assign(key, { type: 'button', tabIndex: -1, textContent: fraction });
  key.addEventListener('pointerdown', (event) => event.preventDefault());
  key.addEventListener('click', () => {
    const cell = document.activeElement;
    if (!(cell instanceof HTMLInputElement) || !form.contains(cell)) return;
    cell.setRangeText(fraction, cell.selectionStart ?? 0, cell.selectionEnd ?? 0, 'end');
    cell.dispatchEvent(new Event('input', { bubbles: true }));
  });
  return key;
};

/** Keys for fractions under the cells that are being typed in. */
export const fractionKeys = (): void => row.append(...FRACTIONS.map(keyFor));
