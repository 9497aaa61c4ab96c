import { exact } from '../../measure/exact.js';
import { mixed } from '../../measure/format.js';
import { clothWidth, rowIn } from '../../reckon/answer.js';
import { isCurrency } from '../../reckon/money.js';
import type { PartInput } from '../../reckon/worksheet.js';
import type { Take } from '../../face/calculator.js';
import type { QuiltSheet } from '../../face/sheet.js';

/** What a part takes from the fabrics of these letters; nothing while it has something to mend. */
export const takesOf = (part: QuiltSheet, letters: string[]): (Take & PartInput)[] => {
  const { result, calculator } = part;
  if (result.errors) return [];
  const { fabric, cuts } = result;
  const takes: Take[] = calculator.takes?.(result, letters) ?? [
    { fabric: letters[0] ?? '', need: fabric, cuts },
  ];
  const written = (id: string): string | undefined => rowIn(result, id)?.value;
  const shrinkage = written('shrinkage')?.replace(/ ?%/, '') || '0';
  const washed = mixed(exact(100).div(exact(100).sub(exact(shrinkage))));
  const currency = written('currency') ?? '';
  /** A price with the currency that holds in its part, for a worksheet that may have another. */
  const priced = (price: string | undefined): string | undefined =>
    price && isCurrency(currency) && !/\p{L}/u.test(price) ? `${price} ${currency}` : price;
  return takes.map(({ cuts, cost, pieces = cuts.map((cut) => ({ ...cut, turn: true })), ...take }) => ({
    title: calculator.title,
    width: clothWidth(result),
    sold: rowIn(result, 'fabricWidth')?.inches,
    washed,
    price: priced(written('price')),
    cost: priced(cost),
    per: result.buy.unit,
    cuts,
    pieces,
    ...take,
  }));
};
