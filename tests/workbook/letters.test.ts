import { describe, expect, it } from 'vitest';
import { batting } from '../../src/calculators/batting/batting.js';
import { binding } from '../../src/calculators/binding/binding.js';
import { top } from '../../src/calculators/top/top.js';
import { Fabrics } from '../../src/workbook/fabrics.js';
import { gather, type PartOnPage } from '../../src/workbook/gather.js';
import { reckon } from '../../src/workbook/reckon.js';
import type { WorksheetAnswer } from '../../src/workbook/shape.js';
import { byLetter } from '../../src/workbook/shopping.js';
import { t } from './telling.js';

const fabrics = (...letters: string[]): Fabrics =>
  new Fabrics(
    letters.map((letter) => ({ letter, name: `${letter}!` })),
    undefined,
    { units: 'in' },
  );
const gathered = (parts: PartOnPage[], ...letters: string[]) =>
  gather(parts, fabrics(...letters), () => true).gathered;
const troubles = (parts: PartOnPage[], ...letters: string[]): string[] =>
  gathered(parts, ...letters).troubles.map((trouble) => t.say(trouble));
const listOf = (...[fields, input]: Parameters<typeof reckon>): { own: WorksheetAnswer; notes: string } => {
  const { own, notes } = reckon(fields, input);
  return { own: own ?? expect.fail('refused'), notes: notes.map((note) => t.say(note)).join(' ') };
};

describe('the letters that a part names', () => {
  it.each<[written: string, declared: string[], letters: string[]]>([
    ['A B', [], ['A', 'B']],
    ['A,B', ['A', 'B'], ['A', 'B']],
    ['A B', ['A', 'B'], ['A', 'B']],
    ['A 1', ['A 1'], ['A 1']],
    ['A  1', ['A 1'], ['A 1']],
    ['A 1', ['A  1 '], ['A 1']],
    ['A 1', ['A'], ['A', '1']],
    ['A 1', [], ['A', '1']],
    ['A 1 B', ['A 1', 'B'], ['A 1', 'B']],
    ['B A 1, A 1', ['A 1', 'B'], ['B', 'A 1', 'A 1']],
    ['Slate Roof', ['Slate Roof', 'Slate'], ['Slate Roof']],
    ['', ['A'], []],
  ])('in %j, where %j are declared', (written, declared, letters) =>
    expect(fabrics(...declared).lettersIn(written)).toEqual(letters),
  );
});

describe('a letter with a space', () => {
  const part = (fabric: string): PartOnPage => ({
    calculator: binding,
    reckoning: binding.reckon({ width: 58, length: 70 }),
    fabric,
  });

  it('is one fabric’s where it is so declared, on the list too', () => {
    const input = gathered([part('A 1')], 'A', 'A 1');
    expect(input.troubles).toEqual([]);
    const { fabrics: lines } = listOf({}, input).own;
    expect(lines.map(({ letter, name }) => [letter, name])).toEqual([['A 1', 'A 1!']]);
  });

  it('is told where it is not declared, and one of its words would be lost', () => {
    const told = [
      'Binding: fabric="A 1" is read as 2 fabrics, A and 1. If that is one name, add a fabric with the letter “A 1”.',
    ];
    expect(troubles([part('A 1')])).toEqual(told);
    expect(troubles([part('A 1')], 'A')).toEqual(told);
    expect(troubles([part('A')])).toEqual([]);
  });

  it('is several where each is cut from, as of a top’s sashing and cornerstones', () => {
    const reckoning = top.reckon({ block: 12, across: 3, down: 3, sashing: 2, cornerstones: true });
    expect(reckoning.issues).toEqual([]);
    expect(troubles([{ calculator: top, reckoning, fabric: 'C D' }])).toEqual([]);
  });
});

describe('what a part of another currency costs', () => {
  it('keeps it on its way to the list, where it contradicts the others in a sentence', () => {
    const reckoning = batting.reckon({ width: 58, length: 70, packages: 'twin 72 x 90 @ 29 EUR' });
    const input = gathered([{ calculator: batting, reckoning }]);
    expect(input.items[0]?.cost).toMatchObject({ amount: '29.00', currency: 'EUR' });
    const { total, items } = listOf({}, input).own;
    expect(total && t.money(total)).toBe('€29.00');
    expect(items.map(({ price }) => price && t.money(price))).toEqual(['€29.00']);
    const inDollars = listOf({ currency: 'USD' }, input);
    expect(inDollars.own.total).toBeUndefined();
    expect(inDollars.own.items.map(({ price }) => price)).toEqual([undefined]);
    expect(inDollars.notes).toContain('“€29.00” is in EUR, but prices here are in USD.');
  });
});

describe('the lines of a list', () => {
  // As the sorting of the browser has it, which knows every language, but takes long to begin.
  it('are in the order of their letters, and those without a letter come last', () => {
    const letters = [
      'A',
      'B',
      'Z',
      'AA',
      'AB',
      'A1',
      'A2',
      'A10',
      'A 1',
      'A 2',
      '2',
      '10',
      'Ä',
      'É',
      'Б',
      '',
    ];
    for (const letter of letters)
      for (const other of letters) {
        const order = (letter || '\uffff').localeCompare(other || '\uffff');
        expect(Math.sign(byLetter({ letter }, { letter: other })), `${letter}, ${other}`).toBe(order);
      }
  });
});
