import type { Example } from '../../ledger/field.js';
import type { Quantity, Stated } from '../../ledger/quantity.js';
import type { Forms, Teller } from '../teller.js';

/** An example as this page reads it: German is also spoken where a point marks decimals, as in Switzerland. */
export const so = (text: string, { style }: Teller): string =>
  style.comma ? text.replace(/(\d)\.(\d)/g, '$1,$2') : text.replace(/(\d),(\d)/g, '$1.$2');

const joined = (things: readonly string[], word: string): string =>
  things.length > 1 ? `${things.slice(0, -1).join(', ')} ${word} ${things.at(-1) ?? ''}` : things.join('');

/** `a, b und c` */
export const listed = (things: readonly string[]): string => joined(things, 'und');

/** Examples or choices: `a, b oder c` */
export const or = (examples: readonly string[], t: Teller): string => so(joined(examples, 'oder'), t);

const isMetric = (text: string): boolean => /m$/.test(text);

/** Examples for a sentence, metric ones first. */
export const like = (examples: Example, t: Teller): string => {
  const metricFirst = [...examples].sort((a, b) => Number(isMetric(b)) - Number(isMetric(a)));
  return `Zum Beispiel ${or(metricFirst, t)}.`;
};

/** Texts that the parser reads where a comma marks decimals; the tests go through all of them. */
export const LENGTHS = ['132 cm', '52,5', '52 1/2 in'];
export const TOGETHER = ['1 m 32 cm', '30 + 10 cm', '52 1/2 in'];
export const SUM = '5 cm + 10 cm';
export const PRODUCT = '3 * 30 cm';
export const BRACKETED = '2 * (30 + 10) cm';
export const STEPS = ['10 cm', '25 cm', '50 cm', '1/4 yd'];
export const SEVERAL = '5; 11,5 cm';
export const SIZE = '150 x 200 cm';
export const SHEET = '45 x 50 cm';
export const CUT_LINE = 'A | Quadrat | 9 cm | 12';
export const PACKAGE = 'groß 230 x 250 cm @ 29';
export const PRICE = '12,50';

/** What a shop's step or a mark of a ruler makes of a length. */
export const upTo = (step: Stated, t: Teller): string => {
  const text = t.stated(step);
  return `aufgerundet auf ${/^\s*thirds\s*$/i.test(text) ? 'Achtel oder Drittel yd' : `volle ${text}`}`;
};

/** `66 ≥ 65 in` */
export const reaches = (reach: Quantity, need: Quantity, t: Teller): string =>
  `${t.reckoned(reach)} ≥ ${t.l(need)}`;

export const STRIP: Forms = { one: 'Streifen', other: 'Streifen' };
export const BLOCK: Forms = { one: 'Block', other: 'Blöcke' };
