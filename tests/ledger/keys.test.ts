import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/calculators/backing/reckon.js';
import { backingFields, type BackingRow, type BackingSayings } from '../../src/calculators/backing/shape.js';
import {
  type bordersFields,
  rowOf,
  type BordersLedger,
  type BordersSayings,
} from '../../src/calculators/borders/shape.js';
import { Ledger } from '../../src/ledger/ledger.js';
import { Purchase } from '../../src/ledger/purchase.js';
import { count, inches, Quantity } from '../../src/ledger/quantity.js';
import { exact, type Exact } from '../../src/measure/exact.js';
import type { Style } from '../../src/measure/format.js';
import { isMessage, Message, sayings } from '../../src/measure/message.js';
import { reckonBacking } from '../../src/reckon.js';
import type { CommonLabel } from '../../src/words/common.js';
import { backing as backingWords } from '../../src/words/en/backing.js';
import { borders as bordersWords } from '../../src/words/en/borders.js';
import { common } from '../../src/words/en/common.js';
import { face } from '../../src/words/en/face.js';
import type { Language } from '../../src/words/language.js';
import type { CalculatorWords } from '../../src/words/vocabulary.js';

interface TestSayings {
  plain: undefined;
  seam: { seam: Exact; panels: number };
}
const say = sayings<TestSayings>();
const seam = exact(1, 4);

describe('a message', () => {
  it('is a code and its values', () => {
    expect(say('plain')).toEqual(new Message('plain', {}));
    expect(say('seam', { seam, panels: 2 })).toMatchObject({ code: 'seam', values: { seam, panels: 2 } });
    expect([say('plain'), { code: 'plain', values: {} }, undefined].map(isMessage)).toEqual([
      true,
      false,
      false,
    ]);
  });
});

// Each line after a directive is one that must not compile: `tsc` fails where it does. None of them runs.
describe('the compiler refuses', () => {
  const compiles = (_lines: () => void): void => undefined;
  const ledger = new Ledger<typeof backingFields, BackingRow>(backingFields, { width: 58, length: 70 });

  it('a code that is not in its set, and a value that its sentence lacks', () =>
    compiles(() => {
      // @ts-expect-error a misspelt code
      say('seems', { seam, panels: 2 });
      // @ts-expect-error a misspelt code that needs no values
      say('plane');
      // @ts-expect-error a value is missing
      say('seam', { seam });
      // @ts-expect-error all values are missing
      say('seam');
      // @ts-expect-error a misspelt value
      say('seam', { seam, panel: 2 });
      // @ts-expect-error a value of another kind
      say('seam', { seam: '1/4', panels: 2 });
      // @ts-expect-error it has no values
      say('plain', { seam });
    }));

  it('a row that its calculator does not have', () =>
    compiles(() => {
      // @ts-expect-error a misspelt row
      ledger.row('needWith', inches(66));
      // @ts-expect-error a misspelt row that can be measured
      ledger.measurable('washedWith', inches(39));
      // @ts-expect-error a misspelt part of a border
      rowOf(1, 'Side');
      // @ts-expect-error a border’s row without its number
      (undefined as BordersLedger | undefined)?.row('borderSides', inches(1));
    }));

  it('an input that its calculator does not have', () =>
    compiles(() => {
      // @ts-expect-error a misspelt input of a calculator
      reckon({ widht: 58, length: 70 });
      // @ts-expect-error a misspelt input of its headless door
      reckonBacking({ width: 58, lenght: 70 });
      // @ts-expect-error a misspelt input to show
      ledger.given('overrage');
      // @ts-expect-error a misspelt input to reckon with
      void ledger.inputs.fabricWith;
      // @ts-expect-error a misspelt value
      ledger.values.oneWays;
      // @ts-expect-error a misspelt input at fault
      ledger.refuse('sheam', say('plain'));
      // @ts-expect-error an input that is no number is no part of a formula
      inches(1).plus(ledger.inputs.oneWay);
      // @ts-expect-error an input that may be left out is not there for sure
      inches(1).plus(ledger.inputs.price);
    }));

  it('a unit, a kind and an operation that are none', () =>
    compiles(() => {
      // @ts-expect-error a misspelt unit of what is bought
      new Purchase(exact(36), exact(1), 'yard');
      // @ts-expect-error a unit that nothing is shown in
      const style: Style = { units: 'mm' };
      // @ts-expect-error a kind of number that there is not
      new Quantity(exact(1), 'weight');
      // @ts-expect-error a bare number is no length
      inches(1).plus(1);
      // @ts-expect-error an exact number does not know how it was got
      count(1).times(exact(2));
      return style;
    }));

  type BackingWords = CalculatorWords<typeof backingFields, BackingRow, BackingSayings, CommonLabel>;
  const { panels, ...labels } = backingWords.labels;
  const { summary, ...sentences } = backingWords.sentences;

  it('words that are missing or that nothing asks for', () =>
    compiles(() => {
      const whole: BackingWords = {
        ...backingWords,
        labels: { ...labels, panels },
        sentences: { ...sentences, summary },
      };
      // @ts-expect-error a label is missing
      const less: BackingWords = { ...backingWords, labels };
      // @ts-expect-error a label of a row that there is not
      const more: BackingWords = { ...backingWords, labels: { ...labels, panels, pannels: 'Panels' } };
      // @ts-expect-error a sentence is missing
      const silent: BackingWords = { ...backingWords, sentences };
      // @ts-expect-error a sentence for a code that there is not
      const lost: BackingWords = { ...backingWords, sentences: { ...sentences, summary, sumary: '' } };
      // @ts-expect-error a hint for an input that there is not
      const hinted: BackingWords = { ...backingWords, hints: { overrage: 'each side' } };
      const asking: BackingWords = {
        ...backingWords,
        // @ts-expect-error a sentence asks for a value that its code has not
        sentences: { ...sentences, summary: ({ pannels }) => String(pannels) },
      };
      return [whole, less, more, silent, lost, hinted, asking];
    }));

  it('a choice, an entry or a calculator without words', () =>
    compiles(() => {
      type BordersWords = CalculatorWords<typeof bordersFields, never, BordersSayings, CommonLabel>;
      const whole: BordersWords = bordersWords;
      // @ts-expect-error no choice has words
      const choices: BordersWords = { ...bordersWords, options: {} };
      const { mitred, ...corners } = bordersWords.options.corners;
      // @ts-expect-error one choice has no words
      const choice: BordersWords = { ...bordersWords, options: { ...bordersWords.options, corners } };
      // @ts-expect-error the entries of a list have no name
      const entries: BordersWords = { ...bordersWords, entries: {} };
      // @ts-expect-error a language has to have all calculators
      const language: Language = { common, face, calculators: { backing: backingWords } };
      return [whole, choices, mitred, choice, entries, language];
    }));
});
