import { exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import { parseLength } from '../measure/parse.js';
import type { Purchase } from '../measure/shop.js';
import type { Answer } from '../reckon/answer.js';
import { isBlank, textOf } from '../reckon/fields.js';
import { sentence } from '../reckon/sentences.js';
import type { Calculator } from './calculator.js';

/** That the shop has less than this takes, and what would do; nothing where it has enough. */
export const overStock = <R extends Answer>(
  stock: unknown,
  result: R,
  calculator: Calculator<R>,
  style: Style,
): string | undefined => {
  const max = textOf(stock);
  if (isBlank(max)) return;
  const read = parseLength(max, { ...style, units: 'in', bare: undefined });
  if (!read.ok) return `Stock, max: ${sentence(read.problem)}`;
  const { unit, text } = result.buy;
  const isLength = /[a-z'"]/i.test(max);
  const isCloth = /^(yd|m|in)$/.test(unit);
  if (isLength && !isCloth) return;
  const fits = ({ inches, amount }: Purchase): boolean => exact(isLength ? inches : amount).lte(read.value);
  if (fits(result.buy)) return;
  const less = calculator.instead?.(result).find(({ buy }) => fits(buy));
  return `In stock: ${max}${isLength || !isCloth ? '' : ` ${unit}`}, and this takes ${text}. ${less ? `${less.words} would do: ${less.buy.text}` : 'A smaller size or wider cloth would take less'}.`;
};
