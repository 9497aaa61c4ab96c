import { describe, expect, it } from 'vitest';
import { Fabrics } from '../../../src/elements/worksheet/fabrics.js';
import { gather } from '../../../src/elements/worksheet/gather.js';
import {
  reckonBatting,
  reckonBinding,
  reckonTop,
  reckonWorksheet,
  type BattingResult,
} from '../../../src/reckon.js';
import { answersOf } from '../../reckon/asked.js';

const fabrics = (...letters: string[]): Fabrics =>
  new Fabrics(letters.map((letter) => ({ letter, name: `${letter}!` })) as never, undefined, { units: 'in' });

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
    expect(fabrics(...declared).lettersOf({ fabric: written })).toEqual(letters),
  );
});

describe('a letter with a space', () => {
  const binding = (fabric: string): never =>
    ({
      fabric,
      result: answersOf(reckonBinding)({ width: 58, length: 70 }),
      calculator: { title: 'Binding' },
    }) as never;

  it('is one fabric’s where it is so declared, on the list too', () => {
    const { gathered } = gather([binding('A 1')], fabrics('A', 'A 1'));
    expect(gathered.troubles).toEqual([]);
    const { fabrics: lines } = answersOf(reckonWorksheet)(gathered);
    expect(lines.map(({ letter, name }) => [letter, name])).toEqual([['A 1', 'A 1!']]);
  });

  it('is told where it is not declared, and one of its words would be lost', () => {
    const told = [
      'Binding: fabric="A 1" is read as 2 fabrics, A and 1. To name one so, declare it: <quilt-fabric letter="A 1">.',
    ];
    expect(gather([binding('A 1')], fabrics()).gathered.troubles).toEqual(told);
    expect(gather([binding('A 1')], fabrics('A')).gathered.troubles).toEqual(told);
    expect(gather([binding('A')], fabrics()).gathered.troubles).toEqual([]);
  });

  it('is several where each is cut from, as of a top’s sashing and cornerstones', () => {
    const result = answersOf(reckonTop)({ block: 12, across: 3, down: 3, sashing: 2, cornerstones: true });
    const takes = ({ parts }: typeof result, letters: string[]): unknown =>
      parts.map(({ fabric, cuts }, at) => ({ fabric: letters[at], need: fabric, cuts }));
    const top = { fabric: 'C D', result, calculator: { title: 'Quilt top', takes } } as never;
    expect(gather([top], fabrics()).gathered.troubles).toEqual([]);
  });
});

describe('what a part of another currency costs', () => {
  it('keeps it on its way to the list, where it contradicts the others in a sentence', () => {
    const batting = {
      result: answersOf(reckonBatting)({ width: 58, length: 70, packages: 'twin 72 x 90 @ 29 EUR' }),
      calculator: {
        title: 'Batting',
        takes: ({ cost, buy, fabric, cuts }: BattingResult): unknown => [
          { fabric: '', need: fabric, cuts, item: buy.text, cost: cost?.amount },
        ],
      },
    } as never;
    const { items, parts } = gather([batting], fabrics()).gathered;
    expect(items?.[0]?.cost).toBe('29.00 EUR');
    expect(answersOf(reckonWorksheet)({ items, parts }).total?.text).toBe('€29.00');
    const { notes, total } = answersOf(reckonWorksheet)({ items, parts, currency: 'USD' });
    expect(total).toBeUndefined();
    expect(notes.join(' ')).toContain('“29.00 EUR” is in EUR, but the currency here is USD.');
  });
});
