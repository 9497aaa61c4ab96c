import { expect, test } from 'vitest';
import type { CalculatorName } from '../../src/calculators/calculator.js';
import type { Answer, Refused } from '../../src/reckon.js';
import { RECKON } from './by-name.js';

/** Inputs with which each calculator has an answer, and its inputs that are short lengths. */
const SHORT: [CalculatorName, given: object, inputs: string[]][] = [
  ['backing', { width: 58, length: 70 }, ['overage', 'seam']],
  ['batting', { width: 58, length: 70 }, ['overage']],
  ['binding', { width: 58, length: 70 }, ['finished', 'thickness', 'seam', 'mark']],
  ['block', { chart: 'A B; B A', block: 12 }, ['seam', 'mark']],
  ['borders', { width: 58, length: 70, borders: '2' }, ['seam', 'mark']],
  ['cutting', { list: 'A | square | 3 | 4' }, ['seam', 'mark']],
  ['sleeve', { width: 58 }, ['stripWidth', 'short', 'hem', 'seam']],
  ['top', { block: 12, across: 4, down: 5 }, ['seam', 'mark']],
  ['worksheet', { parts: [] }, ['seam']],
];

const cases = SHORT.flatMap(([name, given, inputs]) =>
  inputs.flatMap((input) => (['in', 'cm'] as const).map((units) => ({ name, input, units, given }))),
);

test.each(cases)(
  'in $units, what the $input of the $name is told to be written like can be written there',
  ({ name, input, units, given }) => {
    const issueWith = (text: string): string | undefined =>
      (RECKON[name]({ ...given, units, [input]: text }) as Answer | Refused).errors?.find(
        (error) => error.input === input,
      )?.message;
    for (const wrong of ['abc', '9999']) {
      const examples = /Write it like (.+)\.$/.exec(issueWith(wrong)!)![1]!;
      for (const example of examples.split(' or ')) expect(issueWith(example), example).toBeUndefined();
    }
  },
);
