import { describe, expect, test } from 'vitest';
import { backing } from '../../src/calculators/backing/backing.js';
import { batting } from '../../src/calculators/batting/batting.js';
import { binding } from '../../src/calculators/binding/binding.js';
import { borders } from '../../src/calculators/borders/borders.js';
import type { Calculator } from '../../src/calculators/calculator.js';
import { cutting } from '../../src/calculators/cutting/cutting.js';
import { reckon as reckonTop } from '../../src/calculators/top/reckon.js';
import { top } from '../../src/calculators/top/top.js';
import type { Answer } from '../../src/ledger/answer.js';
import type { Input, Reckoning } from '../../src/ledger/ledger.js';
import { Purchase } from '../../src/ledger/purchase.js';
import { Quantity } from '../../src/ledger/quantity.js';
import type { ReckonedRow } from '../../src/ledger/row.js';
import { exact, isExact, type Exact } from '../../src/measure/exact.js';
import { Message } from '../../src/measure/message.js';
import type { OwnWords } from '../../src/words/common.js';
import { backing as backingWords } from '../../src/words/en/backing.js';
import { batting as battingWords } from '../../src/words/en/batting.js';
import { binding as bindingWords } from '../../src/words/en/binding.js';
import { borders as bordersWords } from '../../src/words/en/borders.js';
import { cutting as cuttingWords } from '../../src/words/en/cutting.js';
import { top as topWords } from '../../src/words/en/top.js';
import type { Teller } from '../../src/words/teller.js';
import { toldRow } from '../../src/words/told.js';
import { dice } from '../planner/seeded.js';
import { english } from '../sentences.js';
import { Inputs } from './inputs.js';
import { faultIn } from './reader.js';

/** Every calculator and how many of its results are read: 10,000 in all, fewest where cloth has to be planned. */
const SHARES: [Calculator, OwnWords, results: number][] = [
  [backing, backingWords, 2800],
  [batting, battingWords, 2000],
  [binding, bindingWords, 2500],
  [borders, bordersWords, 2000],
  // Its cloth is not planned here: the rows before it are the same.
  [{ ...top, reckon: (input) => reckonTop(input, () => 0) }, topWords, 600],
  [cutting, cuttingWords, 100],
];

/** Every formula in what a message says, however deep. */
const formulasIn = (value: unknown): Quantity[] => {
  if (value instanceof Quantity) return [value];
  if (value instanceof Message) return Object.values(value.values).flatMap(formulasIn);
  return Array.isArray(value) ? value.flatMap(formulasIn) : [];
};

const isReckoned = (row: Reckoning['rows'][number]): row is ReckonedRow => row.role !== 'given';

/** The numbers in a formula that stand in rows. */
const rowsIn = (quantity: Quantity): Quantity[] =>
  quantity.operation === 'row' ? [quantity] : quantity.parts.flatMap(rowsIn);

/** The number that stands in a row; of a list, in one place of it. */
const standsIn = (row: Reckoning['rows'][number], entry: number): Exact | undefined => {
  const { value } = row;
  const one: unknown = Array.isArray(value) ? value[entry] : value;
  if (isReckoned(row) && row.formula) return row.formula.value;
  if (one instanceof Quantity) return one.value;
  if (one instanceof Purchase) return one.inches;
  return typeof one === 'number' ? exact(one) : isExact(one) ? one : undefined;
};

/** What formulas take from rows that are not there, or that hold another number. */
const strayIn = ({ rows }: Reckoning): string[] =>
  rows.filter(isReckoned).flatMap(({ id, how }) =>
    formulasIn(how)
      .flatMap(rowsIn)
      .filter(({ row, entry, value }) => {
        const from = rows.find((one) => one.id === row);
        return !(from && standsIn(from, entry)?.equals(value));
      })
      .map(({ row, value }) => `${id} takes ${value.toFraction()} from ${row}`),
  );

/** What a reader sees of each formula: the rows that have one, and those within sentences. */
const shownIn = ({ rows }: Reckoning, calculator: Calculator, t: Teller): string[] =>
  rows
    .filter(isReckoned)
    .flatMap((row) =>
      row.how instanceof Quantity
        ? [toldRow(row, calculator.fields, t).how]
        : formulasIn(row.how).map((formula) => t.reckonedLength(formula)),
    );

/** A good result; in some something was measured that is not as it was reckoned. */
const resultOf = (calculator: Calculator, inputs: Inputs): Reckoning<Answer> | undefined => {
  const input: Input = inputs.of(calculator.fields);
  const reckoning = calculator.reckon(input);
  const measurable = reckoning.rows.filter(isReckoned).filter(({ role }) => role === 'measurable');
  if (!reckoning.own || inputs.roll(4) || !measurable.length) return reckoning.own && reckoning;
  const { id, value } = inputs.one(...measurable);
  if (!(value instanceof Quantity)) return reckoning;
  const measured = `${value.value
    .mul(15 + inputs.roll(2))
    .div(16)
    .toFraction()} in`;
  const again = calculator.reckon({ ...input, measured: { [id]: measured } });
  return again.own ? again : reckoning;
};

describe('what is shown of how a number was got, read by itself, gives that number', () => {
  const read: string[] = [];

  test.each(SHARES)('$name', ({ name, ...calculator }, words, results) => {
    const roll = dice(results);
    const faults: string[] = [];
    const strays: string[] = [];
    let good = 0;
    for (let tries = 0; good < results && tries < 3 * results; tries += 1) {
      const result = resultOf({ name, ...calculator }, new Inputs(roll, roll(3) ? 'in' : 'cm'));
      if (!result) continue;
      good += 1;
      strays.push(...strayIn(result));
      const { units } = result.style;
      for (const how of shownIn(result, { name, ...calculator }, english(words, result.style))) {
        read.push(how);
        const fault = faultIn(how, units);
        if (fault) faults.push(fault);
      }
    }
    expect(good).toBe(results);
    expect(strays.slice(0, 5)).toEqual([]);
    expect(faults.slice(0, 5)).toEqual([]);
  });

  test('and every kind of formula was among them', () => {
    expect(read.length).toBeGreaterThan(50_000);
    const all = read.join('\n');
    for (const sign of ['+', '−', '×', '÷', '√2', '(', '%', '≈', ' in\n', ' cm\n', 'whole repeats'])
      expect(all, sign).toContain(sign);
  });
});
